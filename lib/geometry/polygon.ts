import type { Mm } from '../units';

/** mm: x to the right, y up. */
export type Point = readonly [x: Mm, y: Mm];

/** The corners of a polygon in order, or the points of a line. The last corner joins the first. */
export type Ring = readonly Point[];

/** The corners of a rectangle, from the lower left against the clock. */
export function rectRing(x: Mm, y: Mm, width: Mm, height: Mm): Ring {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}
