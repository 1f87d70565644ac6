import type { Wall } from '../wall/model';
import { type Part, partsIn } from '../wall/parts';
import { type Survey, surveyOf } from '../wall/survey';

/** A wall with what is asked of it again and again, worked out once and handed down. Apart from the key: a wall's page needs no checks at first. */
export interface SurveyedWall {
  readonly wall: Wall;
  readonly survey: Survey;
  readonly parts: ReadonlyMap<string, Part>;
}

export function surveyed(wall: Wall): SurveyedWall {
  const survey = surveyOf(wall);
  return { wall, survey, parts: partsIn(survey) };
}
