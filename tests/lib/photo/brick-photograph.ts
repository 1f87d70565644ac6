import { readFileSync } from 'node:fs';
import { PNG } from 'pngjs';
import { inverse, type Matrix, mapped, type Spot } from '../../../lib/photo/matrix';
import type { Picture } from '../../../lib/photo/picture';
import type { Reference } from '../../../lib/photo/reference';

/**
 * brick.png: sample image `brick` of scikit-image 0.26.0, made of the texture Bricks25 of CC0Textures; licence CC0. Its documentation
 * gives the mapping that was applied: H = inverse of [[0.54764, −0.00219, 0], [−0.12822, 0.54688, 0], [−0.00022, 0, 1]], then cut to
 * 1024, halved and turned by −90°. Worked out from that: pixels of the picture to pixels of the texture, our "mm".
 */
export const TO_TEXTURE: Matrix = [
  -0.014611428148, 3.6487204684, 8.3822727579, -3.653791101, 0.8554690946, 1868.2145676, -3.2145141926e-6,
  8.0271850304e-4, 1,
];

export function brickPicture(): Picture {
  return PNG.sync.read(readFileSync('tests/lib/photo/brick.png'));
}

/** A rectangle of the texture, given as its two corners; `mm` to one pixel of the texture. */
export function brickReference(
  [left, top, right, bottom]: readonly [number, number, number, number],
  mm = 1,
): Reference {
  const back = inverse(TO_TEXTURE);
  // The published mapping counts pixels by their middles, the program by their corners.
  const corner = (x: number, y: number): Spot => {
    const spot = mapped(back, { x, y });
    return { x: spot.x + 0.5, y: spot.y + 0.5 };
  };
  return {
    kind: 'rectangle',
    corners: [corner(left, top), corner(right, top), corner(right, bottom), corner(left, bottom)],
    width: (right - left) * mm,
    height: (bottom - top) * mm,
  };
}
