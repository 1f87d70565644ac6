import type { Wall } from './model';
import { type Part, partsOf } from './parts';
import { type Survey, surveyOf } from './survey';

/** A surveyed wall with its parts: worked out once, where the wall enters, and handed down. */
export interface SurveyedWall extends Survey {
  readonly parts: ReadonlyMap<string, Part>;
}

export function surveyedWall(wall: Wall): SurveyedWall {
  const survey = surveyOf(wall);
  return { ...survey, parts: partsOf(survey) };
}
