import { describe, expect, test } from 'vitest';
import { areaEach, fewestTies, tieDensity, tiesUpJamb } from '../../../lib/trade/tie-field';
import { inches, squareFeet } from '../../../lib/units';

test('a grid of 800 × 400', () => {
  expect(areaEach(800, 400)).toBe(320_000);
  expect(tieDensity(800, 400)).toBe(3.125);
});

describe('fewest ties', () => {
  test.each([
    ['one for the smallest panel', 1, 320_000, 1],
    ['just filled', 960_000, 320_000, 3],
    ['a little over', 960_001, 320_000, 4],
    ['a little under', 959_999, 320_000, 3],
  ])('%s', (_, panel, each, ties) => {
    expect(fewestTies(panel, each)).toBe(ties);
  });

  // 3 × 2.67 ft² ÷ 2.67 ft² is a hair above 3 in binary; rounding up blindly gives 4.
  test.each([3, 6, 9, 12, 13])('%i whole areas in square feet ask for as many ties', (count) => {
    expect(fewestTies(squareFeet(2.67 * count), squareFeet(2.67))).toBe(count);
  });
});

describe('ties up a jamb', () => {
  test.each([
    [1, 300, 2],
    [300, 300, 2],
    [300.125, 300, 3],
    [1200, 300, 5],
    [1200.125, 300, 6],
  ])('%d mm at %d at most: %i', (height, gap, ties) => {
    expect(tiesUpJamb(height, gap)).toBe(ties);
  });

  // 42 1/2 in ÷ 8 1/2 in is 5.000000000000001 in millimetres.
  test('whole gaps in inches ask for no extra tie', () => {
    expect(tiesUpJamb(inches(42.5), inches(8.5))).toBe(6);
  });
});

test.each([
  ['no horizontal spacing', () => areaEach(0, 400), 'horizontal spacing: 0 is not above zero'],
  ['no vertical spacing', () => tieDensity(800, -400), 'vertical spacing: -400 is not above zero'],
  ['spacing that is no number', () => tieDensity(NaN, 400), 'horizontal spacing: NaN is not a finite number'],
  ['no panel', () => fewestTies(0, 1), 'panel area: 0 is not above zero'],
  ['no area each', () => fewestTies(1, 0), 'area each: 0 is not above zero'],
  ['an endless panel', () => fewestTies(Infinity, 1), 'panel area: Infinity is not a finite number'],
  ['no jamb', () => tiesUpJamb(0, 300), 'height: 0 is not above zero'],
  ['no gap', () => tiesUpJamb(1200, 0), 'greatest gap: 0 is not above zero'],
])('refuses %s', (_, act, message) => {
  expect(act).toThrow(RangeError);
  expect(act).toThrow(message);
});
