import type { Corners } from '../../lib/photo/homography';

export const CORNER_NAMES = ['Top left', 'Top right', 'Bottom right', 'Bottom left'] as const;

/** Corners that a person moves from there: so far in from the edges of the picture, as a share of it. */
export function cornersWithin(width: number, height: number, share: number): Corners {
  const [left, right] = [share * width, (1 - share) * width];
  const [top, bottom] = [share * height, (1 - share) * height];
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}
