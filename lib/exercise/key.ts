import type { Finding } from '../inspect/finding';
import { findingsOf } from '../inspect/inspect';
import type { RuleSetId } from '../limits/limit';
import type { Wall } from '../wall/model';
import { type Part, partsIn } from '../wall/parts';
import { type Survey, surveyOf } from '../wall/survey';

/** A wall with what is asked of it again and again, worked out once and handed down. */
export interface SurveyedWall {
  readonly wall: Wall;
  readonly survey: Survey;
  readonly parts: ReadonlyMap<string, Part>;
}

/** All that is wrong with a wall by a rule set: what marks are held against. */
export interface Key extends SurveyedWall {
  readonly rules: RuleSetId;
  readonly findings: readonly Finding[];
}

export function surveyed(wall: Wall): SurveyedWall {
  const survey = surveyOf(wall);
  return { wall, survey, parts: partsIn(survey) };
}

export function keyOf(surveyedWall: SurveyedWall, rules: RuleSetId): Key {
  return { ...surveyedWall, rules, findings: findingsOf(surveyedWall.survey, rules) };
}
