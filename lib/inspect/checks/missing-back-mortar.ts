import { measureBacks } from '../back-sights';
import type { Check } from '../sight';

export const missingBackMortar: Check = {
  id: 'missing-back-mortar',
  measure: (survey, rules, see) => measureBacks(survey, rules, 'missing-back-mortar', see),
};
