import type { Check } from '../../check';
import { measureJoints } from './joint-thickness';

/**
 * A bed is the mean of its two ends (tapering-bed says what an end is). On the ledge, course 1 is held against `first-bed-most`; the others
 * against `bed-joint-most`, or, where the rule set has `bed-from-mean-of-eight`, by how far the bed is over the mean of any eight successive
 * courses' beds that take it in. A course's bed is the mean over its units; course 1 is left out; a wall of fewer beds takes them all; the
 * worst eight count. A head joint is held against `head-joint-most`.
 *
 * Neighbouring beds of a course that fail are one finding, at the worst of them; a unit with no neighbour at its left begins another.
 * Parts: the beds, the worst first, then their units. Each head joint is a finding of its own. Parts: the head, the left unit, the right one.
 */
export const thickJoint: Check = {
  id: 'thick-joint',
  name: 'Joint too thick',
  alsoCalled: 'fat joint, fat bed, wide joint, heavy bed, thick perp, oversize joint',
  looksLike: 'A band of mortar is plainly thicker than the joints around it.',
  whereToLook: 'Front view. Compare beds with beds, and head joints with head joints.',
  measuredBy:
    'Measure the joint; a bed is the mean of both ends, and some rules compare it with the beds around it.',
  whyItMatters:
    'A thick joint shrinks more as it dries and can open at the edges. It also spoils the pattern.',
  putsRight:
    'The mason sets out the courses still to come again. The worst joints are taken down and laid anew, never hidden by wide tooling.',
  caughtAt: 'With a joint gauge, before each lift of scaffold goes up',
  mistakenFor: ['thick-first-bed', 'gauge-drift', 'handmade-size-range', 'chipped-corners', 'mortar-smears'],
  markedOn: ['bed', 'head'],
  hazard: 'looks',
  reach: 'in sight',
  lesson: 'full-joints',
  asks: {
    what: 'Thickness of the joint; where a bed is held against the mean of eight, how far it is off that mean',
    unit: 'mm',
  },
  tooNear: 0.5,
  measure: (survey, limits, report) => measureJoints(survey, limits, 'thick', report),
};
