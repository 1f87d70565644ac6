import { boundAt } from '../../../limits/bound';
import type { Check } from '../../check';
import { tiePlace } from './tie-place';

/**
 * Each tie: how far it reaches into the bed from the back of the unit, against `tie-embedment`. Parts: the tie.
 */
export const shallowTie: Check = {
  id: 'shallow-tie',
  name: 'Tie not deep enough',
  alsoCalled: 'short tie, short embedment, anchor too short, tie barely in the bed, tie not bedded in',
  looksLike: 'Only the tip of the tie lies in the bed joint.',
  whereToLook: 'Before cover. Pick the tie and read how deep it is bedded.',
  measuredBy: 'Measure how much of the strap lies in the bed, starting from the back of the unit.',
  whyItMatters: 'A short grip pulls out of the mortar. Then this tie holds nothing back.',
  putsRight:
    'While the bed is open, the mason fits a longer tie and never stretches a short one. In a finished wall, keep people away. A licensed engineer decides.',
  caughtAt: 'At every row of ties, before the next course',
  mistakenFor: ['thin-tie', 'tie-near-face'],
  markedOn: ['tie'],
  hazard: 'could fall',
  reach: 'out of sight',
  lesson: 'ties',
  asks: { what: 'How far the tie reaches in', unit: 'mm' },
  tooNear: 2,
  measure: ({ wall }, limits, report) => {
    const limit = limits('tie-embedment');
    if (limit === undefined) return;
    const bound = boundAt(limit, { depth: wall.family.depth });
    for (const tie of wall.ties) {
      report({
        limit,
        end: 'at least',
        measured: tie.embedment,
        bound,
        at: tie.id,
        place: () => tiePlace(tie),
      });
    }
  },
};
