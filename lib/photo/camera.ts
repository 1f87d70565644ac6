import type { Mm } from '../units';
import type { Frame } from './lens';
import { inverse, type Matrix, type Spot } from './matrix';

/** Where the camera stood: the point of the wall straight before it, and how far off it was. */
export interface Camera {
  readonly foot: Spot;
  readonly distance: Mm;
}

/** Focal length of a phone's main camera over the picture's diagonal, where nobody said: 26 mm on film of 43.27 mm (from memory). */
const USUAL_FOCAL = 26 / 43.27;

export function usualFocal({ width, height }: Frame): number {
  return USUAL_FOCAL * Math.hypot(width, height);
}

/** From the mapping of pixels to the wall and the focal length (px): K⁻¹H⁻¹ is [r₁ r₂ t] but for scale, and the camera stands at −Rᵀt. */
export function cameraOf(frame: Frame, toWall: Matrix, focal: number): Camera {
  const [a, b, c, d, e, f, g, h, i] = inverse(toWall);
  const ray = (x: number, y: number, z: number) =>
    [(x - (frame.width / 2) * z) / focal, (y - (frame.height / 2) * z) / focal, z] as const;
  const [along, down, to] = [ray(a, d, g), ray(b, e, h), ray(c, f, i)];
  const [lengthA, lengthD] = [Math.hypot(...along), Math.hypot(...down)];
  const scale = (lengthA + lengthD) / 2;
  const [ax, ay, az] = along.map((value) => value / lengthA) as [number, number, number];
  const [dx, dy, dz] = down.map((value) => value / lengthD) as [number, number, number];
  const [tx, ty, tz] = to.map((value) => value / scale) as [number, number, number];
  const out = [ay * dz - az * dy, az * dx - ax * dz, ax * dy - ay * dx] as const;
  return {
    foot: { x: -(ax * tx + ay * ty + az * tz), y: -(dx * tx + dy * ty + dz * tz) },
    distance: Math.abs(out[0] * tx + out[1] * ty + out[2] * tz),
  };
}
