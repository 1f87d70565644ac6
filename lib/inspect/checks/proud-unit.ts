import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import type { Placed } from '../../wall/survey';
import { boxOf } from '../places';
import type { Check } from '../sight';

const LEAST_NEIGHBOURS = 3;

/** How far the face of a unit stands off the middle one of its neighbours' faces, beyond what the drawing wants. */
export const proudUnit: Check = {
  id: 'proud-unit',
  measure: ({ panels }, rules, see) => {
    const limit = limitOf(rules, 'unit-set');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const { placed } of panels) {
      for (const each of placed) {
        const level = neighbourLevel(each);
        if (level === null) continue;
        see({
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
  faces.sort((a, b) => a - b);
  const middle = Math.floor(faces.length / 2);
  const upper = faces[middle] ?? 0;
  return faces.length % 2 === 1 ? upper : ((faces[middle - 1] ?? 0) + upper) / 2;
}
