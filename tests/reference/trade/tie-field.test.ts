import { describe, expect, test } from 'vitest';
import { areaEach, fewestTies, tieDensity, tiesUpJamb } from '../../../lib/trade/tie-field';
import { inches, squareFeet } from '../../../lib/units';

const SQUARE_M = 1_000_000;

// Spacings: NHBC Standards 2020, 6.1.18 Table 10 (900 × 450), read; older Approved Document A (750 × 450). Australian 600 × 600 and New
// Zealand 600 × 400 are told from memory, good enough for arithmetic. Densities by a second program to a ten-thousandth.
describe('ties in a square metre', () => {
  test.each([
    [900, 450, 2.4691],
    [750, 450, 2.963],
    [600, 600, 2.7778],
    [600, 400, 4.1667],
  ])('%i × %i: %d', (horizontal, vertical, density) => {
    expect(tieDensity(horizontal, vertical)).toBeCloseTo(density, 4);
  });

  // IRC R703.8.4.1 (2015 to 2024, read): 2.67 ft² a tie. 4.0314 by a second program.
  test('one for 2.67 ft²: 4.0314', () => {
    expect(SQUARE_M / squareFeet(2.67)).toBeCloseTo(4.0314, 4);
  });
});

describe('area each', () => {
  // NBC 2020, Table 9.20.9.5, read: vertical × horizontal; the areas follow. Whole millimetres: exact.
  test.each([
    [400, 800, 0.32],
    [500, 600, 0.3],
    [600, 400, 0.24],
  ])('NBC %i × %i mm: %d m²', (vertical, horizontal, area) => {
    expect(areaEach(horizontal, vertical) / SQUARE_M).toBe(area);
  });

  // Grids of studs at 16 and 24 in; square feet by a second program to a thousandth.
  test.each([
    [16, 16, 1.778],
    [24, 16, 2.667],
    [16, 24, 2.667],
    [24, 24, 4],
  ])('%i × %i in: %d ft²', (vertical, horizontal, area) => {
    expect(areaEach(inches(horizontal), inches(vertical)) / squareFeet(1)).toBeCloseTo(area, 3);
  });

  // BIA Technical Note 28B, 2005, read: one for 2 2/3 ft², printed as 0.25 m² (two decimals: half a hundredth).
  test('2 2/3 ft² is 0.25 m²', () => {
    expect(Math.abs(squareFeet(8 / 3) / SQUARE_M - 0.25)).toBeLessThanOrEqual(0.005);
    expect(fewestTies(squareFeet(8), squareFeet(8 / 3))).toBe(3);
  });
});

// Counts by a second program, 6.0 × 2.4 m with no openings. UK: 2.5 a square metre (Approved Document A Table 5, by way of LABC).
describe('fewest ties', () => {
  test.each([
    ['UK, 2.5 a square metre', 14.4 * SQUARE_M, 0.4 * SQUARE_M, 36],
    ['US, one for 2.67 ft²', 14.4 * SQUARE_M, squareFeet(2.67), 59],
    ['Australia, 600 × 600', 14.4 * SQUARE_M, areaEach(600, 600), 40],
    ['US, 12 × 8 ft', squareFeet(96), squareFeet(2.67), 36],
  ])('%s', (_, panel, each, ties) => {
    expect(fewestTies(panel, each)).toBe(ties);
  });
});

// NHBC Standards 2020, 6.1.18 Table 10, read: not more than 300 mm apart at jambs. Counts with a tie at either end.
describe('ties up a jamb', () => {
  test.each([
    [1200, 5],
    [2100, 8],
  ])('%i mm: %i', (height, ties) => {
    expect(tiesUpJamb(height, 300)).toBe(ties);
  });
});
