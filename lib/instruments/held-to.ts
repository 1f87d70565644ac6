import type { Mm } from '../units';
import { bedId } from '../wall/model';
import type { Part } from '../wall/parts';
import type { PanelSurvey, Placed } from '../wall/survey';

/** The unit that is the part, lies on the bed, or stands left of the head joint. Null for other parts. */
export function unitAt(part: Part, { placed }: PanelSurvey): Placed | null {
  switch (part.kind) {
    case 'unit':
      return placed.find(({ unit }) => unit.id === part.id) ?? null;
    case 'bed':
      return placed.find(({ unit }) => bedId(unit.id) === part.id) ?? null;
    case 'head':
      return placed.find(({ unit }) => part.id.startsWith(`${unit.id}/`)) ?? null;
    default:
      return null;
  }
}

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
