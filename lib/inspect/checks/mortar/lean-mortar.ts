import { boundAt } from '../../../limits/bound';
import type { Check } from '../../check';
import { batchPlace } from './batch-place';

/**
 * Each mixing: volumes of sand to one of cement and lime together, against `sand-ratio`. Parts: the mixing, the courses laid with it.
 */
export const leanMortar: Check = {
  id: 'lean-mortar',
  name: 'Too much sand in the mortar',
  alsoCalled: 'over-sanded, oversanded, lean mix, weak mix, sandy mortar, harsh mix, too little cement',
  looksLike: 'On the ticket, the sand is too much for the cement and lime.',
  whereToLook: 'Mixing ticket. On an older wall, the joints feel sandy and wear away.',
  measuredBy: 'Count the measures of sand on the ticket, and divide by those of cement and lime together.',
  whyItMatters: 'Too little binder leaves the mortar weak and full of pores. It crumbles, and rain gets in.',
  putsRight:
    'The mason throws the batch away and measures the next one by the box. Courses already laid with it are tested by a specialist, and taken down if they fail.',
  caughtAt: 'At the mixer, when the measures are counted',
  mistakenFor: ['stale-mortar', 'efflorescence'],
  markedOn: ['batch'],
  hazard: 'lets water in',
  reach: 'out of sight',
  lesson: 'mortar',
  asks: { what: 'Volumes of sand to one of cement and lime', unit: 'volumes' },
  tooNear: 0.1,
  measure: (survey, limits, report) => {
    const limit = limits('sand-ratio');
    if (limit === undefined) return;
    for (const batch of survey.wall.batches) {
      report({
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
