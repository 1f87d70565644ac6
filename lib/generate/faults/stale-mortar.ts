import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { NoRoom, type SpoilWall } from '../bench';
import { spoilBatch } from '../spoil-batch';

/** Mortar left standing is not used after half a day. */
const MOST_MINUTES = 360;

/** One mixing used long after its time. */
export const spoilStaleMortar: SpoilWall = (bench) => {
  const limit = limitOf(bench.rules, 'mortar-life');
  if (limit === undefined) throw new NoRoom('no mortar clock');
  return spoilBatch(bench, (batch) => ({
    ...batch,
    minutes: Math.min(MOST_MINUTES, Math.round(boundAt(limit, { air: batch.air }) * bench.severity)),
  }));
};
