import type { Check } from '../../check';
import { measureBacks } from './back-contact';

/**
 * Adhered walls, each unit that has a back. The pats are clipped to the back (0 to length, 0 to height); contact is the area of their union,
 * in per cent of the back. Bare areas are the pieces of the rest that hang together edge to edge.
 *
 * A back fails when its contact is under `back-contact`, or when its largest bare area is over `back-void`. It is this fault when that area
 * reaches an edge of the back, else a ring-buttered back. Measured: the contact where that fails, else the largest bare area.
 *
 * Failing units of one name that touch are one finding: neighbours in a course with a head joint between them, or units of the course above
 * or below that overlap them. It tells the worst of them (failing contact before a bare area; the first in order of the units on a tie).
 * Parts: the worst unit, then the others in order.
 */
export const missingBackMortar: Check = {
  id: 'missing-back-mortar',
  name: 'Missing back mortar',
  alsoCalled:
    'bare back, dot and dab, spot bedding, poor coverage, voids behind the stone, not back-buttered, hollow stone',
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
  markedOn: ['unit'],
  hazard: 'could fall',
  reach: 'out of sight',
  lesson: 'back-buttering',
  asks: { what: 'Share of the back that is covered, at the worst unit', unit: '%' },
  tooNear: 1,
  measure: (survey, limits, report) => measureBacks(survey, limits, 'missing-back-mortar', report),
};
