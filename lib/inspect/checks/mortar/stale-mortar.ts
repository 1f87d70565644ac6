import { boundAt } from '../../../limits/bound';
import type { Check } from '../../check';
import { batchPlace } from './batch-place';

/**
 * Each mixing: minutes from mixing to its last use, against `mortar-life` for the temperature of the air. Parts: the mixing, the courses laid
 * with it.
 */
export const staleMortar: Check = {
  id: 'stale-mortar',
  name: 'Mortar used too late',
  alsoCalled: 'old mortar, stale mud, past its life, mortar gone off, knocked up again, retempered too late',
  looksLike: 'On the ticket, too long a time lies between mixing and laying.',
  whereToLook: 'Mixing ticket. The finished front shows at most a change of colour.',
  measuredBy:
    'Take the time from first mixing to the last unit laid, and the temperature of the air, from the ticket.',
  whyItMatters: 'Mortar that has begun to set no longer grips. The joint is weak and lets water in.',
  putsRight:
    'The mason throws the rest of the batch away. Courses already laid with it are tested by a specialist, and taken down if they fail.',
  caughtAt: 'When the ticket is read, before the batch is spread',
  mistakenFor: ['hot-day-mortar', 'lean-mortar'],
  markedOn: ['batch'],
  hazard: 'lets water in',
  reach: 'out of sight',
  lesson: 'mortar',
  asks: { what: 'Minutes from mixing to the last use', unit: 'minutes' },
  tooNear: 5,
  measure: (survey, limits, report) => {
    const limit = limits('mortar-life');
    if (limit === undefined) return;
    for (const batch of survey.wall.batches) {
      report({
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
