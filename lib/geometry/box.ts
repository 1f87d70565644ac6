import type { Mm } from '../units';

/** A rectangle from its lower left corner, mm: x to the right, y up. */
export interface Box {
  readonly x: Mm;
  readonly y: Mm;
  readonly width: Mm;
  readonly height: Mm;
}

/** A rectangle on the face of a panel, in the frame of that panel. */
export interface FaceBox extends Box {
  readonly panel: string;
}

/** The smallest box round several; for an empty list its sizes are −Infinity. */
export function boxRound(boxes: readonly Box[]): Box {
  const x = Math.min(...boxes.map((box) => box.x));
  const y = Math.min(...boxes.map((box) => box.y));
  return {
    x,
    y,
    width: Math.max(...boxes.map((box) => box.x + box.width)) - x,
    height: Math.max(...boxes.map((box) => box.y + box.height)) - y,
  };
}

/** The box with `by` mm more on every side; negative: less. */
export function grown({ x, y, width, height }: Box, by: Mm): Box {
  return { x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by };
}

/** The part of a box that lies in another; a width or height of zero or below where they do not meet. */
export function clipped(box: Box, to: Box): Box {
  const x = Math.max(box.x, to.x);
  const y = Math.max(box.y, to.y);
  return {
    x,
    y,
    width: Math.min(box.x + box.width, to.x + to.width) - x,
    height: Math.min(box.y + box.height, to.y + to.height) - y,
  };
}

/** True where two boxes share more than an edge. */
export function overlaps(one: Box, other: Box): boolean {
  const { width, height } = clipped(one, other);
  return width > 0 && height > 0;
}

/** How far two boxes lie apart, mm; 0 where they touch or overlap. */
export function gapBetween(one: Box, other: Box): Mm {
  const dx = Math.max(one.x - other.x - other.width, other.x - one.x - one.width, 0);
  const dy = Math.max(one.y - other.y - other.height, other.y - one.y - one.height, 0);
  return Math.sqrt(dx * dx + dy * dy);
}

/** How far a point lies outside a box, mm; 0 in it and on its edge. */
export function distanceTo(box: Box, x: Mm, y: Mm): Mm {
  const dx = Math.max(box.x - x, x - box.x - box.width, 0);
  const dy = Math.max(box.y - y, y - box.y - box.height, 0);
  return Math.sqrt(dx * dx + dy * dy);
}
