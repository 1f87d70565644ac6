import { MM_PER_M, type Mm } from '../units';
import { refuseNegative, refuseNotCount, refuseNotFinite, refuseNotPositive } from './refusals';

// Slopes in mm per m, + when the right end is higher. A vial is part of a circle; the bubble goes to its highest point.

const DEGREES = 180 / Math.PI;

/** What two readings of one place tell, the level turned end for end between them. mm per m. */
export interface Reversal {
  /** What the place really slopes. */
  readonly slope: number;
  /** What the level adds to it, with its first end to the left. */
  readonly error: number;
}

/** Slope (r1 + r2)/2, error (r1 − r2)/2, both readings with + for the right end high as you stand. @throws RangeError unless both are finite. */
export function reversalOf(first: number, second: number): Reversal {
  refuseNotFinite('first reading', first);
  refuseNotFinite('second reading', second);
  return { slope: (first + second) / 2, error: (first - second) / 2 };
}

/** Tilt in degrees of a slope in mm per m: arcsin(x/1000), the rise taken along the level. @throws RangeError unless the slope is from −1000 to 1000. */
export function tiltOf(slope: number): number {
  refuseNotFinite('slope', slope);
  if (Math.abs(slope) > MM_PER_M) throw new RangeError(`slope: ${slope} mm per m is steeper than upright`);
  return Math.asin(slope / MM_PER_M) * DEGREES;
}

/** How far the bubble moves, mm, in a vial curved to this radius: R × tilt. The sign is kept. @throws RangeError for a radius not above zero, and as tiltOf. */
export function bubbleMove(slope: number, radius: Mm): Mm {
  refuseNotPositive('radius', radius);
  return (radius * tiltOf(slope)) / DEGREES;
}

/**
 * Error gathered by stepping a level along, mm, each placing off by `error` mm: n·e if the level itself is wrong and always lies the same
 * way round; √n·e if each placing is wrong by chance (a usual size, not a most). Turned end for end at every step, a fixed error cancels
 * in pairs: nothing is left of an even number, one e of an odd one. @throws RangeError on senseless numbers.
 */
export function steppedError(error: Mm, placings: number, how: 'same way' | 'turned' | 'by chance'): Mm {
  refuseNegative('error', error);
  refuseNotCount('placings', placings);
  if (how === 'turned') return placings % 2 === 0 ? 0 : error;
  return error * (how === 'same way' ? placings : Math.sqrt(placings));
}
