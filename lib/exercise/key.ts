import type { Finding } from '../inspect/finding';
import { findingsOf } from '../inspect/inspect';
import type { RuleSetId } from '../limits/limit';
import type { SurveyedWall } from '../wall/surveyed';

/** All that is wrong with a wall by a rule set: what marks are held against. */
export interface Key extends SurveyedWall {
  readonly rules: RuleSetId;
  readonly findings: readonly Finding[];
}

export function keyOf(surveyed: SurveyedWall, rules: RuleSetId): Key {
  return { ...surveyed, rules, findings: findingsOf(surveyed, rules) };
}
