import { expect, test } from 'vitest';
import type { Drawing } from '../../lib/drawing/shape';
import { type MarkBox, markOnSheet } from '../../lib/views/pointing/mark-shapes';

/** A sheet of one panel, drawn at its own size. */
const DRAWING: Drawing = {
  box: { x: 0, y: 0, width: 3000, height: 3000 },
  shapes: [],
  labels: [],
  frames: [{ panel: 'A', x: 0, y: 0, scale: 1 }],
  spots: [],
};
const mark = (width: number, height: number): MarkBox => ({
  number: 1,
  panel: 'A',
  state: 'mark',
  x: 1000,
  y: 1000,
  width,
  height,
});

// At 5 mm to a pixel: 18 px are 90 mm, and 4 px of room on each side are 40 mm in all.
test('a ring is never smaller than 18 px either way, and keeps its middle', () => {
  expect(markOnSheet(DRAWING, mark(10, 10), 5)).toEqual({ x: 960, y: 960, width: 90, height: 90 });
});

test('a ring round a larger part has 4 px of room on every side', () => {
  const ring = markOnSheet(DRAWING, mark(215, 65), 5);
  expect(ring).toMatchObject({ width: 255, height: 105 });
});
