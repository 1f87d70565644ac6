import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { snap } from '../../units';
import { NoRoom, pickFace, type SpoilWall, spotOf } from '../bench';
import { withUnits } from '../draft';

/** Sets one unit proud of its neighbours, or back. */
export const spoilProudUnit: SpoilWall = (bench) => {
  const limit = limitOf(bench.rules, 'unit-set');
  if (limit === undefined) throw new NoRoom('no set limit');
  const unit = pickFace(bench);
  // Half a millimetre more, since the neighbours are not quite in the face either.
  const off = snap(boundAt(limit, {}) * bench.severity + 0.5) * (bench.chance.happens(60) ? 1 : -1);
  return {
    wall: withUnits(bench.wall, new Map([[unit.id, { ...unit, set: unit.set + off }]])),
    taken: spotOf([unit]),
  };
};
