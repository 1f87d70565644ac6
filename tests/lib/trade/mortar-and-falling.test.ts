import { describe, expect, test } from 'vitest';
import { dropForEnergy, fallEnergy, impactSpeed } from '../../../lib/trade/falling';
import { sandRatio } from '../../../lib/trade/mortar-mix';

describe('sand ratio', () => {
  test.each([
    [{ cement: 1, lime: 1, sand: 6 }, 3],
    [{ cement: 2, lime: 2, sand: 9 }, 2.25],
    [{ cement: 0, lime: 1, sand: 3 }, 3],
    [{ cement: 1, lime: 0, sand: 0 }, 0],
  ])('%o: %d', (mix, ratio) => {
    expect(sandRatio(mix)).toBe(ratio);
  });
});

describe('falling', () => {
  test('1 kg from 1 m', () => {
    expect(fallEnergy(1, 1000)).toBe(9.80665);
    expect(impactSpeed(1000)).toBeCloseTo(4.42869, 5);
  });

  test('not dropped, not moving', () => {
    expect([fallEnergy(1, 0), impactSpeed(0), dropForEnergy(1, 0)]).toEqual([0, 0, 0]);
  });

  test.each([1, 250, 3000, 12_000])('energy and speed tell the same drop of %d mm', (height) => {
    expect((1.9 * impactSpeed(height) ** 2) / 2).toBeCloseTo(fallEnergy(1.9, height), 9);
    expect(dropForEnergy(1.9, fallEnergy(1.9, height))).toBeCloseTo(height, 9);
  });

  test('four times the height: four times the energy, twice the speed', () => {
    expect(fallEnergy(2, 12_000) / fallEnergy(2, 3000)).toBe(4);
    expect(impactSpeed(12_000) / impactSpeed(3000)).toBeCloseTo(2, 12);
  });
});

test.each([
  ['cement below nothing', () => sandRatio({ cement: -1, lime: 2, sand: 3 }), 'cement: -1 is negative'],
  ['lime below nothing', () => sandRatio({ cement: 1, lime: -0.5, sand: 3 }), 'lime: -0.5 is negative'],
  [
    'sand that is no number',
    () => sandRatio({ cement: 1, lime: 0, sand: NaN }),
    'sand: NaN is not a finite number',
  ],
  ['sand alone', () => sandRatio({ cement: 0, lime: 0, sand: 3 }), 'cement and lime: 0 is not above zero'],
  ['no mass', () => fallEnergy(0, 2000), 'mass: 0 is not above zero'],
  ['a rise', () => fallEnergy(1.9, -1), 'height: -1 is negative'],
  ['an endless fall', () => impactSpeed(Infinity), 'height: Infinity is not a finite number'],
  ['the speed of a rise', () => impactSpeed(-1), 'height: -1 is negative'],
  ['a drop of no mass', () => dropForEnergy(0, 1), 'mass: 0 is not above zero'],
  ['an energy below nothing', () => dropForEnergy(1, -1), 'energy: -1 is negative'],
])('refuses %s', (_, act, message) => {
  expect(act).toThrow(RangeError);
  expect(act).toThrow(message);
});
