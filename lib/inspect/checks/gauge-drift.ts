import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import type { Placed } from '../../wall/survey';
import { panelBox } from '../places';
import type { Check } from '../sight';

const LEAST_COURSES = 8;
/** A rod is read four courses at a time. */
const ROD_COURSES = 4;

/** How far the courses gain or lose on the rod, per four courses, from the first course to the top. */
export const gaugeDrift: Check = {
  id: 'gauge-drift',
  measure: ({ wall, panels }, rules, see) => {
    const limit = limitOf(rules, 'gauge');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const survey of panels) {
      const { panel, courses } = survey;
      const first = courses[0];
      const top = courses[courses.length - 1];
      if (courses.length < LEAST_COURSES || !first?.length || !top?.length) continue;
      const rises = courses.length - 1;
      const drift = levelOf(top) - levelOf(first) - rises * wall.gauge;
      see({
        limit,
        end: 'at most',
        measured: (Math.abs(drift) / rises) * ROD_COURSES,
        bound,
        at: panel.id,
        place: () => ({ parts: [panel.id], region: panelBox(survey) }),
      });
    }
  },
};

/** Mean underside of a course, mm. */
function levelOf(course: readonly Placed[]): number {
  let sum = 0;
  for (const { unit } of course) sum += unit.y - unit.fall / 2;
  return sum / course.length;
}
