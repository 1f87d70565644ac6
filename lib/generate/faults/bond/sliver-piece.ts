import { snap } from '../../../units';
import { type Unit, WALL_KINDS } from '../../../wall/model';
import { courseOf, unitId } from '../../../wall/part-id';
import type { Fault } from '../../fault';
import { boundIn, pickUnit, spotOf } from '../../spoil-input';

/** Makes up one unit's place with a sliver and a longer piece: bond set out by the eye. */
export const sliverPiece: Fault = {
  id: 'sliver-piece',
  kinds: WALL_KINDS,
  masonry: ['anchored', 'adhered'],
  most: 4,
  needs: ['half lap'],
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const least = boundIn(rules, 'smallest-piece', { depth: wall.family.depth });
    const fixed = new Set(
      [...wall.heads.map(({ joint }) => joint), ...wall.projections.flatMap(({ units }) => units)].map(
        courseOf,
      ),
    );
    const unit = pickUnit(input, ({ id }) => !fixed.has(courseOf(id)));
    const sliver = snap(Math.min(least / severity, unit.length * 0.3));
    const rest = unit.length - wall.joint - sliver;
    const sliverFirst = chance.happens(50);
    const left: Unit = { ...unit, kind: 'cut', length: sliverFirst ? sliver : rest, fall: 0, twist: 0 };
    const right: Unit = {
      ...unit,
      kind: 'cut',
      x: unit.x + left.length + wall.joint,
      length: sliverFirst ? rest : sliver,
      fall: 0,
      twist: 0,
    };
    const units = wall.units.flatMap((each) => {
      if (each.panel !== unit.panel || each.course !== unit.course || each.position < unit.position)
        return [each];
      if (each.id === unit.id) return [placedAt(left, unit.position), placedAt(right, unit.position + 1)];
      return [placedAt(each, each.position + 1)];
    });
    return { wall: { ...wall, units }, taken: spotOf([unit]) };
  },
};

function placedAt(unit: Unit, position: number): Unit {
  return { ...unit, position, id: unitId(unit.panel, unit.course, position) };
}
