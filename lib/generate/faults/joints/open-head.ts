import { WALL_KINDS } from '../../../wall/model';
import { courseId, courseOf, headId } from '../../../wall/part-id';
import type { Fault } from '../../fault';
import { pickUnit, spotOf, unitBeside } from '../../spoil-input';

/** Filled share left in the joint: from two thirds at the finest to a third at the worst, since a slot must be there to see (common practice). */
function filledAt(severity: number): number {
  return Math.round(Math.max(30, 80 - 10 * severity));
}

/** Leaves one head joint half filled, away from any flashing. */
export const openHead: Fault = {
  id: 'open-head',
  kinds: WALL_KINDS,
  masonry: ['anchored'],
  most: 4,
  spoil: (input) => {
    const weepCourses = new Set(input.wall.heads.map(({ joint }) => courseOf(joint)));
    const left = pickUnit(input, (unit) => !weepCourses.has(courseId(unit.panel, unit.course)));
    const right = unitBeside(input.wall, left, 1);
    const head = { joint: headId(left.id, right.position), filled: filledAt(input.severity) };
    return { wall: { ...input.wall, heads: [...input.wall.heads, head] }, taken: spotOf([left, right]) };
  },
};
