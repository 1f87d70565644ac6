import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { snap } from '../../units';
import { NoRoom, type SpoilWall } from '../bench';
import { spoilTie } from '../spoil-tie';

/** One tie too short for its cavity: it barely reaches into the bed. */
export const spoilShallowTie: SpoilWall = (bench) => {
  const limit = limitOf(bench.rules, 'tie-embedment');
  if (limit === undefined) throw new NoRoom('no embedment limit');
  const embedment = snap(boundAt(limit, { depth: bench.wall.family.depth }) / bench.severity);
  return spoilTie(bench, (tie) => ({ ...tie, embedment }));
};
