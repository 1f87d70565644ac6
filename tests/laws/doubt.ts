import { CATALOGUE } from '../../lib/inspect/catalogue';
import { marginOf } from '../../lib/inspect/check';
import type { CheckId } from '../../lib/inspect/finding';
import { measureAll } from '../../lib/inspect/inspect';
import type { RuleSetId } from '../../lib/limits/limit';
import type { Wall } from '../../lib/wall/model';
import { surveyOf } from '../../lib/wall/survey';

export interface Doubt {
  readonly check: CheckId;
  readonly at: string;
  readonly measured: number;
  readonly bound: number;
}

/** Measurements nearer to their limit than can be told. A wall for practice has none. */
export function doubtsOf(wall: Wall, rules: RuleSetId): readonly Doubt[] {
  const doubts: Doubt[] = [];
  measureAll(surveyOf(wall), rules, (check, measurement) => {
    if (Math.abs(marginOf(measurement)) < CATALOGUE[check].tooNear) {
      doubts.push({ check, at: measurement.at, measured: measurement.measured, bound: measurement.bound });
    }
  });
  return doubts;
}
