import { boundAt } from '../../../limits/bound';
import type { Check } from '../../check';
import { tiePlace } from './tie-place';

/**
 * Each tie: the thickness of its strap against `tie-thickness`; where that will do, its width against `tie-width`. Parts: the tie.
 */
export const thinTie: Check = {
  id: 'thin-tie',
  name: 'Tie too thin',
  alsoCalled: 'light gauge tie, flimsy tie, narrow strap, thin anchor, undersized tie',
  looksLike: 'The strap is thinner or narrower than it should be and bends with a finger.',
  whereToLook: 'Before cover, with the size of each tie. On site, measure a strap from the box.',
  measuredBy: 'Measure the thickness of the strap with a caliper, and its width with a rule.',
  whyItMatters: 'A thin tie buckles, and rust eats through it sooner. Then it no longer holds the wall.',
  putsRight:
    'Before cover, the mason takes it off and fits a tie that the rules allow. In a finished wall, keep people away. A licensed engineer decides.',
  caughtAt: 'When the box is opened, then at every row of ties',
  mistakenFor: ['shallow-tie'],
  markedOn: ['tie'],
  hazard: 'could fall',
  reach: 'out of sight',
  lesson: 'ties',
  asks: { what: 'Thickness or width that is too small', unit: 'mm' },
  tooNear: 0.05,
  measure: ({ wall }, limits, report) => {
    const thickness = limits('tie-thickness');
    const width = limits('tie-width');
    if (thickness === undefined || width === undefined) return;
    const thinnest = boundAt(thickness, {});
    const narrowest = boundAt(width, {});
    for (const tie of wall.ties) {
      const thin = tie.thickness < thinnest || tie.width >= narrowest;
      report({
        limit: thin ? thickness : width,
        end: 'at least',
        measured: thin ? tie.thickness : tie.width,
        bound: thin ? thinnest : narrowest,
        at: tie.id,
        place: () => tiePlace(tie),
      });
    }
  },
};
