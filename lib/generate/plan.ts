import type { CheckId } from '../inspect/finding';
import type { RuleSetId } from '../limits/limit';
import type { Bond, Finish, WallKind } from '../wall/model';
import type { LookAlike } from './look-alikes/look-alike';

/** All that the laying of a wall is told: what to build, what to spoil and by how much, and what is to look wrong and be right. */
export interface Plan {
  readonly kind: WallKind;
  readonly masonry: 'anchored' | 'adhered';
  readonly rules: RuleSetId;
  readonly bond: Bond;
  /** Whole units in the length of the main panel. */
  readonly modules: number;
  readonly courses: number;
  /** A course of soldiers over each opening. */
  readonly soldiers: boolean;
  /** Squared stones at the ends of the panels. */
  readonly quoins: boolean;
  readonly finish: Finish;
  /** Units on a 75 mm bed, where the brick of the place is made so. */
  readonly thinBed: boolean;
  readonly spoils: readonly Spoil[];
  /** Tried in turn, each for a fault that finds no room on the wall. */
  readonly spares: readonly Spoil[];
  /** Departures that stay within their limits, as they come in all sound work; the severity is under 1. */
  readonly tolerated: readonly Spoil[];
  /** How much of a limit sound work may take up, 0 to 1: batches, backs, ties. */
  readonly soundUpTo: number;
  readonly lookAlikes: readonly LookAlike[];
  /** How close the mortar's colour is to the units': 0 far, 3 close. */
  readonly mortarTone: number;
  readonly mirrored: boolean;
  readonly seed: number;
}

export interface Spoil {
  readonly fault: CheckId;
  /** Deviation ÷ tolerance: over 1 for a fault. For a least value: limit ÷ value. */
  readonly severity: number;
}

/** Brick in the bond alone: for a picture or a bench that is about something else. */
export const PLAIN = { soldiers: false, quoins: false, finish: 'brick' } as const;
