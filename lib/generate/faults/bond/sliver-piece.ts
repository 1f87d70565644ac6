import { type Mm, snap } from '../../../units';
import type { Unit } from '../../../wall/model';
import { courseOf, unitId } from '../../../wall/part-id';
import type { Fault } from '../../fault';
import { boundIn, isAmongWhole, pickUnit, spotOf } from '../../spoil-input';

/** The longer of two pieces is over the least by so much, mm. */
const LARGER = 3;

/** Makes up one unit's place with a sliver and a longer piece: bond set out by the eye. */
export const sliverPiece: Fault = {
  id: 'sliver-piece',
  needs: ['half lap'],
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const least = boundIn(rules, 'smallest-piece', { depth: wall.family.depth });
    const fixed = new Set(
      [...wall.heads.map(({ joint }) => joint), ...wall.projections.flatMap(({ units }) => units)].map(
        courseOf,
      ),
    );
    const amongWhole = isAmongWhole(wall);
    const unit = pickUnit(input, true, (each) => !fixed.has(courseOf(each.id)) && amongWhole(each));
    // The other piece is no sliver.
    const sliver = snap(Math.min(least / severity, unit.length - wall.joint - least - LARGER));
    const rest = unit.length - wall.joint - sliver;
    const sliverFirst = chance.happens(50);
    const left = pieceOf(unit, unit.x, sliverFirst ? sliver : rest);
    const right = pieceOf(unit, unit.x + left.length + wall.joint, sliverFirst ? rest : sliver);
    const units = wall.units.flatMap((each) => {
      if (each.panel !== unit.panel || each.course !== unit.course || each.position < unit.position)
        return [each];
      if (each.id === unit.id) return [placedAt(left, unit.position), placedAt(right, unit.position + 1)];
      return [placedAt(each, each.position + 1)];
    });
    return { wall: { ...wall, units }, taken: spotOf([unit], true) };
  },
};

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
