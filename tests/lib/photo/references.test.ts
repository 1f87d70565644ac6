import { describe, expect, test } from 'vitest';
import type { Corners } from '../../../lib/photo/homography';
import { mappingAt, parametersOf, type Reference } from '../../../lib/photo/reference';

const FRAME = { width: 4000, height: 3000 };
/** 1800 × 1200 mm at 2200 mm from a camera of focal length 2900 px, yaw 20°, pitch 10°: worked out for this purpose. */
const CORNERS: Corners = [
  { x: 939.4062, y: 788.9512 },
  { x: 3309.3062, y: 544.9824 },
  { x: 3284.3347, y: 2361.0504 },
  { x: 1098.4243, y: 2157.616 },
];
const [TOP_LEFT, TOP_RIGHT, BOTTOM_RIGHT, BOTTOM_LEFT] = CORNERS;

function sizeBy(reference: Reference): readonly [number, number] {
  const values = parametersOf(reference).map(({ value }) => value);
  const { width, height } = mappingAt(reference.kind, FRAME, 2200, values);
  return [width, height];
}

describe('each reference gives the rectangle its size', () => {
  const across = { from: TOP_LEFT, to: TOP_RIGHT, mm: 1800 };
  const up = { from: BOTTOM_LEFT, to: TOP_LEFT, mm: 1200 };
  test.each([
    [{ kind: 'rectangle', corners: CORNERS, width: 1800, height: 1200 }],
    [{ kind: 'two lengths', corners: CORNERS, across, up }],
    // A diagonal of 1800 and 1200 is 2163.33.
    [
      {
        kind: 'two lengths',
        corners: CORNERS,
        across: { from: TOP_LEFT, to: BOTTOM_RIGHT, mm: 2163.33 },
        up,
      },
    ],
    [{ kind: 'one length', corners: CORNERS, length: across, focal: 2900 }],
    [{ kind: 'one length', corners: CORNERS, length: up, focal: 2900 }],
    [
      {
        kind: 'counts',
        corners: CORNERS,
        units: 8,
        courses: 16,
        unit: { length: 215, height: 65 },
        joint: 10,
      },
    ],
  ] as const satisfies readonly (readonly [Reference])[])('%j', (reference) => {
    const [width, height] = sizeBy(reference);
    expect(width).toBeCloseTo(1800, 1);
    expect(height).toBeCloseTo(1200, 1);
  });

  test('two lengths that both run along the wall leave its height open, and are refused', () => {
    expect(() =>
      sizeBy({
        kind: 'two lengths',
        corners: CORNERS,
        across,
        up: { from: BOTTOM_LEFT, to: BOTTOM_RIGHT, mm: 1795 },
      }),
    ).toThrow('the two lengths: one must run along the wall and the other up it');
  });
});
