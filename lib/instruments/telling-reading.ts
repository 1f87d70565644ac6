import type { CheckId } from '../inspect/finding';
import type { Reading } from './reading';
import { toleranceOf } from './tolerance';

/** How what was read begins where it is the very thing that a fault is about: one instrument often reads several lengths. */
const TELLS: Readonly<Record<CheckId, readonly string[]>> = {
  'missing-back-mortar': ['Back covered'],
  'ring-buttered-back': ['Back covered'],
  'tapering-bed': ['Difference of the two ends'],
  'thick-joint': ['Width of the joint', 'Mean of the two ends', 'Thicker than the mean'],
  'thin-joint': ['Width of the joint', 'Mean of the two ends', 'Thinner than the mean'],
  'open-head': ['Filled'],
  'raked-thin-veneer': ['Mortar lies back'],
  'course-off-level': ['Drop'],
  'gauge-drift': ['That is, in four courses'],
  'perpend-drift': ['This line of head joints'],
  'bulge-or-hollow': ['Farthest off the plane'],
  'out-of-plumb': ['Lean'],
  'twisted-unit': ['One end against the other'],
  'proud-unit': ['Face against its neighbours'],
  'corner-not-square': ['Return off square'],
  'sliver-piece': ['Length'],
  'overhang-too-far': ['Face of the units'],
  'no-bearing-return': ['First course standing'],
  'short-lintel-bearing': ['Bearing'],
  'no-lintel': [],
  'weak-angle': ['Upright leg', 'Flat leg', 'Thickness of the steel'],
  'ties-too-far-apart': ['Widest gap between ties'],
  'no-tie-at-edge': ['Nearest tie', 'No tie so far', 'Widest gap up'],
  'shallow-tie': ['Length in the bed'],
  'tie-near-face': ['From its end to the face'],
  'thin-tie': ['Thickness of the strap', 'Width of the strap'],
  'weeps-too-far-apart': ['From weep to weep'],
  'blocked-weep': ['Open height'],
  'no-flashing': ['Flashing on it'],
  'low-flashing': ['Flashing up the backing'],
  'short-flashing': ['Flashing past the edge'],
  'no-end-dam': ['End dam'],
  'stale-mortar': ['From mixing'],
  'lean-mortar': ['Sand'],
};

/** Readings in the order in which they answer for a fault: the thing itself, then others of its instrument, then the rest; of equal ones the latest first. */
export function tellingFirst(check: CheckId, readings: readonly Reading[]): readonly Reading[] {
  const { instrument } = toleranceOf(check);
  const rank = (each: Reading) => {
    if (TELLS[check].some((start) => each.what.startsWith(start))) return 0;
    return each.instrument === instrument ? 1 : 2;
  };
  return readings.toReversed().sort((a, b) => rank(a) - rank(b));
}
