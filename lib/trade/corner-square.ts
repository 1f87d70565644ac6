import { MM_PER_M, type Mm } from '../units';
import { refuseNotPositive } from './refusals';

// A corner set out with three tapes: a along one wall, b along the other, d across. Square when a² + b² = d² (3-4-5: Pythagoras).

const DEGREES = 180 / Math.PI;

/** A corner measured with three tapes. */
export interface Corner {
  /** Angle between the walls, degrees; more than 90 is open. */
  readonly angle: number;
  /** How far the second wall leaves the square line, mm per m of its length; + opens, − closes. */
  readonly offSquare: number;
}

/** The diagonal of a square corner, mm: √(a² + b²). @throws RangeError unless both sides are above zero. */
export function squareDiagonal(along: Mm, across: Mm): Mm {
  refuseNotPositive('along', along);
  refuseNotPositive('across', across);
  return Math.sqrt(along ** 2 + across ** 2);
}

/**
 * The corner three tapes tell of: cos θ = (a² + b² − d²)/(2ab), off square by 1000·(d² − a² − b²)/(2ab) mm per m (cosine rule).
 * @throws RangeError for a length not above zero, or a diagonal that no triangle has.
 */
export function cornerOf(along: Mm, across: Mm, diagonal: Mm): Corner {
  refuseNotPositive('along', along);
  refuseNotPositive('across', across);
  refuseNotPositive('diagonal', diagonal);
  if (diagonal >= along + across || diagonal <= Math.abs(along - across)) {
    throw new RangeError(`diagonal: ${diagonal} mm closes no triangle with ${along} and ${across} mm`);
  }
  const share = (diagonal ** 2 - along ** 2 - across ** 2) / (2 * along * across);
  return { angle: Math.acos(-share) * DEGREES, offSquare: share * MM_PER_M };
}

/** How far the end of a wall so long leaves the square line, mm: L × off square. The sign is kept. @throws RangeError for a length not above zero. */
export function offAtEnd(length: Mm, { offSquare }: Corner): Mm {
  refuseNotPositive('length', length);
  return (length * offSquare) / MM_PER_M;
}
