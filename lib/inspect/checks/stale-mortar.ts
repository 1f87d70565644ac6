import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { batchPlace } from '../batches';
import type { Check } from '../sight';

/** Minutes from mixing to final position, against the clock for the air temperature. */
export const staleMortar: Check = {
  id: 'stale-mortar',
  measure: (survey, rules, see) => {
    const limit = limitOf(rules, 'mortar-life');
    if (limit === undefined) return;
    for (const batch of survey.wall.batches) {
      see({
        limit,
        end: 'at most',
        measured: batch.minutes,
        bound: boundAt(limit, { air: batch.air }),
        at: batch.id,
        place: () => batchPlace(batch, survey),
      });
    }
  },
};
