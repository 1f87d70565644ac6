import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { NoRoom, type SpoilWall } from '../bench';
import { spoilBatch } from '../spoil-batch';

/** Sand is measured in quarter boxes. */
const QUARTERS = 4;

/** One mixing with too much sand. */
export const spoilLeanMortar: SpoilWall = (bench) => {
  const limit = limitOf(bench.rules, 'sand-ratio');
  if (limit === undefined) throw new NoRoom('no sand ratio');
  return spoilBatch(bench, (batch) => ({
    ...batch,
    sand:
      Math.ceil((batch.portland + batch.lime) * boundAt(limit, {}) * bench.severity * QUARTERS) / QUARTERS,
  }));
};
