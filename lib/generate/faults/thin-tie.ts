import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { NoRoom, type SpoilWall } from '../bench';
import { spoilTie } from '../spoil-tie';

/** Strap is rolled in hundredths of a millimetre. */
const HUNDREDTHS = 100;

/** One strap out of a lighter box: thinner, and in bad cases narrower too. */
export const spoilThinTie: SpoilWall = (bench) => {
  const thickness = limitOf(bench.rules, 'tie-thickness');
  if (thickness === undefined) throw new NoRoom('no thickness limit');
  const thin = Math.floor((boundAt(thickness, {}) / bench.severity) * HUNDREDTHS) / HUNDREDTHS;
  return spoilTie(bench, (tie) => ({ ...tie, thickness: thin, width: bench.severity > 2 ? 16 : tie.width }));
};
