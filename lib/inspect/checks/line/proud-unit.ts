import { medianOf } from '../../../geometry/interval';
import { boundAt } from '../../../limits/bound';
import type { Placed } from '../../../wall/survey';
import type { Check } from '../../check';
import { boxOf } from '../../places';

const LEAST_NEIGHBOURS = 3;

/**
 * Each unit with three neighbours or more: those beside it across a head joint, all below and all above. How far its face, less what the
 * drawing wants proud, stands off the median of theirs, against `unit-set`. Parts: the unit.
 */
export const proudUnit: Check = {
  id: 'proud-unit',
  name: 'Unit proud or set back',
  alsoCalled: 'lippage, lipping, sticks out, stands out, recessed brick, set in, stepped face',
  looksLike: 'One unit stands farther out or farther in than all the units around it.',
  whereToLook: 'Front view, by its shadow, or along the wall in low light. A finger feels the step.',
  measuredBy: 'Hold a straightedge over the units around it, and measure the step to this one.',
  whyItMatters:
    'It throws a shadow, and water drips from it or rests on it. If it is loose as well, it could fall.',
  putsRight:
    'While the mortar is fresh, the mason taps it into line. Once it has set, the mason cuts it out and lays another. It is never ground flat. If it is loose, keep people away.',
  caughtAt: 'As each unit is laid to the line',
  mistakenFor: ['twisted-unit', 'projecting-pattern', 'textured-units'],
  markedOn: ['unit'],
  hazard: 'looks',
  reach: 'in sight',
  lesson: 'line-level-plumb',
  asks: { what: 'How far the face stands out or back from its neighbours', unit: 'mm' },
  tooNear: 0.5,
  measure: ({ panels }, limits, report) => {
    const limit = limits('unit-set');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const { placed } of panels) {
      for (const each of placed) {
        const level = neighbourLevel(each);
        if (level === null) continue;
        report({
          limit,
          end: 'at most',
          measured: Math.abs(each.proud - level),
          bound,
          at: each.unit.id,
          place: () => ({ parts: [each.unit.id], region: boxOf([each]) }),
        });
      }
    }
  },
};

/** Median of the neighbours: one bad neighbour does not move it. */
function neighbourLevel({ left, right, below, above }: Placed): number | null {
  const faces: number[] = [];
  if (left !== null) faces.push(left.proud);
  if (right !== null) faces.push(right.proud);
  for (const each of below) faces.push(each.proud);
  for (const each of above) faces.push(each.proud);
  if (faces.length < LEAST_NEIGHBOURS) return null;
  return medianOf(faces);
}
