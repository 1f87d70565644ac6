import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { snap } from '../../units';
import { NoRoom, pickFace, type SpoilWall, spotOf } from '../bench';
import { withUnits } from '../draft';

/** Turns one unit about its middle: one end proud, the other back. */
export const spoilTwistedUnit: SpoilWall = (bench) => {
  const limit = limitOf(bench.rules, 'unit-twist');
  if (limit === undefined) throw new NoRoom('no twist limit');
  const unit = pickFace(bench);
  const twist = snap(boundAt(limit, {}) * bench.severity) * (bench.chance.happens(50) ? 1 : -1);
  return { wall: withUnits(bench.wall, new Map([[unit.id, { ...unit, twist }]])), taken: spotOf([unit]) };
};
