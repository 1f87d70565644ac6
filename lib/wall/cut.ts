import type { Box } from '../geometry/box';
import type { Mm } from '../units';
import type { Unit } from './model';

/** Left end of a unit's top. */
export function topLeft({ x, cut }: Pick<Unit, 'x' | 'cut'>): Mm {
  return cut === undefined ? x : x + cut.left;
}

/** Right end of a unit's top. */
export function topRight({ x, length, cut }: Pick<Unit, 'x' | 'length' | 'cut'>): Mm {
  return cut === undefined ? x + length : x + length - cut.right;
}

/** How long a unit is halfway up: what a piece that is cut to a slope comes to. */
export function meanLength({ length, cut }: Pick<Unit, 'length' | 'cut'>): Mm {
  return cut === undefined ? length : length - (cut.left + cut.right) / 2;
}

/** How high a unit stands at x, over its foot: less than its height where an end slopes. */
export function heightAt({ x, length, height, cut }: Unit, at: Mm): Mm {
  if (cut === undefined) return height;
  const left = at - x < cut.left ? Math.max(0, at - x) / cut.left : 1;
  const right = x + length - at < cut.right ? Math.max(0, x + length - at) / cut.right : 1;
  return height * Math.min(left, right);
}

/** Area of the part of a box that lies on a unit's face, mm²; the box in the frame of the unit's lower left corner, and not past its foot or top. */
export function areaOnFace(
  { length, height, cut }: Pick<Unit, 'length' | 'height' | 'cut'>,
  box: Box,
): number {
  if (cut === undefined) return box.width * box.height;
  const { left, right } = cut;
  const [low, high] = [box.y, box.y + box.height];
  const end = box.x + box.width;
  const wide = (y: Mm): Mm =>
    Math.max(0, Math.min(end, length - (right * y) / height) - Math.max(box.x, (left * y) / height));
  // Between the levels at which a slope comes into the box and leaves it, the width goes evenly.
  const levels = [box.x, end]
    .flatMap((x) => [left > 0 ? (x * height) / left : low, right > 0 ? ((length - x) * height) / right : low])
    .filter((y) => y > low && y < high)
    .sort((a, b) => a - b);
  let area = 0;
  let from = low;
  for (const to of [...levels, high]) {
    area += ((wide(from) + wide(to)) / 2) * (to - from);
    from = to;
  }
  return area;
}
