import type { Check } from '../../check';
import { boxOf } from '../../places';
import { lintelsOf } from './lintels';

/**
 * Anchored walls, each opening with a unit above it (one that overlaps its width with its underside at the head or over it): whether a lintel
 * lies over it, as for short-lintel-bearing. Measured: 1 or 0, against 1. Parts: the opening, the units of the lowest course above it.
 */
export const noLintel: Check = {
  id: 'no-lintel',
  name: 'No lintel',
  alsoCalled:
    'missing lintel, no steel over the opening, missing angle iron, unsupported head, brick sits on the window frame, brick sits on the door frame',
  looksLike: 'Units run over an opening, and nothing is there to carry them.',
  whereToLook: 'Section through the opening. From the front, the steel may be hidden though it is there.',
  measuredBy: 'Look in the section or from a safe place, and say whether a lintel is there or not.',
  whyItMatters:
    'The frame was not made to carry the wall. The units sag, crack and can fall on whoever walks below.',
  putsRight:
    'Keep people away from the opening. A licensed engineer decides. A contractor props the wall and puts a lintel in.',
  caughtAt: 'Before the first course over the opening',
  mistakenFor: ['hidden-angle', 'weak-angle'],
  markedOn: ['opening'],
  hazard: 'could fall',
  reach: 'in sight',
  lesson: 'openings',
  asks: { what: 'Lintel', unit: 'there or not' },
  tooNear: 0,
  measure: ({ wall, panels }, limits, report) => {
    const limit = limits('lintel-present');
    if (limit === undefined || wall.masonry !== 'anchored') return;
    for (const survey of panels) {
      const spanned = lintelsOf(survey, wall.gauge).map(({ opening }) => opening.id);
      for (const opening of survey.openings) {
        const head = opening.y + opening.height;
        const above = survey.placed.filter(
          ({ unit }) =>
            unit.y >= head && unit.x < opening.x + opening.width && unit.x + unit.length > opening.x,
        );
        if (above.length === 0) continue;
        const course = above.reduce(
          (least, { unit }) => Math.min(least, unit.course),
          Number.POSITIVE_INFINITY,
        );
        const lowest = above.filter(({ unit }) => unit.course === course);
        report({
          limit,
          end: 'at least',
          measured: spanned.includes(opening.id) ? 1 : 0,
          bound: 1,
          at: opening.id,
          place: () => ({ parts: [opening.id, ...lowest.map(({ unit }) => unit.id)], region: boxOf(lowest) }),
        });
      }
    }
  },
};
