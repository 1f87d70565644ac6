import { headId } from '../../wall/model';
import { pickUnit, type SpoilWall, spotOf, unitBeside } from '../bench';

/** Filled share left in the joint: from two thirds at the finest to a third at the worst, since a slot must be there to see (common practice). */
function filledAt(severity: number): number {
  return Math.round(Math.max(30, 80 - 10 * severity));
}

/** Leaves one head joint half filled, away from any flashing. */
export const spoilOpenHead: SpoilWall = (bench) => {
  const weepCourses = new Set(bench.wall.heads.map(({ joint }) => joint.slice(0, joint.indexOf('.'))));
  const left = pickUnit(bench, (unit) => !weepCourses.has(`${unit.panel}${unit.course}`));
  const right = unitBeside(bench.wall, left, 1);
  const head = { joint: headId(left.id, right.position), filled: filledAt(bench.severity) };
  return { wall: { ...bench.wall, heads: [...bench.wall.heads, head] }, taken: spotOf([left, right]) };
};
