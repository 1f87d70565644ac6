import { boundAt } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import { type Mm, snap } from '../../../units';
import type { Panel, Unit, Wall } from '../../../wall/model';
import { shiftCourses, withUnits } from '../../draft';
import type { Fault } from '../../fault';
import { withLength } from '../../lay-backs';
import {
  boundIn,
  departureAt,
  isAmongWhole,
  isClear,
  NoRoom,
  pickUnit,
  type Spoiled,
  type SpoilInput,
  spotOf,
  topOverOpening,
  unitBeside,
} from '../../spoil-input';

/** Beds next to a bad one each take up to this much of it back. */
const TAKEN_BACK_EACH: Mm = 0.75;
/** How far past its limit, or short of it, a joint has to be: what a gauge tells; the beds of a course scatter, and each has to be clear. */
const HEAD_CLEAR: Mm = 0.625;
const BED_CLEAR: Mm = 1.5;
/** The least joint that is left: a joint must be there. */
const LEAST_LEFT: Mm = 2.25;

export const thickJoint: Fault = {
  id: 'thick-joint',
  tolerated: 0.9,
  spoil: (input) => spoilJoint(input, 1),
};

export const thinJoint: Fault = {
  id: 'thin-joint',
  tolerated: 0.9,
  spoil: (input) => spoilJoint(input, -1),
};

/** Makes one bed or one head too thick (+1) or too thin (−1). */
function spoilJoint(input: SpoilInput, way: 1 | -1): Spoiled {
  const bed = input.chance.happens(50);
  if (!bed) return spoilHead(input, way);
  try {
    return spoilBed(input, way);
  } catch (error) {
    if (error instanceof NoRoom) return spoilHead(input, way);
    throw error;
  }
}

/** How much a joint must change: severity times its tolerance, from the design joint to the limit. */
function deviation(design: Mm, bound: Mm, { severity }: SpoilInput, way: 1 | -1, clear: Mm): Mm {
  const wanted = departureAt(Math.abs(bound - design), severity, clear);
  return way === 1 ? wanted : Math.min(wanted, design - LEAST_LEFT);
}

/** A head joint, by cutting its two units shorter or longer: nothing else moves. */
function spoilHead(input: SpoilInput, way: 1 | -1): Spoiled {
  const { wall, rules } = input;
  const bound = boundIn(rules, way === 1 ? 'head-joint-most' : 'head-joint-least');
  // Not beside a corner, where a whole unit shows.
  const amongWhole = isAmongWhole(wall);
  const left = pickUnit(input, true, (unit) => amongWhole(unit, 2));
  const right = unitBeside(wall, left, 1);
  const now = right.x - left.x - left.length;
  const wanted = wall.joint + way * deviation(wall.joint, bound, input, way, HEAD_CLEAR);
  const half = snap((wanted - now) / 2);
  return {
    wall: withUnits(
      wall,
      new Map<string, Unit>([
        [left.id, withLength(left, left.x, left.length - half)],
        [right.id, withLength(right, right.x + half, right.length - half)],
      ]),
    ),
    taken: spotOf([left, right], true),
  };
}

/** A whole bed of a panel, made up for by the beds below and above, so that the gauge is kept at both ends of the stretch. */
function spoilBed(input: SpoilInput, way: 1 | -1): Spoiled {
  const { wall, rules, chance, taken } = input;
  const fromMean = limitOf(rules, 'bed-from-mean-of-eight');
  const design = wall.gauge - wall.family.height;
  const bound =
    fromMean?.rules === rules
      ? design + way * boundAt(fromMean, {})
      : boundIn(rules, way === 1 ? 'bed-joint-most' : 'bed-joint-least');
  const change = snap(deviation(design, bound, input, way, BED_CLEAR));
  const each = Math.ceil(change / TAKEN_BACK_EACH / 2);
  const panel = chance.pick(wall.panels);
  const courses = stretchesOf(wall, panel, each).filter((course) => {
    const units = wall.units.filter(
      (unit) => unit.panel === panel.id && Math.abs(unit.course - course) <= each && unit.course > 1,
    );
    return isClear(spotOf(units, true), taken);
  });
  if (courses.length === 0) throw new NoRoom('no stretch of courses left');
  const course = chance.pick(courses);
  const step = change / (2 * each);
  const spoiled = shiftCourses(wall, panel.id, (at) => {
    const away = at - course;
    if (away < -each || away >= each) return 0;
    return way * (away < 0 ? -step * (away + each + 1) : change / 2 - step * away);
  });
  const moved = wall.units.filter(
    (unit) => unit.panel === panel.id && Math.abs(unit.course - course) <= each,
  );
  return { wall: spoiled, taken: spotOf(moved, true) };
}

/** Courses whose bed can be spoiled: `each` courses below and above without a sill, a head, soldiers, the ledge, the top or a drawn pattern among them. */
function stretchesOf(wall: Wall, panel: Panel, each: number): readonly number[] {
  if (wall.units.some((unit) => unit.kind === 'quoin' && unit.panel === panel.id)) return [];
  const levels = wall.openings
    .filter((opening) => opening.panel === panel.id)
    .flatMap((opening) => [
      opening.y,
      ...levelsFrom(opening.y + opening.height, topOverOpening(wall, opening), wall.gauge),
    ]);
  const courses: number[] = [];
  for (let course = each + 2; course + each <= panel.courses; course++) {
    const from = (course - each - 1) * wall.gauge;
    const to = (course + each) * wall.gauge;
    const gable = panel.gable !== null && course + each >= panel.gable.fromCourse;
    if (!gable && levels.every((level) => level < from + wall.gauge / 4 || level > to - wall.gauge / 4))
      courses.push(course);
  }
  return courses;
}

/** A level and every gauge over it, up to another. */
function levelsFrom(low: Mm, high: Mm, gauge: Mm): readonly Mm[] {
  const levels: Mm[] = [];
  for (let level = low; level <= high; level += gauge) levels.push(level);
  return levels;
}
