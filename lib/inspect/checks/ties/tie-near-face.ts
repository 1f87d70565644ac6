import { boundAt } from '../../../limits/bound';
import type { Check } from '../../check';
import { tiePlace } from './tie-place';

/**
 * Each tie: how much of the depth of the family is left between its end and the face of the units, against `tie-cover`. How far a joint is
 * raked plays no part: the codes count to the outside face. Parts: the tie.
 */
export const tieNearFace: Check = {
  id: 'tie-near-face',
  name: 'Tie too near the face',
  alsoCalled:
    'tie too long, anchor too long, tie sticks out, tie shows at the face, no cover on the tie, too little mortar over the tie',
  looksLike: 'The end of the tie lies close behind the face of the wall, with little mortar before it.',
  whereToLook: 'Before cover, or the course from above. Pick the tie and read how much is left to the face.',
  measuredBy: 'Measure from the end of the strap to the face of the units, with the bed still open.',
  whyItMatters:
    'Rain soaks through thin mortar and reaches the metal. It rusts, stains and splits the joint, and in the end lets go.',
  putsRight:
    'While the bed is open, the mason fits a tie of the right length. In a finished wall, a licensed engineer decides what to do.',
  caughtAt: 'At every row of ties, before the next course',
  mistakenFor: ['shallow-tie'],
  markedOn: ['tie'],
  hazard: 'lets water in',
  reach: 'out of sight',
  lesson: 'ties',
  asks: { what: 'What is left between the end of the tie and the face', unit: 'mm' },
  tooNear: 2,
  measure: ({ wall }, limits, report) => {
    const limit = limits('tie-cover');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const tie of wall.ties) {
      report({
        limit,
        end: 'at least',
        measured: wall.family.depth - tie.embedment,
        bound,
        at: tie.id,
        place: () => tiePlace(tie),
      });
    }
  },
};
