import type { Batch } from '../wall/model';
import { type Bench, NoRoom, type Spoiled } from './bench';

/** Changes one mixing that no other fault has touched. */
export function spoilBatch({ wall, chance, taken }: Bench, change: (batch: Batch) => Batch): Spoiled {
  const free = wall.batches.filter(({ id }) => !taken.some((spot) => spot.panel === id));
  if (free.length === 0) throw new NoRoom('no batch left');
  const batch = chance.pick(free);
  return {
    wall: { ...wall, batches: wall.batches.map((each) => (each === batch ? change(batch) : each)) },
    taken: { panel: batch.id, x: 0, y: 0, width: 0, height: 0 },
  };
}
