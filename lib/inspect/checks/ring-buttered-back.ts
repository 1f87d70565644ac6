import { measureBacks } from '../back-sights';
import type { Check } from '../sight';

export const ringButteredBack: Check = {
  id: 'ring-buttered-back',
  measure: (survey, rules, see) => measureBacks(survey, rules, 'ring-buttered-back', see),
};
