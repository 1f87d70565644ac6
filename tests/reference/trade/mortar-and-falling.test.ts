import { describe, expect, test } from 'vitest';
import { dropForEnergy, fallEnergy, impactSpeed } from '../../../lib/trade/falling';
import { sandRatio } from '../../../lib/trade/mortar-mix';
import { FOOT, POUND_MASS } from './imperial';

// Mixes: C. Beall, Masonry and Concrete (McGraw-Hill 2004), and the ends of ASTM C270's table as IRC Table R606.2.8 prints it, both
// read. Ratios worked out by a second program, exact in two decimals.
describe('sand ratio', () => {
  test.each([
    ['M', 1, 0.25, 3.5, 2.8],
    ['S', 1, 0.5, 4.5, 3],
    ['S, least sand', 1, 0.5, 3.375, 2.25],
    ['N', 1, 1, 6, 3],
    ['N, too much sand', 1, 1, 6.5, 3.25],
    ['O', 1, 2, 9, 3],
    ['K', 1, 3, 12, 3],
    ['masonry cement', 1, 0, 3, 3],
  ])('%s, %d : %d : %d', (_, cement, lime, sand, ratio) => {
    expect(sandRatio({ cement, lime, sand })).toBe(ratio);
  });
});

// Worked out by a second program with g = 9.80665; the tolerance is half of the last digit it printed.
describe('a falling brick of 1.9 kg', () => {
  test.each([
    [2, 37.27, 6.263],
    [10, 186.33, 14.005],
  ])('from %d m: %d J, %d m/s', (metres, energy, speed) => {
    expect(fallEnergy(1.9, metres * 1000)).toBeCloseTo(energy, 2);
    expect(impactSpeed(metres * 1000)).toBeCloseTo(speed, 3);
  });

  // 14.1 and 28.0 J: lowest and mean (at speed) energy of skull failure in Yoganandan et al., J. Neurotrauma 12(4), 1995 (abstract,
  // read). 49 J: the helmet test of EN 397.
  test.each([
    [14.1, 0.757, 3],
    [28, 1.503, 3],
    [49, 2.63, 2],
  ])('%d J after %d m', (energy, metres, digits) => {
    expect(dropForEnergy(1.9, energy) / 1000).toBeCloseTo(metres, digits);
  });
});

describe('published impacts', () => {
  // EN 397 as a standards table prints it (read): 5 kg from 1 m, 49 J. Whole joules.
  test('EN 397: 5 kg from 1 m is 49 J', () => {
    expect(Math.abs(fallEnergy(5, 1000) - 49)).toBeLessThanOrEqual(0.5);
  });

  // ANSI/ISEA Z89.1 Type I (read): 3.6 kg at 5.5 m/s. Energy and drop by a second program.
  test('Z89.1: 3.6 kg at 5.5 m/s is 54.45 J, a drop of 1.5423 m', () => {
    expect(fallEnergy(3.6, 1542.3)).toBeCloseTo(54.45, 2);
    expect(impactSpeed(1542.3)).toBeCloseTo(5.5, 4);
  });

  // Older ANSI Z89.1 (1986, 1997; read): 8 lb from 5 ft. Energy by a second program.
  test('8 lb from 5 ft is 54.23 J', () => {
    expect(fallEnergy(8 * POUND_MASS, 5 * FOOT)).toBeCloseTo(54.23, 2);
  });

  // Horak et al., Legal Medicine 2024 (abstract, read): 332 g from 10 m. 32.6 J follows, to a tenth.
  test('332 g from 10 m is 32.6 J', () => {
    expect(fallEnergy(0.332, 10_000)).toBeCloseTo(32.6, 1);
  });
});
