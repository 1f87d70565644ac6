import type { CatalogueRow } from '../catalogue-row';
import type { CheckId } from '../finding';

/** What can be wrong with the ties that hold the wall back to the house. */
export const TIE_ROWS = {
  'ties-too-far-apart': {
    name: 'Ties too far apart',
    alsoCalled: [
      'too few ties',
      'wide tie spacing',
      'missing wall ties',
      'missing brick ties',
      'missing anchors',
    ],
    looksLike: 'A bare stretch of backing has no tie in it, up and down or side to side.',
    whereToLook: 'Before cover: the backing with its ties. The finished front shows nothing.',
    measuredBy:
      'Measure from tie to tie, up and across, and where the rules ask for it the area each tie holds.',
    whyItMatters:
      'Ties hold the wall back in wind and in an earthquake. Where they are missing, it can be pulled off.',
    putsRight:
      'Before cover, the mason adds ties fixed to the studs. In a finished wall, keep people away. A licensed engineer decides how ties are added.',
    caughtAt: 'At every row of ties, with a photo before the brick covers it',
    mistakenFor: ['no-tie-at-edge'],
    hazard: 'could fall',
    reach: 'out of sight',
    scope: 'panel',
  },
  'no-tie-at-edge': {
    name: 'No tie at the edge',
    alsoCalled: [
      'no tie at the jamb',
      'missing jamb ties',
      'missing reveal ties',
      'no edge ties',
      'loose edge',
    ],
    looksLike: 'Along an opening or an end of the wall, no tie is close by, or only a few are.',
    whereToLook: 'Before cover: the backing beside openings and ends. The finished front shows nothing.',
    measuredBy: 'Measure from the edge to the ties beside it, then from tie to tie along the edge.',
    whyItMatters: 'An edge has no wall on its other side to hold it. Wind can work it loose and peel it off.',
    putsRight:
      'Before cover, the mason adds ties, with an extra stud where one is missing. In a finished wall, keep people away. A licensed engineer decides how ties are added.',
    caughtAt: 'At every row of ties, with a photo before the brick covers it',
    mistakenFor: ['ties-too-far-apart'],
    hazard: 'could fall',
    reach: 'out of sight',
    scope: 'edge',
  },
  'shallow-tie': {
    name: 'Tie not deep enough',
    alsoCalled: [
      'short tie',
      'short embedment',
      'anchor too short',
      'tie barely in the bed',
      'tie not bedded in',
    ],
    looksLike: 'Only the tip of the tie lies in the bed joint.',
    whereToLook: 'Before cover. Pick the tie and read how deep it is bedded.',
    measuredBy: 'Measure how much of the strap lies in the bed, starting from the back of the unit.',
    whyItMatters: 'A short grip pulls out of the mortar. Then this tie holds nothing back.',
    putsRight:
      'While the bed is open, the mason fits a longer tie and never stretches a short one. In a finished wall, keep people away. A licensed engineer decides.',
    caughtAt: 'At every row of ties, before the next course',
    mistakenFor: ['thin-tie'],
    hazard: 'could fall',
    reach: 'out of sight',
    scope: 'tie',
  },
  'thin-tie': {
    name: 'Tie too thin',
    alsoCalled: ['light gauge tie', 'flimsy tie', 'narrow strap', 'thin anchor', 'undersized tie'],
    looksLike: 'The strap is thinner or narrower than it should be and bends with a finger.',
    whereToLook: 'Before cover, with the size of each tie. On site, measure a strap from the box.',
    measuredBy: 'Measure the thickness of the strap with a caliper, and its width with a rule.',
    whyItMatters: 'A thin tie buckles, and rust eats through it sooner. Then it no longer holds the wall.',
    putsRight:
      'Before cover, the mason takes it off and fits a tie that the rules allow. In a finished wall, keep people away. A licensed engineer decides.',
    caughtAt: 'When the box is opened, then at every row of ties',
    mistakenFor: ['shallow-tie'],
    hazard: 'could fall',
    reach: 'out of sight',
    scope: 'tie',
  },
} satisfies Partial<Record<CheckId, CatalogueRow>>;
