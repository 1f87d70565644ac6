import type { RuleSetId } from '../limits/limit';
import type { Wall } from '../wall/model';
import { surveyOf } from '../wall/survey';
import type { CheckId } from './finding';
import { seeAll } from './inspect';
import { marginOf, type Sight } from './sight';

/**
 * How near its limit a measurement is too near to call: what the instrument that reads it can tell, and a margin. In the unit of the measurement.
 * Zero for what is there or not, or comes in listed sizes. Readings of a tape ±1 mm, level ±0.5 mm/m, feeler ±0.2 mm are common practice.
 */
const TOO_NEAR: Readonly<Record<CheckId, number>> = {
  'missing-back-mortar': 1,
  'ring-buttered-back': 1,
  'tapering-bed': 0.5,
  'thick-joint': 0.5,
  'thin-joint': 0.5,
  'open-head': 5,
  'raked-thin-veneer': 0,
  'course-off-level': 0.75,
  'gauge-drift': 0.3,
  'perpend-drift': 1,
  'bulge-or-hollow': 1,
  'out-of-plumb': 1,
  'twisted-unit': 0.5,
  'proud-unit': 0.5,
  'corner-not-square': 1,
  'sliver-piece': 2,
  'overhang-too-far': 1,
  'no-bearing-return': 0,
  'short-lintel-bearing': 2,
  'no-lintel': 0,
  'weak-angle': 0,
  'ties-too-far-apart': 5,
  'no-tie-at-edge': 5,
  'shallow-tie': 2,
  'thin-tie': 0.05,
  'stale-mortar': 5,
  'lean-mortar': 0.1,
};

export interface Doubt {
  readonly check: CheckId;
  readonly at: string;
  readonly measured: number;
  readonly bound: number;
}

/** Measurements nearer to their limit than can be told. A wall for practice has none. */
export function doubtsOf(wall: Wall, rules: RuleSetId): readonly Doubt[] {
  const doubts: Doubt[] = [];
  seeAll(surveyOf(wall), rules, (check: CheckId, sight: Sight) => {
    if (Math.abs(marginOf(sight)) < TOO_NEAR[check]) {
      doubts.push({ check, at: sight.at, measured: sight.measured, bound: sight.bound });
    }
  });
  return doubts;
}
