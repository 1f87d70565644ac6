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

/** The part of a ring that lies in a convex one given against the clock: cut by each of its edges in turn (Sutherland and Hodgman, 1974). */
export function clippedTo(ring: Ring, convex: Ring): Ring {
  return convex.reduce((left, from, index) => {
    const to = convex[(index + 1) % convex.length] ?? from;
    // Over 0 to the left of the edge, where the convex ring lies.
    const side = ([x, y]: Point): number =>
      (to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]);
    return left.flatMap((point, at): readonly Point[] => {
      const before = left[(at + left.length - 1) % left.length] ?? point;
      const [here, there] = [side(point), side(before)];
      const crossing = here < 0 !== there < 0 ? [between(before, point, there / (there - here))] : [];
      return here < 0 ? crossing : [...crossing, point];
    });
  }, ring);
}

function between(from: Point, to: Point, share: number): Point {
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}
