import type { Contact } from '../../failing/state/model';
import type { Box } from '../../geometry/box';
import type { Mm } from '../../units';
import type { Placed } from '../../wall/survey';
import { crackWhere, type Draft, shift, takeAway } from '../draft';
import { between, type Mechanism, shareAfter } from '../mechanism';

/** A unit whose band is smaller than this share of its height has come away. */
const LET_GO = 0.06;

/** Backs that were bare, ringed or dusty let water in; it freezes, and the bond goes from the top of each back down, fastest in the middle of the patch. */
export const PEELING_BACK: Mechanism = {
  name: 'peeling-back',
  what: 'water gets in behind units with poor backs and freezes: the bond goes from the top down, and the first have come away',
  showsAfter: 4,
  lacks: ({ wall }) => (wall.masonry === 'adhered' ? null : 'a wall of units stuck to their backing'),
  act: ({ main, draft, chance, years }) => {
    const centre = chance.pick(main.placed.filter(({ unit }) => unit.y > 300));
    const radius = between(chance, 260, 420);
    const share = shareAfter(years, 5);
    for (const placed of main.placed) {
      const away = distance(placed, centre) / radius;
      if (away >= 1) continue;
      peel(draft, placed, Math.max(0, 1 - share * (1.55 - away)), away === 0);
    }
  },
};

function distance({ unit: one }: Placed, { unit: other }: Placed): Mm {
  const dx = one.x + one.length / 2 - other.x - other.length / 2;
  const dy = one.y - other.y;
  return Math.sqrt(dx * dx + dy * dy);
}

/** What holds is a band at the foot of the back, `share` of its height. */
function peel(draft: Draft, { unit, back }: Placed, share: number, first: boolean): void {
  if (first || share < LET_GO) {
    takeAway(draft, unit.id, back?.closed ? 'mortar-ring' : 'bare-back');
    return;
  }
  const index = draft.contacts.findIndex((contact) => contact.kind === 'back' && contact.unit === unit.id);
  const contact = draft.contacts[index];
  if (contact === undefined) return;
  draft.contacts[index] = banded(contact, unit.height * share);
  crackWhere(draft, ({ kind, unit: id, other }) => kind !== 'back' && (id === unit.id || other === unit.id));
  const loose = 1 - share;
  shift(draft, unit.id, { v: -0.6 * loose, w: 1.5 * loose, lean: 14 * loose });
}

function banded(contact: Contact, high: Mm): Contact {
  const held = (contact.held ?? [])
    .map((pat): Box => ({ ...pat, height: Math.min(pat.y + pat.height, high) - pat.y }))
    .filter(({ height }) => height > 0);
  return { ...contact, held };
}
