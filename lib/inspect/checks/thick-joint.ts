import { measureJoints } from '../joint-sights';
import type { Check } from '../sight';

export const thickJoint: Check = {
  id: 'thick-joint',
  measure: (survey, rules, see) => measureJoints(survey, rules, 'thick', see),
};
