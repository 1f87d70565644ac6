import { describe, expect, test } from 'vitest';
import { aspectOf, focalOf } from '../../../lib/photo/aspect';
import { type Corners, homographyOf } from '../../../lib/photo/homography';
import { erf } from '../../../lib/photo/joint-fit';
import { mapped, type Spot } from '../../../lib/photo/matrix';
import { propagated } from '../../../lib/photo/propagate';
import { rectangle } from '../../../lib/photo/reference';

function corners(
  ...numbers: readonly [number, number, number, number, number, number, number, number]
): Corners {
  const [a, b, c, d, e, f, g, h] = numbers;
  return [
    { x: a, y: b },
    { x: c, y: d },
    { x: e, y: f },
    { x: g, y: h },
  ];
}

// scikit-image tutorial, solution tile_rectify: the mapping it prints for these four pairs, to nine digits.
test('the published mapping of a tiled floor', () => {
  const floor = homographyOf(
    corners(129, 72, 302, 76, 90, 185, 326, 193),
    corners(0, 0, 400, 0, 0, 400, 400, 400),
  );
  const printed = [
    3.04026872, 1.04929628, -467.743998, -0.144134582, 6.23382067, -430.241727, 2.63620673e-5, 4.17694527e-3,
    1,
  ];
  for (const [index, value] of printed.entries()) {
    expect((floor[index] ?? 0) / value).toBeCloseTo(1, 7);
  }
});

// A table of M. Abramowitz, I. Stegun, Handbook of Mathematical Functions (1964): table 7.1.
test.each([
  [0, 0],
  [0.5, 0.5204998778],
  [1, 0.8427007929],
  [2, 0.995322265],
  [-1, -0.8427007929],
])('erf(%d) is %d', (x, value) => {
  expect(Math.abs(erf(x) - value)).toBeLessThan(1.5e-7);
});

// Worked out for this purpose with Z. Zhang and L. He's formulas: focal length 2900, a rectangle of 1800 × 1200 mm, yaw 20°, pitch 10°.
test('the focal length and the proportions of a rectangle of 1800 × 1200 mm', () => {
  const seen = corners(939.4062, 788.9512, 3309.3062, 544.9824, 3284.3347, 2361.0504, 1098.4243, 2157.616);
  const frame = { width: 4000, height: 3000 };
  expect(focalOf(frame, seen)).toBeCloseTo(2900, 1);
  expect(aspectOf(frame, seen, 2900)).toBeCloseTo(1.5, 5);
});

describe('a worked example: 1800 × 1200 mm, corners clicked to 1.5 px', () => {
  const CLICKED = [420, 380, 3560, 610, 3480, 2520, 500, 2760] as const;
  const mapping = (values: readonly number[]) =>
    homographyOf(corners(...(values.slice(0, 8) as unknown as typeof CLICKED)), rectangle(1800, 1200));
  const ends = (values: readonly number[]): readonly [Spot, Spot] => {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = values.slice(8);
    const matrix = mapping(values);
    return [mapped(matrix, { x: x1, y: y1 }), mapped(matrix, { x: x2, y: y2 })];
  };
  const clicks = CLICKED.map((value) => ({ value, sd: 1.5 }));

  // Lengths and first order standard deviations; each was held against 4,000 random draws, within 3 %.
  test.each([
    ['one course, clicked', [1980, 1500, 1980, 1627], 1, 70.934, 0.792],
    ['ten courses, clicked', [1980, 1000, 1980, 2270], 1, 712.051, 0.941],
    ['joint, fitted edges', [1980, 1500, 1980, 1517], 0.3, 9.469, 0.236],
    ['joint at the right', [3400, 1500, 3400, 1515], 0.3, 9.31, 0.264],
  ])('%s: %j', (_, points, sd, length, lengthSd) => {
    const chain = (values: readonly number[]) => {
      const [from, to] = ends(values);
      return [Math.hypot(to.x - from.x, to.y - from.y)];
    };
    const parameters = [...clicks, ...points.map((value) => ({ value, sd }))];
    expect(chain(parameters.map(({ value }) => value))[0]).toBeCloseTo(length, 3);
    expect((propagated(chain, parameters)[0] ?? 0) / lengthSd).toBeCloseTo(1, 1.7);
  });

  test('slope of a course: 1.10 ± 0.535 mm per m', () => {
    const chain = (values: readonly number[]) => {
      const [from, to] = ends(values);
      return [((to.y - from.y) / (to.x - from.x)) * 1000];
    };
    const parameters = [...clicks, ...[600, 1560, 3400, 1555].map((value) => ({ value, sd: 0.5 }))];
    expect(Math.abs(chain(parameters.map(({ value }) => value))[0] ?? 0)).toBeCloseTo(1.1, 2);
    expect((propagated(chain, parameters)[0] ?? 0) / 0.535).toBeCloseTo(1, 1.7);
  });
});
