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
