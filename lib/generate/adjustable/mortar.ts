import { boundAt } from '../../limits/bound';
import type { Batch, Wall } from '../../wall/model';
import { type Departure, twice } from './departure';

const FIVE_MINUTES = 5;
const QUARTER = 0.25;

/** The first mixing of the wall. */
export const MORTAR_DEPARTURES: readonly Departure[] = [
  {
    id: 'minutes',
    family: 'Mortar',
    name: 'Age of the first mixing when used',
    checks: ['stale-mortar'],
    unit: 'minutes',
    limit: 'mortar-life',
    fit: (wall, limit) => {
      const [batch] = wall.batches;
      if (batch === undefined) return null;
      return {
        at: batch.id,
        sound: batch.minutes,
        most: twice(boundAt(limit, { air: batch.air }), batch.minutes, FIVE_MINUTES),
        step: FIVE_MINUTES,
        change: (now, minutes) => withFirst(now, (first) => ({ ...first, minutes })),
      };
    },
  },
  {
    id: 'sand',
    family: 'Mortar',
    name: 'Sand to one of cement and lime',
    checks: ['lean-mortar'],
    unit: 'volumes',
    limit: 'sand-ratio',
    fit: (wall, limit) => {
      const [batch] = wall.batches;
      if (batch === undefined) return null;
      const sound = batch.sand / (batch.portland + batch.lime);
      return {
        at: batch.id,
        sound,
        most: twice(boundAt(limit, {}), sound, QUARTER),
        step: QUARTER,
        change: (now, value) =>
          withFirst(now, (first) => ({ ...first, sand: value * (first.portland + first.lime) })),
      };
    },
  },
];

function withFirst(wall: Wall, change: (batch: Batch) => Batch): Wall {
  return { ...wall, batches: wall.batches.map((batch, at) => (at === 0 ? change(batch) : batch)) };
}
