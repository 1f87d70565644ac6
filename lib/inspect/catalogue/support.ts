import type { CatalogueRow } from '../catalogue-row';
import type { CheckId } from '../finding';

/** What can be wrong with the ledges and lintels that the wall stands on. */
export const SUPPORT_ROWS = {
  'overhang-too-far': {
    name: 'Overhangs too far',
    alsoCalled: [
      'hangs off the ledge',
      'overhanging brick',
      'oversailing',
      'past the foundation',
      'past the shelf angle',
      'projects past its support',
    ],
    looksLike: 'The bottom course reaches out past the edge of what it stands on, with a deep shadow below.',
    whereToLook: 'Section, at the ledge and at each lintel.',
    measuredBy: 'Measure from the front edge of the support to the face of the units that stand on it.',
    whyItMatters: 'Too little of the unit is held up. The base can crack, tip out and bring the wall down.',
    putsRight:
      'Keep people away. A licensed engineer decides whether the support is widened or the wall taken back. A contractor does the work.',
    caughtAt: 'When ledge and lintels are ready, before the first course',
    mistakenFor: ['overhang-within-a-third'],
    hazard: 'could fall',
    reach: 'in sight',
    scope: 'support',
  },
  'no-bearing-return': {
    name: 'No bearing under part of the wall',
    alsoCalled: [
      'unsupported return',
      'no ledge',
      'floating corner',
      'hanging brick',
      'brick on wood',
      'brick on timber',
      'nothing under it',
    ],
    looksLike: 'Part of the bottom course stands on nothing, or on wood.',
    whereToLook: 'Front view along the base, then the section. Look at ends, corners and above roofs.',
    measuredBy:
      'Measure how much of the bottom course stands on concrete, steel or masonry, and compare it with the whole length.',
    whyItMatters:
      'Mortar and ties alone cannot carry the weight. Wood shrinks and rots, and then the wall drops.',
    putsRight:
      'Keep people away. A licensed engineer designs a support. A contractor props the wall and puts the support in.',
    caughtAt: 'When ledges and angles are ready, before the first course',
    mistakenFor: ['overhang-too-far', 'hidden-angle'],
    hazard: 'could fall',
    reach: 'in sight',
    scope: 'support',
  },
  'short-lintel-bearing': {
    name: 'Lintel bearing too short',
    alsoCalled: [
      'short end bearing',
      'lintel too short',
      'steel too short',
      'angle iron too short',
      'short seat',
    ],
    looksLike: 'The lintel ends close beside the opening, with little wall under its end.',
    whereToLook: 'Front view at both ends of the lintel, before the course over it hides the steel.',
    measuredBy: 'Measure how far each end of the lintel runs past the opening, and take the shorter one.',
    whyItMatters:
      'All the weight over the opening rests on a small spot. It can crush, and the lintel can drop.',
    putsRight:
      'Keep people away. A licensed engineer decides. A contractor props the wall and puts in a longer lintel.',
    caughtAt: 'When the lintel is set, before brick goes over it',
    mistakenFor: ['weak-angle', 'hairline-cracks'],
    hazard: 'could fall',
    reach: 'in sight',
    scope: 'support',
  },
  'no-lintel': {
    name: 'No lintel',
    alsoCalled: [
      'missing lintel',
      'no steel over the opening',
      'missing angle iron',
      'unsupported head',
      'brick sits on the window frame',
      'brick sits on the door frame',
    ],
    looksLike: 'Units run over an opening, and nothing is there to carry them.',
    whereToLook: 'Section through the opening. From the front, the steel may be hidden though it is there.',
    measuredBy: 'Look in the section or from a safe place, and say whether a lintel is there or not.',
    whyItMatters:
      'The frame was not made to carry the wall. The units sag, crack and can fall on whoever walks below.',
    putsRight:
      'Keep people away from the opening. A licensed engineer decides. A contractor props the wall and puts a lintel in.',
    caughtAt: 'Before the first course over the opening',
    mistakenFor: ['hidden-angle', 'weak-angle'],
    hazard: 'could fall',
    reach: 'in sight',
    scope: 'opening',
  },
  'weak-angle': {
    name: 'Angle too small',
    alsoCalled: [
      'undersized lintel',
      'lintel too light',
      'light steel',
      'angle iron too thin',
      'narrow leg',
      'undersized shelf angle',
    ],
    looksLike: 'The steel over an opening is thin, or its leg is narrow, for the width it spans.',
    whereToLook: 'Section through the lintel. On a wall that has moved, the front view shows a sag.',
    measuredBy:
      'Measure both legs and the thickness of the steel, and the width of the opening, and read the table.',
    whyItMatters: 'Weak steel bends and twists under the weight. The wall over it cracks and can drop.',
    putsRight:
      'Keep people away from the opening. A licensed engineer decides what steel is needed. A contractor props the wall and changes it.',
    caughtAt: 'When the lintel is set, before brick goes over it',
    mistakenFor: ['hidden-angle', 'short-lintel-bearing'],
    hazard: 'could fall',
    reach: 'in sight',
    scope: 'support',
  },
} satisfies Partial<Record<CheckId, CatalogueRow>>;
