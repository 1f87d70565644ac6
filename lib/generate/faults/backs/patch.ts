import { overlaps } from '../../../geometry/box';
import type { Pat, Unit } from '../../../wall/model';
import { withUnits } from '../../draft';
import { isClear, NoRoom, type Spoiled, type SpoilInput, spotOf } from '../../spoil-input';

/** A patch laid by one hand: this many courses, and about this many units along. */
const PATCH_COURSES = 4;
const PATCH_UNITS = 5;

/** Gives every unit of one patch a back of the wrong kind. `butter` makes the pats for a unit. */
export function spoilBacks(input: SpoilInput, butter: (unit: Unit) => readonly Pat[]): Spoiled {
  const { wall, chance, taken } = input;
  const starts = wall.units.filter(
    (unit) => unit.kind === 'stretcher' && unit.course + PATCH_COURSES - 1 <= highestCourse(wall.units),
  );
  for (let tries = 0; tries < 12 && starts.length > 0; tries++) {
    const start = chance.pick(starts);
    const reach = PATCH_UNITS * wall.family.length;
    const patch = wall.units.filter(
      (unit) =>
        unit.panel === start.panel &&
        unit.cut === undefined &&
        unit.course >= start.course &&
        unit.course < start.course + PATCH_COURSES &&
        unit.x >= start.x &&
        unit.x + unit.length <= start.x + reach,
    );
    const spot = spotOf(patch);
    const wholePatch = patch.length >= PATCH_COURSES * (PATCH_UNITS - 2);
    if (
      !wholePatch ||
      !isClear(spot, taken) ||
      wall.openings.some((each) => each.panel === spot.panel && overlaps(each, spot))
    )
      continue;
    return {
      wall: withUnits(wall, new Map(patch.map((unit) => [unit.id, { ...unit, back: butter(unit) }]))),
      taken: spot,
    };
  }
  throw new NoRoom('no clear patch of units');
}

/** Least severity of a bare back: a grid over the back is good to one part in a hundred of it, and so is what the pats' own grid loses. */
export const LEAST_BARE = 1.3;

/** Bare share of the back for a contact limit of 95 %, at a severity; worse ones soon get much worse, for a habit spreads. Never over half. */
export function bareShare(severity: number): number {
  return Math.min(0.5, 0.05 * severity * Math.max(1, severity - 1));
}

export function whole(unit: Unit): Pat {
  return { x: 0, y: 0, width: unit.length, height: unit.height };
}

function highestCourse(units: readonly Unit[]): number {
  return units.reduce((most, { course }) => Math.max(most, course), 0);
}
