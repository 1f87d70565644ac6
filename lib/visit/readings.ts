import { crackSteps } from '../failing/state/crack-steps';
import { type FailingWall, STILL } from '../failing/state/model';
import type { Mm } from '../units';
import type { UnitId } from '../wall/part-id';
import { besideOf } from './beside';

/** What is read at a unit from where nothing can land: by level and line, and off a picture with a scale in it, mm. */
export interface Reading {
  /** Whether anything is there to be read. */
  readonly isThere: boolean;
  /** Up (+) or down, out (+) or in, right (+) or left of where it was laid. */
  readonly up: Mm;
  readonly out: Mm;
  readonly along: Mm;
  /** The widest crack through it or beside it; 0 where there is none. */
  readonly crack: Mm;
  /** How deep its face has gone, and the mortar beside it, at the deepest. */
  readonly face: Mm;
  readonly joint: Mm;
}

export function readingOf(failing: FailingWall, unit: UnitId): Reading {
  const { state } = failing;
  const { u, v, w } = state.moves.get(unit) ?? STILL;
  const depth = (kinds: readonly string[]) =>
    state.damage.reduce(
      (most, each) => (each.unit === unit && kinds.includes(each.kind) ? Math.max(most, each.depth) : most),
      0,
    );
  const crack = crackSteps(failing)
    .filter((step) => besideOf(failing, step).includes(unit))
    .reduce((most, { widths }) => Math.max(most, ...widths), 0);
  return {
    isThere: !state.missing.has(unit),
    ...{ up: v, out: w, along: u, crack },
    face: depth(['spall', 'crushed']),
    joint: depth(['soft-joint']),
  };
}
