import { brickFaces, type Slant } from '../../lib/drawing/brickwork';
import type { Area, Paint, Pen, Shape } from '../../lib/drawing/shape';
import type { Box } from '../../lib/geometry/box';
import type { Ring } from '../../lib/geometry/polygon';
import type { Reading } from '../../lib/instruments/reading';
import type { LengthSystem } from '../../lib/units';
import type { Picture } from '../drawing/kit-drawing';

/** What a picture is drawn from: the reading shown beside it. Null while there is none. */
export interface Shown {
  readonly reading: Reading | null;
  readonly system: LengthSystem;
}

/** On a sheet of 320 by 120. */
export type Drawn = Pick<Picture, 'shapes' | 'labels'>;

/** The value to draw, 0 while there is none. */
export function shownValue({ reading }: Shown): number {
  return reading?.value ?? 0;
}

export function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

export const CHALK: Pen = { paint: '--chalk', width: 1.6 };
export const SLATE: Pen = { paint: '--slate', width: 1 };
export const TICK: Pen = { paint: '#2a2410', width: 0.8 };
export const BODY: Paint = '#2a5c8f';

const filled =
  (fill: Paint, pen: Pen) =>
  (ring: Ring): Area => ({ kind: 'area', rings: [ring], fill, pen });
export const steel = filled('#c3ccd2', { paint: '#5e6a71', width: 1 });
export const blade = filled('#e8c65a', TICK);
export const vial = filled('#d9ecb0', { paint: '#5e6a71', width: 1 });
export const pointer = filled('--clay', { paint: '--raised', width: 1 });

/** Units from in front; what is cut to nothing is left out. */
export function bricks(units: readonly Box[], slant?: Slant): readonly Shape[] {
  return brickFaces(
    units.filter(({ width, height }) => width > 4 && height > 4),
    slant,
  );
}

/** Bricks in a row, flush or each raised by what `rise` says. */
export function rowOf(
  { x, y, width, height }: Box,
  count: number,
  rise: (index: number) => number = () => 0,
): readonly Box[] {
  return Array.from({ length: count }, (_, index) => ({
    x: x + index * (width + 4),
    y: y + rise(index),
    width,
    height,
  }));
}
