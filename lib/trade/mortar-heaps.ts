import type { Mm } from '../units';
import { dabVolume } from './mortar-disc';
import { refuseNotCount, refuseNotPositive } from './refusals';

// Heaps of mortar on the back of a unit. The back is seen with x to the right and y up, its lower left corner at 0, 0.

/** The back of a unit, mm. */
export interface Back {
  readonly length: Mm;
  readonly height: Mm;
}

/** Mortar as it is put on. A dab is a half ball; a bar is a ridge with square sides. mm. */
export type Heap =
  | { readonly kind: 'dab'; readonly x: Mm; readonly y: Mm; readonly radius: Mm }
  | {
      readonly kind: 'bar';
      readonly x: Mm;
      readonly y: Mm;
      readonly width: Mm;
      readonly height: Mm;
      readonly stands: Mm;
    };

/** Dabs in even rows: each in the middle of its share of the back. @throws RangeError unless the counts are whole from 1 and sizes above zero. */
export function dabsOn(back: Back, across: number, up: number, radius: Mm): readonly Heap[] {
  refuseBack(back);
  refuseNotCount('dabs across', across);
  refuseNotCount('dabs up', up);
  refuseNotPositive('radius', radius);
  return Array.from({ length: across * up }, (_, index) => ({
    kind: 'dab' as const,
    x: (back.length * ((index % across) + 0.5)) / across,
    y: (back.height * (Math.floor(index / across) + 0.5)) / up,
    radius,
  }));
}

/** Level ridges of the unit's full length, evenly up the back. @throws RangeError as dabsOn, or when ridges overlap. */
export function ridgesOn(back: Back, count: number, width: Mm, stands: Mm): readonly Heap[] {
  refuseBack(back);
  refuseNotCount('ridges', count);
  refuseNotPositive('ridge width', width);
  refuseNotPositive('ridge height', stands);
  if (count * width > back.height) throw new RangeError(`ridges: ${count} of ${width} mm overlap`);
  return Array.from({ length: count }, (_, index) => ({
    kind: 'bar' as const,
    x: 0,
    y: (back.height * (index + 0.5)) / count - width / 2,
    width: back.length,
    height: width,
    stands,
  }));
}

/** A closed ring along the four edges. @throws RangeError on senseless numbers, or a ring that leaves no middle. */
export function ringOn(back: Back, width: Mm, stands: Mm): readonly Heap[] {
  refuseBack(back);
  refuseNotPositive('ring width', width);
  refuseNotPositive('ring height', stands);
  const { length, height } = back;
  const rest = height - 2 * width;
  if (rest <= 0) throw new RangeError(`ring width: ${width} mm leaves no middle of ${height} mm`);
  const bar = (x: Mm, y: Mm, barWidth: Mm, barHeight: Mm) =>
    ({ kind: 'bar', x, y, width: barWidth, height: barHeight, stands }) as const;
  return [
    bar(0, 0, length, width),
    bar(0, height - width, length, width),
    bar(0, width, width, rest),
    bar(length - width, width, width, rest),
  ];
}

/** mm³. */
export function heapVolume(heap: Heap): number {
  return heap.kind === 'dab' ? dabVolume(heap.radius) : heap.width * heap.height * heap.stands;
}

/** @throws RangeError for a back of no size. */
export function refuseBack({ length, height }: Back): void {
  refuseNotPositive('back length', length);
  refuseNotPositive('back height', height);
}
