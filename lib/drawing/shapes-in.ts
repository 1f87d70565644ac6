import { type Box, overlaps } from '../geometry/box';
import type { Ring } from '../geometry/polygon';
import type { Mm } from '../units';
import type { Shape } from './shape';

/** What of a drawing shows in a box of its sheet: a still picture of one place need not carry the whole wall. */
export function shapesIn(shapes: readonly Shape[], box: Box): readonly Shape[] {
  return shapes.flatMap((shape): readonly Shape[] => {
    if (shape.kind === 'dot') {
      const { at, radius } = shape;
      const round = { x: at[0] - radius, y: at[1] - radius, width: 2 * radius, height: 2 * radius };
      return overlaps(round, box) ? [shape] : [];
    }
    const room = shape.pen && shape.pen.thin !== true ? shape.pen.width / 2 : 1;
    const rings = shape.rings.filter((ring) => overlaps(boxOf(ring, room), box));
    return rings.length > 0 ? [{ ...shape, rings }] : [];
  });
}

function boxOf(ring: Ring, room: Mm): Box {
  let [left, low, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of ring) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    top = Math.max(top, y);
  }
  return { x: left - room, y: low - room, width: right - left + 2 * room, height: top - low + 2 * room };
}
