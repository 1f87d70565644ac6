import type { Mm } from '../units';
import { refuseNegative, refuseNotPositive } from './refusals';

// A dab pressed flat between two faces: its volume stays, so area × thickness = volume. mm, mm², mm³.

/** Volume of a half ball, mm³: 2πr³/3. @throws RangeError for a radius not above zero. */
export function dabVolume(radius: Mm): number {
  refuseNotPositive('radius', radius);
  return (2 * Math.PI * radius ** 3) / 3;
}

/** Area a volume covers at a thickness, mm². @throws RangeError on senseless numbers. */
export function pressedArea(volume: number, thickness: Mm): number {
  refuseNegative('volume', volume);
  refuseNotPositive('thickness', thickness);
  return volume / thickness;
}

/** Radius of the disc it becomes, mm: √(V/(πt)). @throws RangeError on senseless numbers. */
export function pressedRadius(volume: number, thickness: Mm): Mm {
  return Math.sqrt(pressedArea(volume, thickness) / Math.PI);
}

/** Area two equal discs share, mm²: 2R²·acos(d/2R) − (d/2)√(4R² − d²); 0 from d = 2R on. @throws RangeError on senseless numbers. */
export function discOverlap(radius: Mm, distance: Mm): number {
  refuseNotPositive('radius', radius);
  refuseNegative('distance', distance);
  if (distance >= 2 * radius) return 0;
  return (
    2 * radius ** 2 * Math.acos(distance / (2 * radius)) -
    (distance / 2) * Math.sqrt(4 * radius ** 2 - distance ** 2)
  );
}

/** Area two equal discs cover together, mm². @throws RangeError on senseless numbers. */
export function discUnion(radius: Mm, distance: Mm): number {
  return 2 * Math.PI * radius ** 2 - discOverlap(radius, distance);
}

/** Area of a disc inside a band of a height, the disc centred in it, mm². @throws RangeError on senseless numbers. */
export function discInBand(radius: Mm, height: Mm): number {
  refuseNotPositive('radius', radius);
  refuseNotPositive('height', height);
  if (height >= 2 * radius) return Math.PI * radius ** 2;
  const half = height / 2;
  return 2 * (half * Math.sqrt(radius ** 2 - half ** 2) + radius ** 2 * Math.asin(half / radius));
}
