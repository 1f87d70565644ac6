import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { snap } from '../../units';
import { NoRoom, pickUnit, type SpoilWall, spotOf } from '../bench';
import { withUnits } from '../draft';

/** Tips one unit about its middle, so that its bed keeps its mean and loses its evenness. */
export const spoilTaperingBed: SpoilWall = (bench) => {
  const limit = limitOf(bench.rules, 'bed-taper');
  if (limit === undefined) throw new NoRoom('no taper limit');
  const unit = pickUnit(bench);
  const taper =
    snap(boundAt(limit, {}) * Math.min(bench.severity, 3.2)) * (bench.chance.happens(50) ? 1 : -1);
  const tipped = { ...unit, fall: taper, y: snap(unit.y + taper / 2) };
  return { wall: withUnits(bench.wall, new Map([[unit.id, tipped]])), taken: spotOf([unit]) };
};
