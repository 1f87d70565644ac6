import type { Check } from '../../check';
import { measureJoints } from './joint-thickness';

/**
 * As thick-joint, against `first-bed-least`, `bed-joint-least` and `head-joint-least`; with `bed-from-mean-of-eight`, by how far the bed is
 * under the mean.
 */
export const thinJoint: Check = {
  id: 'thin-joint',
  name: 'Joint too thin',
  alsoCalled: 'tight joint, pinched joint, narrow joint, skinny joint, tight perp',
  looksLike: 'Two units almost touch, with only a thread of mortar between them.',
  whereToLook: 'Front view. Look near openings and ends, where space ran short.',
  measuredBy:
    'Measure the joint; a bed is the mean of both ends, and some rules compare it with the beds around it.',
  whyItMatters:
    'Too little mortar holds badly and lets rain in. In a thin bed, a tie has no room for mortar around it.',
  putsRight:
    'The mason spreads the space over many joints before going on. The worst units are taken out and laid anew.',
  caughtAt: 'When the first course is set out dry, then at each course',
  mistakenFor: ['gauge-drift', 'handmade-size-range'],
  markedOn: ['bed', 'head'],
  hazard: 'lets water in',
  reach: 'in sight',
  lesson: 'full-joints',
  asks: {
    what: 'Thickness of the joint; where a bed is held against the mean of eight, how far it is off that mean',
    unit: 'mm',
  },
  tooNear: 0.5,
  measure: (survey, limits, report) => measureJoints(survey, limits, 'thin', report),
};
