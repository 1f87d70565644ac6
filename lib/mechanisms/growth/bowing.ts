import type { Mm } from '../../units';
import { crackWhere, shift } from '../draft';
import { between, type Mechanism, mustStand, shareAfter } from '../mechanism';
import { grownBy, WARMER } from './expansion';

/** 2 over the ratio of a circle: the rise of half a wave over the root of its length by its growth. */
const HALF_WAVE = 0.6366;

/** How far a strip held at both ends stands out in its middle once it has grown, mm: (2/π)√(L·δ), half a sine wave. */
export function bowOf(run: Mm, growth: Mm): Mm {
  return HALF_WAVE * Math.sqrt(run * Math.max(0, growth));
}

/** Clay brick grows between two things that do not give, and has nowhere to go but out. */
export const BOWING: Mechanism = {
  name: 'bowing',
  what: 'clay brick grows for good between two ends that are held, and bows out between them',
  showsAfter: 8,
  lacks: (survey, main) =>
    mustStand(survey) ??
    (main.openings.length === 0 && main.panel.gable === null ? null : 'a plain wall that stands on a ledge'),
  act: ({ main, draft, chance, years, season }) => {
    const { length, id } = main.panel;
    draft.held.push(`${id}-left-end`, `${id}-right-end`);
    // Its ends give most of the growth; what they do not give bows it.
    const given = between(chance, 0.65, 0.85);
    const grown = grownBy(length, shareAfter(years, 2) * 1.2, WARMER[season]) * (1 - given);
    const height = main.placed.reduce((most, { unit }) => Math.max(most, unit.y + unit.height), 0);
    const bow = bowOf(length, grown);
    for (const { unit } of main.placed) {
      const along = (unit.x + unit.length / 2) / length;
      const out = bow * 4 * along * (1 - along);
      shift(draft, unit.id, { w: (out * (unit.y + unit.height / 2)) / height, lean: (out * 1000) / height });
    }
    const ids = new Set<string>(main.placed.map(({ unit }) => unit.id));
    crackWhere(draft, ({ kind, unit }) => kind === 'bearing' && ids.has(unit));
    for (const [index, contact] of draft.contacts.entries()) {
      const tie =
        contact.kind === 'tie' && ids.has(contact.unit)
          ? main.ties.find(({ id: name }) => name === contact.other)
          : undefined;
      if (tie !== undefined && tie.x > length * 0.25 && tie.x < length * 0.75 && tie.y > height / 2)
        draft.contacts[index] = { ...contact, state: 'gone', sound: 0 };
    }
  },
};
