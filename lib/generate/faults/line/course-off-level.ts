import { limitOf } from '../../../limits/limits';
import type { Mm } from '../../../units';
import { shiftCourses } from '../../draft';
import { type Fault, NO_OPENING } from '../../fault';
import { isClear, NoRoom, spotOf } from '../../spoil-input';
import { slopeFor } from './slope-for';

/** Each bed loses this much at one end and gains it at the other: no joint goes out by it. */
const EACH_END: Mm = 0.75;
const FROM_COURSE = 3;

/** Beds wedge a little, course after course, until the courses are off level; from there up they stay so. */
export const courseOffLevel: Fault = {
  id: 'course-off-level',
  kinds: NO_OPENING,
  masonry: ['anchored', 'adhered'],
  most: 2.3,
  needs: ['half lap', 'no quoins'],
  spoil: (input) => {
    const { wall, rules, severity, chance, taken } = input;
    const limit = limitOf(rules, 'course-level');
    const panel = chance.pick(wall.panels);
    const { length, courses } = panel;
    if (limit === undefined || wall.openings.some((opening) => opening.panel === panel.id))
      throw new NoRoom('openings');
    const wanted = slopeFor(limit.bound, length, severity) * length;
    const rise = Math.ceil(wanted / (2 * EACH_END));
    const upright = panel.gable === null ? courses : panel.gable.fromCourse;
    if (FROM_COURSE + rise > upright - 1) throw new NoRoom('too few courses to lose the level in');
    const side = chance.happens(50) ? 1 : -1;
    const spot = spotOf(wall.units.filter((unit) => unit.panel === panel.id && unit.course >= FROM_COURSE));
    if (!isClear(spot, taken)) throw new NoRoom('another fault stands there');
    const spoiled = shiftCourses(wall, panel.id, (course, x) => {
      const steps = Math.max(0, Math.min(rise, course - FROM_COURSE + 1));
      return (side * EACH_END * steps * (length - 2 * x)) / length;
    });
    return { wall: spoiled, taken: spot };
  },
};
