import { limitOf } from '../../../limits/limits';
import { type Mm, snap } from '../../../units';
import type { Panel, Unit, Wall } from '../../../wall/model';
import { shiftCourses, withUnits } from '../../draft';
import { type Fault, NO_CORNER } from '../../fault';
import { boundIn, NoRoom, pickPanel, spotOfPanel } from '../../spoil-input';
import { slopeFor } from './slope-for';

/** Each bed loses this much at one end and gains it at the other: no joint goes out by it. */
const EACH_END: Mm = 0.75;
const FROM_COURSE = 3;
/** Shorter courses are not judged, mm. */
const SHORTEST_RUN: Mm = 1000;
/** What a line tells, and what the ends still scatter, mm. */
const CLEAR: Mm = 1;
/** What the beds on a lintel scatter, and what a gauge tells, mm. */
const BED_SCATTER: Mm = 1.25;

/** Beds wedge a little, course after course, until the courses are off level; from there up they stay so. */
export const courseOffLevel: Fault = {
  id: 'course-off-level',
  kinds: NO_CORNER,
  most: 2.3,
  tolerated: 0.9,
  needs: ['half lap', 'no tall units'],
  // On a lintel the beds have no room for the slope: they are over 10 mm by design.
  never: { kind: 'window-panel', rules: 'united-states' },
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const limit = limitOf(rules, 'course-level');
    const panel = pickPanel(input, 'bond');
    const { length, courses } = panel;
    if (limit === undefined) throw new NoRoom('level');
    // A lintel stays level: the bed on it takes up the slope at both its ends.
    const room = boundIn(rules, 'bed-joint-most') - BED_SCATTER - wall.gauge + wall.family.height;
    const steepest = Math.min(...wall.openings.map(({ width }) => (2 * room) / width));
    // Where the limit goes with the run, the short courses of a gable have to be clear of it too.
    const run = panel.gable !== null && limit.bound.form === 'pro-rata' ? SHORTEST_RUN : length;
    const wanted = Math.min(slopeFor(limit.bound, run, severity, CLEAR), steepest) * length;
    const rise = Math.ceil(wanted / (2 * EACH_END));
    const upright = panel.gable === null ? courses : panel.gable.fromCourse;
    if (FROM_COURSE + rise > upright - 1) throw new NoRoom('too few courses to lose the level in');
    const side = chance.happens(50) ? 1 : -1;
    const spoiled = shiftCourses(withTrueEnds(wall, panel), panel.id, (course, x) => {
      const steps = Math.max(0, Math.min(rise, course - FROM_COURSE + 1));
      return (side * wanted * steps * (0.5 - x / length)) / rise;
    });
    return { wall: spoiled, taken: spotOfPanel(panel, 'bond') };
  },
};

/** Both ends of each course as high as its middle, so that the courses are off by the slope alone. */
function withTrueEnds(wall: Wall, panel: Panel): Wall {
  const courses = new Map<number, Unit[]>();
  for (const unit of wall.units) {
    if (unit.panel !== panel.id) continue;
    const course = courses.get(unit.course);
    if (course) course.push(unit);
    else courses.set(unit.course, [unit]);
  }
  const changed = new Map<string, Unit>();
  for (const course of courses.values()) {
    const mean = course.reduce((sum, { y, fall }) => sum + y - fall / 2, 0) / course.length;
    for (const unit of [course[0], course[course.length - 1]]) {
      if (unit) changed.set(unit.id, { ...unit, y: snap(mean), fall: 0 });
    }
  }
  return withUnits(wall, changed);
}
