import { boundAt } from '../../../limits/bound';
import { levelOf, ROD_COURSES } from '../../../wall/courses';
import type { Check } from '../../check';
import { panelBox } from '../../places';

const LEAST_COURSES = 8;

/**
 * Each panel of at least eight courses. The level of a course is the mean, over its units, of the height of their undersides at mid-length.
 * Drift: the rise from course 1 to the top course, less as many gauges; divided by the rises and times four.
 * Measured: that, without its sign, against `gauge`. Parts: the panel.
 */
export const gaugeDrift: Check = {
  id: 'gauge-drift',
  name: 'Gauge drifts',
  alsoCalled:
    'off gauge, out of gauge, coursing out, off the story pole, off the storey rod, off the gauge rod, pig in the wall',
  looksLike: 'The courses rise a little too fast or too slowly, so they miss the marks on the rod.',
  whereToLook: 'Front view. Pick the whole panel and read what four courses take up, joints included.',
  measuredBy:
    'Measure from the first course to the top one, and compare the mean of four courses with the gauge.',
  whyItMatters:
    'Small errors add up. At a window head or the roof, the last course no longer fits and must be cut.',
  putsRight:
    'The mason checks the rod and spreads the error over the courses still to come. If a split course shows, that part is rebuilt.',
  caughtAt: 'With the rod at every few courses, before the next lift',
  mistakenFor: ['course-off-level', 'thick-joint', 'thin-joint'],
  markedOn: ['panel'],
  hazard: 'looks',
  reach: 'in sight',
  lesson: 'line-level-plumb',
  asks: { what: 'Gain or loss over four courses', unit: 'mm per 4 courses' },
  tooNear: 0.3,
  measure: ({ wall, panels }, limits, report) => {
    const limit = limits('gauge');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const survey of panels) {
      const { panel, courses } = survey;
      const first = courses[0];
      const top = courses[courses.length - 1];
      if (courses.length < LEAST_COURSES || !first?.length || !top?.length) continue;
      const rises = courses.length - 1;
      const drift = levelOf(top) - levelOf(first) - rises * wall.gauge;
      report({
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
