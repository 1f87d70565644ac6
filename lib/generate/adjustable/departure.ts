import type { CheckId } from '../../inspect/finding';
import type { Limit, LimitId, RuleSetId } from '../../limits/limit';
import type { Unit, Wall } from '../../wall/model';

export type Family = 'Joints' | 'Line' | 'Support' | 'Water' | 'Ties' | 'Backs' | 'Mortar';

/** One way to adjust a wall: a single measure, set to any value from none to twice its limit. */
export interface Departure {
  readonly id: string;
  readonly family: Family;
  /** What is set, in plain words. */
  readonly name: string;
  /** The checks that judge it. */
  readonly checks: readonly CheckId[];
  /** Unit of the value, that of the check's own measure. */
  readonly unit: Limit['unit'];
  /** Rules without it leave this out. */
  readonly limit: LimitId;
  /** Null where this wall has no place for it. `limit` is the one that governs under the rules. */
  readonly fit: (wall: Wall, limit: Limit, places: Places, rules: RuleSetId) => Fitted | null;
}

/** A departure at its place on one wall. */
export interface Fitted {
  /** Id of the part it is measured at. */
  readonly at: string;
  /** Its value on the sound wall. */
  readonly sound: number;
  /** Least that can be set; none where it is left out. */
  readonly least?: number;
  /** Twice the limit, or the sound value where that is more; on the step. */
  readonly most: number;
  readonly step: number;
  readonly change: (wall: Wall, value: number) => Wall;
  /** Why a wall like that would not stay up, in a sentence; null where it would. */
  readonly refuse?: (value: number) => string | null;
}

/** Whole units with mortar all round, far enough apart that what is done to one moves no measure of another. */
export interface Places {
  readonly head: Unit;
  readonly taper: Unit;
  readonly fill: Unit;
  readonly twist: Unit;
  readonly set: Unit;
}

/** Twice a bound in whole steps, and never less than the sound value. */
export function twice(bound: number, sound: number, step: number): number {
  return Math.ceil(Math.max(2 * bound, sound) / step) * step;
}

/** The unit as it now stands on the wall. */
export function unitNow(wall: Wall, { id }: Unit): Unit {
  const now = wall.units.find((unit) => unit.id === id);
  if (now === undefined) throw new RangeError(`adjustable: the wall has no unit ${id}`);
  return now;
}
