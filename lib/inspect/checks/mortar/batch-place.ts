import type { Batch } from '../../../wall/model';
import { courseId } from '../../../wall/part-id';
import type { PanelSurvey, Survey } from '../../../wall/survey';
import type { Place } from '../../check';
import { boxOf } from '../../places';

/** A mixing and the courses laid with it; the box is on panel A. */
export function batchPlace(batch: Batch, survey: Survey): Place {
  const panels = [...survey.panels].sort((a, b) => (a.panel.id < b.panel.id ? -1 : 1));
  const laidWith = ({ courses }: PanelSurvey) => courses.slice(batch.fromCourse - 1, batch.toCourse);
  const parts = panels.flatMap((each) =>
    laidWith(each).map((_, index) => courseId(each.panel.id, batch.fromCourse + index)),
  );
  const [first] = panels;
  return { parts: [batch.id, ...parts], region: boxOf(first ? laidWith(first).flat() : []) };
}
