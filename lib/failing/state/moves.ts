import type { Mm } from '../../units';
import type { Unit } from '../../wall/model';
import { type Move, STILL, type WallState } from './model';

/** mm per m in a plain ratio. */
const PER_METRE = 1000;

/** How the piece of a unit that lies at x has moved. */
export function moveOf(state: WallState, unit: Unit, x: Mm): Move {
  const split = state.splits.get(unit.id);
  return (split !== undefined && x > split.x ? split.right : state.moves.get(unit.id)) ?? STILL;
}

/** How far the point (x, y) of a unit has gone along and up, mm: small turns, about its middle. */
export function movedPoint(state: WallState, unit: Unit, x: Mm, y: Mm): { readonly u: Mm; readonly v: Mm } {
  const { u, v, turn } = moveOf(state, unit, x);
  const angle = turn / PER_METRE;
  return {
    u: u - angle * (y - unit.y - unit.height / 2),
    v: v + angle * (x - unit.x - unit.length / 2),
  };
}

/**
 * How far a bed has opened at x, seen on the face, mm: the upper unit has risen from the lower; and where the lower leans out more than
 * the upper, the wall has folded outward over the back edge of the bed and opens by the fold times the depth.
 */
export function bedOpening(state: WallState, upper: Unit, lower: Unit, x: Mm): Mm {
  const rise = movedPoint(state, upper, x, upper.y).v - movedPoint(state, lower, x, upper.y).v;
  const fold = (moveOf(state, lower, x).lean - moveOf(state, upper, x).lean) / PER_METRE;
  return rise + Math.max(0, fold) * Math.min(upper.depth, lower.depth);
}

/** How far a head joint has opened at y, mm. */
export function headOpening(state: WallState, left: Unit, right: Unit, y: Mm): Mm {
  return movedPoint(state, right, right.x, y).u - movedPoint(state, left, left.x + left.length, y).u;
}
