import { boundAt } from '../../../limits/bound';
import type { Check } from '../../check';
import { lintelBox, lintelsOf } from './lintels';

/**
 * Anchored walls, each lintel with each opening it lies over: not of wood, within half a gauge of the head, and over some of the width; the
 * opening that it names plays no part. How far it runs past the opening at its shorter end, against `lintel-bearing` for the width of the
 * opening. Parts: the lintel, the opening.
 */
export const shortLintelBearing: Check = {
  id: 'short-lintel-bearing',
  name: 'Lintel bearing too short',
  alsoCalled: 'short end bearing, lintel too short, steel too short, angle iron too short, short seat',
  looksLike: 'The lintel ends close beside the opening, with little wall under its end.',
  whereToLook: 'Front view at both ends of the lintel, before the course over it hides the steel.',
  measuredBy: 'Measure how far each end of the lintel runs past the opening, and take the shorter one.',
  whyItMatters:
    'All the weight over the opening rests on a small spot. It can crush, and the lintel can drop.',
  putsRight:
    'Keep people away. A licensed engineer decides. A contractor props the wall and puts in a longer lintel.',
  caughtAt: 'When the lintel is set, before brick goes over it',
  mistakenFor: ['weak-angle', 'hairline-cracks'],
  markedOn: ['support'],
  hazard: 'could fall',
  reach: 'in sight',
  lesson: 'openings',
  asks: { what: 'Bearing at the shorter end', unit: 'mm' },
  tooNear: 2,
  measure: ({ wall, panels }, limits, report) => {
    const limit = limits('lintel-bearing');
    if (limit === undefined || wall.masonry !== 'anchored') return;
    for (const survey of panels) {
      for (const { lintel, opening } of lintelsOf(survey, wall.gauge)) {
        report({
          limit,
          end: 'at least',
          measured: Math.min(opening.x - lintel.fromX, lintel.toX - opening.x - opening.width),
          bound: boundAt(limit, { span: opening.width }),
          at: lintel.id,
          place: () => ({ parts: [lintel.id, opening.id], region: lintelBox(lintel, wall.gauge) }),
        });
      }
    }
  },
};
