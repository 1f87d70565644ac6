import { type Mm, snap } from '../../../units';
import type { Unit, Wall } from '../../../wall/model';
import { courseOf, unitId } from '../../../wall/part-id';
import type { Fault } from '../../fault';
import {
  boundIn,
  isAmongWhole,
  isClear,
  pickUnit,
  type Spoiled,
  type SpoilInput,
  spotOf,
  unitBeside,
} from '../../spoil-input';

/** The longer of two pieces is over the least by so much, mm. */
const LARGER = 3;

/** In a hundred slivers on a wall of bricks with a gable, this many stand at its rake. */
const RAKE_PERCENT = 50;

/** Makes up the place of one unit, or of two at a rake, with a sliver and something longer: bond set out by the eye. */
export const sliverPiece: Fault = {
  id: 'sliver-piece',
  needs: ['half lap'],
  spoil: (input) => {
    const { wall, rules, chance } = input;
    const least = boundIn(rules, 'smallest-piece', { depth: wall.family.depth });
    const fixed = new Set(
      [...wall.heads.map(({ joint }) => joint), ...wall.projections.flatMap(({ units }) => units)].map(
        courseOf,
      ),
    );
    const isFree = (unit: Unit) => !fixed.has(courseOf(unit.id));
    const ends = wall.masonry === 'anchored' ? rakeEnds(input).filter(isFree) : [];
    return ends.length > 0 && chance.happens(RAKE_PERCENT)
      ? atRake(input, least, chance.pick(ends))
      : inCourse(input, least, isFree);
  },
};

/** One whole unit's place: a sliver, and a longer piece that is none. */
function inCourse(input: SpoilInput, least: Mm, isFree: (unit: Unit) => boolean): Spoiled {
  const { wall, severity, chance } = input;
  const amongWhole = isAmongWhole(wall);
  const unit = pickUnit(input, true, (each) => isFree(each) && amongWhole(each));
  const sliver = snap(Math.min(least / severity, unit.length - wall.joint - least - LARGER));
  const rest = unit.length - wall.joint - sliver;
  const sliverFirst = chance.happens(50);
  const left = pieceOf(unit, unit.x, sliverFirst ? sliver : rest);
  const right = pieceOf(unit, unit.x + left.length + wall.joint, sliverFirst ? rest : sliver);
  return { wall: inPlaceOf(wall, [unit], [left, right]), taken: spotOf([unit], true) };
}

/** End units of the courses under a rake, with two whole ones beside them and no departure near. */
function rakeEnds({ wall, taken }: SpoilInput): readonly Unit[] {
  const whole = new Set(wall.units.filter(({ kind }) => kind === 'stretcher').map(({ id }) => id));
  return wall.units.filter(
    (unit) =>
      unit.cut !== undefined &&
      [1, 2].every((away) =>
        whole.has(unitId(unit.panel, unit.course, unit.position + away * inward(unit))),
      ) &&
      isClear(spotOf([unit, unitBeside(wall, unit, inward(unit))], true), taken),
  );
}

/** Which way along its course the wall lies from a unit that is cut to a rake. */
function inward({ cut }: Unit): 1 | -1 {
  return cut !== undefined && cut.left > 0 ? 1 : -1;
}

/** The places of the end unit and the next one: a small piece that runs out along the slope, down to a triangle, and two three-quarters or so. */
function atRake({ wall, severity }: SpoilInput, least: Mm, end: Unit): Spoiled {
  const next = unitBeside(wall, end, inward(end));
  const away = Math.max(end.cut?.left ?? 0, end.cut?.right ?? 0);
  const foot = snap(Math.max(away, least / severity + away / 2));
  const half = snap((end.length + next.length - wall.joint - foot) / 2);
  const isLeft = inward(end) === 1;
  const from = isLeft ? end.x : next.x;
  const lengths = isLeft ? [foot, half, half] : [half, half, foot];
  let x = from;
  const pieces = lengths.map((length, index) => {
    const piece = pieceOf(index === (isLeft ? 0 : 2) ? end : next, x, length);
    x += length + wall.joint;
    return piece;
  });
  const places = isLeft ? [end, next] : [next, end];
  return { wall: inPlaceOf(wall, places, pieces), taken: spotOf(places, true) };
}

/** The wall with these neighbours of a course taken out, the leftmost first, and others laid in their place. */
function inPlaceOf(wall: Wall, out: readonly Unit[], pieces: readonly Unit[]): Wall {
  const first = out[0];
  if (first === undefined) return wall;
  const last = first.position + out.length - 1;
  const units = wall.units.flatMap((each) => {
    if (each.panel !== first.panel || each.course !== first.course || each.position < first.position)
      return [each];
    if (each.id === first.id) return pieces.map((piece, index) => placedAt(piece, first.position + index));
    return each.position <= last ? [] : [placedAt(each, each.position + pieces.length - out.length)];
  });
  return { ...wall, units };
}

function placedAt(unit: Unit, position: number): Unit {
  return { ...unit, position, id: unitId(unit.panel, unit.course, position) };
}

/** A cut piece, buttered in full where it is stuck on. */
function pieceOf(unit: Unit, x: Mm, length: Mm): Unit {
  const { back, height } = unit;
  return {
    ...unit,
    kind: 'cut',
    x,
    length,
    fall: 0,
    ...(back && { back: [{ x: 0, y: 0, width: length, height }] }),
  };
}
