import type { Batch } from '../wall/model';
import type { PanelSurvey, Survey } from '../wall/survey';
import { boxOf } from './places';
import type { Place } from './sight';

/** A mixing and the courses laid with it; the box is on the first panel. */
export function batchPlace(batch: Batch, { panels }: Survey): Place {
  const laidWith = ({ courses }: PanelSurvey) => courses.slice(batch.fromCourse - 1, batch.toCourse);
  const parts = panels.flatMap((survey) =>
    laidWith(survey).map((_, index) => `${survey.panel.id}${batch.fromCourse + index}`),
  );
  const [first] = panels;
  return { parts: [batch.id, ...parts], region: boxOf(first ? laidWith(first).flat() : []) };
}
