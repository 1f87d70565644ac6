import { describe, expect, test } from 'vitest';
import { cornerOf, offAtEnd, squareDiagonal } from '../../../lib/trade/corner-square';
import { bubbleMove, reversalOf, steppedError, tiltOf } from '../../../lib/trade/spirit-level';

// Sensitivity by the makers' convention: tilt for a bubble move of 2 mm (data pages of two vial makers). Worked out by a second program.
describe('spirit vial', () => {
  test.each([
    ['0.5 mm/m in degrees', tiltOf(0.5), 0.028648, 6],
    ['1 mm/m in degrees', tiltOf(1), 0.057, 3],
    ['0.5 mm/m in a vial of 4000 mm', bubbleMove(0.5, 4000), 2, 5],
    ['10 mm/m in a vial of 200 mm', bubbleMove(10, 200), 2, 4],
    ['10 mm/m in degrees', tiltOf(10), 0.573, 4],
    ['0.5 mm/m in a vial of 200 mm', bubbleMove(0.5, 200), 0.1, 3],
    // 1/4 in over 10 ft, the level tolerance of the US specification.
    ['1/4 in in 10 ft, mm/m', 1000 * (0.25 / 120), 2.083, 3],
    ['1/4 in in 10 ft, degrees', tiltOf(1000 * (0.25 / 120)), 0.11937, 5],
    ['1/4 in in 10 ft, bubble', bubbleMove(1000 * (0.25 / 120), 200), 0.417, 3],
    // 8 mm in 2.5 m, the plumb tolerance of the UK warranty book.
    ['8 mm in 2.5 m, degrees', tiltOf(3.2), 0.18335, 5],
  ])('%s', (_, value, expected, digits) => {
    expect(value).toBeCloseTo(expected, digits);
  });
});

// By hand: a bed that rises 2 mm/m under a level that adds 1 reads 3, and turned round 1.
test('reversal parts the slope from the error', () => {
  expect(reversalOf(3, 1)).toEqual({ slope: 2, error: 1 });
  expect(reversalOf(1, -1)).toEqual({ slope: 0, error: 1 });
});

test.each([
  ['same way', 9, 9],
  ['by chance', 9, 3],
  ['turned', 9, 1],
  ['turned', 8, 0],
] as const)('an error of 1 mm, %s, after %d placings: %d mm', (how, placings, expected) => {
  expect(steppedError(1, placings, how)).toBe(expected);
});

// Pythagoras and the cosine rule, by hand.
describe('3-4-5', () => {
  test.each([
    [3000, 4000, 5000],
    [900, 1200, 1500],
    [6, 8, 10],
    [5000, 12_000, 13_000],
  ])('%d and %d: %d', (along, across, diagonal) => {
    expect(squareDiagonal(along, across)).toBe(diagonal);
    expect(cornerOf(along, across, diagonal)).toEqual({ angle: 90, offSquare: 0 });
  });

  test('10 mm too long over 3-4-5 m: 4.171 mm per m open, 90.239 degrees, 33.4 mm at the end of 8 m', () => {
    // (5010² − 5000²) / (2 × 3000 × 4000) = 100 100 / 24 000 000.
    const corner = cornerOf(3000, 4000, 5010);
    expect(corner.offSquare).toBeCloseTo(4.1708, 4);
    expect(corner.angle).toBeCloseTo(90.239, 3);
    expect(offAtEnd(8000, corner)).toBeCloseTo(33.367, 3);
  });

  test('an equilateral triangle has corners of 60 degrees', () => {
    expect(cornerOf(1000, 1000, 1000).angle).toBeCloseTo(60, 9);
  });

  test('a diagonal that closes no triangle is refused', () => {
    expect(() => cornerOf(3000, 4000, 7000)).toThrow('diagonal: 7000 mm closes no triangle');
  });
});
