import { measureJoints } from '../joint-sights';
import type { Check } from '../sight';

export const thinJoint: Check = {
  id: 'thin-joint',
  measure: (survey, rules, see) => measureJoints(survey, rules, 'thin', see),
};
