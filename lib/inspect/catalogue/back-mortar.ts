import type { CatalogueRow } from '../catalogue-row';
import type { CheckId } from '../finding';

/** What can be wrong behind a unit that is held by its mortar alone. */
export const BACK_MORTAR_ROWS = {
  'missing-back-mortar': {
    name: 'Missing back mortar',
    alsoCalled: [
      'bare back',
      'dot and dab',
      'spot bedding',
      'poor coverage',
      'voids behind the stone',
      'not back-buttered',
      'hollow stone',
    ],
    looksLike: 'Part of the back has no mortar, and the bare part is open at an edge.',
    whereToLook: 'Behind a lifted unit. The front view shows nothing.',
    measuredBy:
      'Lift the unit, lay a grid over its back, and find the share covered and the largest bare patch.',
    whyItMatters:
      'Only the mortar holds this unit up, so a unit with a bare back can drop. Water also gathers in the gap and freezes.',
    putsRight:
      'While the mortar is fresh, the mason takes the unit off, scrapes it and butters it in full. Once it has set, keep people away. A competent specialist decides which units must come off.',
    caughtAt: 'When a fresh unit is lifted as a check',
    mistakenFor: ['ring-buttered-back'],
    hazard: 'could fall',
    reach: 'out of sight',
    scope: 'unit',
  },
  'ring-buttered-back': {
    name: 'Ring-buttered back',
    alsoCalled: [
      'rim of mortar only',
      'perimeter buttered',
      'trapped void',
      'trapped air',
      'hollow center',
      'hollow centre',
    ],
    looksLike: 'Mortar runs all round the rim of the back, and the middle is bare.',
    whereToLook: 'Behind a lifted unit. From the front, and even at the edges, it looks perfect.',
    measuredBy:
      'Lift the unit, lay a grid over its back, and find the share covered and the size of the bare middle.',
    whyItMatters:
      'Air shut in behind the unit keeps the mortar off the wall. The unit holds for a while, then it can fall.',
    putsRight:
      'While the mortar is fresh, the mason takes the unit off and butters it in full, so that air can escape. Once it has set, keep people away. A competent specialist decides which units must come off.',
    caughtAt: 'When a fresh unit is lifted as a check',
    mistakenFor: ['missing-back-mortar'],
    hazard: 'could fall',
    reach: 'out of sight',
    scope: 'unit',
  },
} satisfies Partial<Record<CheckId, CatalogueRow>>;
