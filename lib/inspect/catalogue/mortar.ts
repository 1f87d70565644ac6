import type { CatalogueRow } from '../catalogue-row';
import type { CheckId } from '../finding';

/** What can be wrong with a mixing of mortar. */
export const MORTAR_ROWS = {
  'stale-mortar': {
    name: 'Mortar used too late',
    alsoCalled: [
      'old mortar',
      'stale mud',
      'past its life',
      'mortar gone off',
      'knocked up again',
      'retempered too late',
    ],
    looksLike: 'On the ticket, too long a time lies between mixing and laying.',
    whereToLook: 'Mixing ticket. The finished front shows at most a change of colour.',
    measuredBy:
      'Take the time from first mixing to the last unit laid, and the temperature of the air, from the ticket.',
    whyItMatters: 'Mortar that has begun to set no longer grips. The joint is weak and lets water in.',
    putsRight:
      'The mason throws the rest of the batch away. Courses already laid with it are tested by a specialist, and taken down if they fail.',
    caughtAt: 'When the ticket is read, before the batch is spread',
    mistakenFor: ['hot-day-mortar', 'lean-mortar'],
    hazard: 'lets water in',
    reach: 'out of sight',
    scope: 'batch',
  },
  'lean-mortar': {
    name: 'Too much sand in the mortar',
    alsoCalled: [
      'over-sanded',
      'oversanded',
      'lean mix',
      'weak mix',
      'sandy mortar',
      'harsh mix',
      'too little cement',
    ],
    looksLike: 'On the ticket, the sand is too much for the cement and lime.',
    whereToLook: 'Mixing ticket. On an older wall, the joints feel sandy and wear away.',
    measuredBy: 'Count the measures of sand on the ticket, and divide by those of cement and lime together.',
    whyItMatters:
      'Too little binder leaves the mortar weak and full of pores. It crumbles, and rain gets in.',
    putsRight:
      'The mason throws the batch away and measures the next one by the box. Courses already laid with it are tested by a specialist, and taken down if they fail.',
    caughtAt: 'At the mixer, when the measures are counted',
    mistakenFor: ['stale-mortar', 'efflorescence'],
    hazard: 'lets water in',
    reach: 'out of sight',
    scope: 'batch',
  },
} satisfies Partial<Record<CheckId, CatalogueRow>>;
