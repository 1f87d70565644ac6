import type { Check } from '../../check';
import { measureBacks } from './back-contact';

/**
 * As missing-back-mortar, for a back whose largest bare area is closed in by mortar all round and reaches no edge.
 */
export const ringButteredBack: Check = {
  id: 'ring-buttered-back',
  name: 'Ring-buttered back',
  alsoCalled:
    'rim of mortar only, perimeter buttered, trapped void, trapped air, hollow center, hollow centre',
  looksLike: 'Mortar runs all round the rim of the back, and the middle is bare.',
  whereToLook: 'Behind a lifted unit. From the front, and even at the edges, it looks perfect.',
  measuredBy:
    'Lift the unit, lay a grid over its back, and find the share covered and the size of the bare middle.',
  whyItMatters:
    'Air shut in behind the unit keeps the mortar off the wall. The unit holds for a while, then it can fall.',
  putsRight:
    'While the mortar is fresh, the mason takes the unit off and butters it in full, so that air can escape. Once it has set, keep people away. A competent specialist decides which units must come off.',
  caughtAt: 'When a fresh unit is lifted as a check',
  mistakenFor: ['missing-back-mortar'],
  markedOn: ['unit'],
  hazard: 'could fall',
  reach: 'out of sight',
  lesson: 'back-buttering',
  asks: { what: 'Share of the back that is covered, at the worst unit', unit: '%' },
  tooNear: 1,
  measure: (survey, limits, report) => measureBacks(survey, limits, 'ring-buttered-back', report),
};
