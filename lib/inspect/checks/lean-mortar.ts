import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { batchPlace } from '../batches';
import type { Check } from '../sight';

/** Volumes of sand to one of cement and lime together. */
export const leanMortar: Check = {
  id: 'lean-mortar',
  measure: (survey, rules, see) => {
    const limit = limitOf(rules, 'sand-ratio');
    if (limit === undefined) return;
    for (const batch of survey.wall.batches) {
      see({
        limit,
        end: 'at most',
        measured: batch.sand / (batch.portland + batch.lime),
        bound: boundAt(limit, {}),
        at: batch.id,
        place: () => batchPlace(batch, survey),
      });
    }
  },
};
