import type { Batch } from '../../../wall/model';
import { NoRoom, type Spoiled, type SpoilInput } from '../../spoil-input';

/** Changes one mixing that no other fault has touched. */
export function spoilBatch({ wall, chance, taken }: SpoilInput, change: (batch: Batch) => Batch): Spoiled {
  const free = wall.batches.filter(({ id }) => !taken.some((spot) => spot.panel === id));
  if (free.length === 0) throw new NoRoom('no batch left');
  const batch = chance.pick(free);
  return {
    wall: { ...wall, batches: wall.batches.map((each) => (each === batch ? change(batch) : each)) },
    taken: { panel: batch.id, x: 0, y: 0, width: 0, height: 0 },
  };
}
