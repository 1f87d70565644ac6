import type { CatalogueRow } from '../catalogue-row';
import type { CheckId } from '../finding';

/** What can be wrong with the setting out of whole and cut units. */
export const BOND_ROWS = {
  'sliver-piece': {
    name: 'Sliver',
    alsoCalled: ['short cut', 'small cut', 'tiny bat', 'narrow piece', 'thin cut piece'],
    looksLike: 'A very short piece is squeezed into a course, with no partner in the courses near it.',
    whereToLook: 'Front view. Look beside openings and in the last space of a course.',
    measuredBy:
      'Measure the length of the piece, and compare it with how deep the unit is from front to back.',
    whyItMatters:
      'A small piece has little mortar to hold it and can work loose. Rain gets in at its close joints.',
    putsRight:
      'The mason uses larger cuts, or eases the space over many head joints, and lays that part anew. If it is loose over a door or path, keep people away.',
    caughtAt: 'When the first course is set out dry',
    mistakenFor: ['closers-at-reveal'],
    hazard: 'lets water in',
    reach: 'in sight',
    scope: 'unit',
  },
} satisfies Partial<Record<CheckId, CatalogueRow>>;
