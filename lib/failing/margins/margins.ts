import type { UnitId } from '../../wall/part-id';
import type { Contact, FailingWall } from '../state/model';
import { adheredHolds } from './adhered';
import type { Hold } from './hold';
import { jointedHolds, type Touching } from './jointed';
import { loadsOn } from './loads';

/** The way in which a unit is held least. */
export interface Margin extends Hold {
  readonly part: UnitId;
  /** Resistance over demand. Of a drawing, by mean values: never of a real wall. */
  readonly margin: number;
}

/** The least margin of every unit that has not come away, in the order of the units. A blow is not counted: no speed of a throw was published. */
export function marginsOf(failing: FailingWall): readonly Margin[] {
  const { survey, state } = failing;
  const loads = loadsOn(failing);
  const touching = touchingOf(failing);
  return survey.panels.flatMap(({ placed }) =>
    placed.flatMap((each) => {
      const { id } = each.unit;
      if (state.missing.has(id)) return [];
      const touches = touching.get(id) ?? { below: [], above: [], beside: [], ties: [], back: null };
      const holds =
        touches.back === null
          ? jointedHolds(each, touches, loads.get(id) ?? 0, state)
          : adheredHolds(each.unit, touches.back);
      return [leastOf(id, holds)];
    }),
  );
}

function leastOf(part: UnitId, holds: readonly Hold[]): Margin {
  const margins = holds.map((hold) => ({ ...hold, part, margin: hold.resistance / hold.demand }));
  return margins.reduce((least, each) => (each.margin < least.margin ? each : least));
}

type Touched = { -readonly [Side in keyof Touching]: Contact[] } & { back: Contact | null };

/** Contacts by the units they touch; those with a unit that has come away touch nothing. */
function touchingOf({ survey, state }: FailingWall): ReadonlyMap<string, Touched> {
  const touching = new Map<string, Touched>();
  for (const { placed } of survey.panels)
    for (const { unit } of placed)
      touching.set(unit.id, { below: [], above: [], beside: [], ties: [], back: null });
  for (const contact of state.contacts) {
    const mine = touching.get(contact.unit);
    const theirs = touching.get(contact.other);
    if (mine === undefined || state.missing.has(contact.unit)) continue;
    if (contact.kind === 'back') mine.back = contact;
    else if (contact.kind === 'tie') mine.ties.push(contact);
    else if (contact.kind === 'bearing') mine.below.push(contact);
    else if (theirs !== undefined && !state.missing.has(contact.other as UnitId)) {
      if (contact.kind === 'bed') {
        mine.below.push(contact);
        theirs.above.push(contact);
      } else {
        mine.beside.push(contact);
        theirs.beside.push(contact);
      }
    }
  }
  return touching;
}
