import type { Mm } from '../units';
import type { PanelSurvey, Placed } from './survey';

/** A gauge rod is read so many courses at a time. */
export const ROD_COURSES = 4;

/** Underside of a course, mm above the ledge: the mean of its units at their middles. */
export function levelOf(course: readonly Placed[]): Mm {
  let sum = 0;
  for (const { unit } of course) sum += unit.y - unit.fall / 2;
  return sum / Math.max(1, course.length);
}

/** From the lowest underside of the first course to the highest top of the last, at the middles of units, mm. */
export function heightOf({ courses }: PanelSurvey): Mm {
  const tops = (courses[courses.length - 1] ?? []).map(({ unit }) => unit.y - unit.fall / 2 + unit.height);
  const undersides = (courses[0] ?? []).map(({ unit }) => unit.y - unit.fall / 2);
  return Math.max(...tops) - Math.min(...undersides);
}
