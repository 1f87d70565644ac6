import type { Mm } from '../units';
import { refuseNegative, refuseNotPositive } from './refusals';

// A rigid unit of depth b stands on a ledge and reaches e past its edge. Its weight acts at b/2; nothing ties it back, no mortar pulls.
// Elementary statics of a block on a bed that takes no tension. A real veneer is tied: teach with this, judge by the rule set.

/** Overhangs that matter, mm. */
export interface OverhangMarks {
  /** b/4: up to here, and at it, the whole bearing is pressed (the middle third of the bearing, its kern). */
  readonly kern: Mm;
  /** b/3: where several codes stop. The edge is then pressed four times the mean. */
  readonly third: Mm;
  /** b/2: here the unit balances on the edge, and tips. */
  readonly tipping: Mm;
}

/** `pressed`: all of the bearing carries. `lifting`: its inner edge has lifted off. `tipping`: it falls unless tied. */
export type Standing = 'pressed' | 'lifting' | 'tipping';

/** @throws RangeError unless the depth is above zero. */
export function overhangMarksOf(depth: Mm): OverhangMarks {
  refuseNotPositive('depth', depth);
  return { kern: depth / 4, third: depth / 3, tipping: depth / 2 };
}

/** The length that stands on the ledge, mm: a = b − e. @throws RangeError on senseless numbers, or an overhang of the depth or more. */
export function bearingOf(depth: Mm, overhang: Mm): Mm {
  refuseNotPositive('depth', depth);
  refuseNegative('overhang', overhang);
  if (overhang >= depth) {
    throw new RangeError(`overhang: ${overhang} mm leaves nothing of ${depth} mm on the ledge`);
  }
  return depth - overhang;
}

/** How the unit stands with no tie to help. b/4 itself is `pressed`; b/2 itself is `tipping`. @throws RangeError as bearingOf. */
export function standingOf(depth: Mm, overhang: Mm): Standing {
  bearingOf(depth, overhang);
  const marks = overhangMarksOf(depth);
  if (overhang <= marks.kern) return 'pressed';
  return overhang < marks.tipping ? 'lifting' : 'tipping';
}

/** Length of the bearing that is pressed, mm: all of it up to b/4, then 3(a/2 − e/2). @throws RangeError as peakStressRatio. */
export function pressedLengthOf(depth: Mm, overhang: Mm): Mm {
  refuseTipping(depth, overhang);
  const bearing = bearingOf(depth, overhang);
  return standingOf(depth, overhang) === 'pressed' ? bearing : (3 * (bearing - overhang)) / 2;
}

/**
 * Stress at the edge of the ledge as a multiple of the mean under a unit with no overhang (its weight ÷ b). Up to b/4:
 * (b/a)(1 + 3e/a); beyond: 2b ÷ pressed length. The two agree at b/4 (8/3).
 * @throws RangeError on senseless numbers, or from b/2 on, where the unit tips.
 */
export function peakStressRatio(depth: Mm, overhang: Mm): number {
  const pressed = pressedLengthOf(depth, overhang);
  if (standingOf(depth, overhang) === 'lifting') return (2 * depth) / pressed;
  return (depth / pressed) * (1 + (3 * overhang) / pressed);
}

function refuseTipping(depth: Mm, overhang: Mm): void {
  if (standingOf(depth, overhang) === 'tipping') {
    throw new RangeError(`overhang: at ${overhang} mm a unit ${depth} mm deep tips`);
  }
}
