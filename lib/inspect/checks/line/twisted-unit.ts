import { boundAt } from '../../../limits/bound';
import type { Check } from '../../check';
import { boxOf } from '../../places';

/**
 * Each unit: how far one end of its face stands out past the other, against `unit-twist`. Parts: the unit.
 */
export const twistedUnit: Check = {
  id: 'twisted-unit',
  name: 'Twisted unit',
  alsoCalled: 'twisted brick, skewed brick, cocked brick, crooked brick, one end out',
  looksLike: 'One end of a unit stands out and catches the light, the other end does not.',
  whereToLook: 'Along the wall in low light from the side. The front view shows only a thin shadow.',
  measuredBy: 'Hold a straightedge along the course, and measure how much farther out one end stands.',
  whyItMatters: 'It makes a shadow and a small ledge where water rests.',
  putsRight:
    'While the mortar is fresh, the mason sets the unit straight or swaps it. Once it has set, the mason cuts it out and lays another.',
  caughtAt: 'As each unit is laid to the line',
  mistakenFor: ['proud-unit', 'textured-units'],
  markedOn: ['unit'],
  hazard: 'looks',
  reach: 'in sight',
  lesson: 'line-level-plumb',
  asks: { what: 'One end proud of the other', unit: 'mm' },
  tooNear: 0.5,
  measure: ({ panels }, limits, report) => {
    const limit = limits('unit-twist');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const { placed } of panels) {
      for (const each of placed) {
        report({
          limit,
          end: 'at most',
          measured: Math.abs(each.unit.twist),
          bound,
          at: each.unit.id,
          place: () => ({ parts: [each.unit.id], region: boxOf([each]) }),
        });
      }
    }
  },
};
