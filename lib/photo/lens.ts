import type { Spot } from './matrix';

/** Where a lens bends a picture about, and the length that counts as 1 from there: half the diagonal. */
export interface Frame {
  readonly width: number;
  readonly height: number;
}

/**
 * Where a point of the picture would be without the lens's bending: x = x′ ÷ (1 + λr²) from the middle, r in half diagonals
 * (A. Fitzgibbon, 2001).
 */
export function unbent({ width, height }: Frame, lambda: number, { x, y }: Spot): Spot {
  const [midX, midY] = [width / 2, height / 2];
  const radius = ((x - midX) ** 2 + (y - midY) ** 2) / (midX * midX + midY * midY);
  const by = 1 / (1 + lambda * radius);
  return { x: midX + (x - midX) * by, y: midY + (y - midY) * by };
}

/** The way back: where the lens shows such a point. */
export function bent({ width, height }: Frame, lambda: number, { x, y }: Spot): Spot {
  const [midX, midY] = [width / 2, height / 2];
  const radius = ((x - midX) ** 2 + (y - midY) ** 2) / (midX * midX + midY * midY);
  const by = 2 / (1 + Math.sqrt(Math.max(0, 1 - 4 * lambda * radius)));
  return { x: midX + (x - midX) * by, y: midY + (y - midY) * by };
}
