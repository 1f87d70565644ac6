import { courseId, courseOf, headId } from '../../../wall/part-id';
import type { Fault } from '../../fault';
import { isAmongWhole, pickUnit, spotOf, unitBeside } from '../../spoil-input';

/** Least open share that a probe tells from a full joint, %, and the most that is left open. */
const LEAST_OPEN = 8;
const MOST_OPEN = 70;

/** Filled share left in the joint: a little under the limit of 95 % at the finest, a third at the worst. */
function filledAt(severity: number): number {
  return Math.round(100 - Math.min(MOST_OPEN, Math.max(LEAST_OPEN, 5 * severity * severity)));
}

/** Leaves one head joint filled in part, away from any flashing. */
export const openHead: Fault = {
  id: 'open-head',
  masonry: 'anchored',
  spoil: (input) => {
    const weepCourses = new Set(
      input.wall.heads.filter(({ filled }) => filled === 0).map(({ joint }) => courseOf(joint)),
    );
    const amongWhole = isAmongWhole(input.wall);
    const left = pickUnit(
      input,
      false,
      (unit) => amongWhole(unit) && !weepCourses.has(courseId(unit.panel, unit.course)),
    );
    const right = unitBeside(input.wall, left, 1);
    const head = { joint: headId(left.id, right.position), filled: filledAt(input.severity) };
    // What was listed there of the sound joint gives way.
    const others = input.wall.heads.filter(({ joint }) => joint !== head.joint);
    return { wall: { ...input.wall, heads: [...others, head] }, taken: spotOf([left, right]) };
  },
};
