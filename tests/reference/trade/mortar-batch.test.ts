import { describe, expect, test } from 'vitest';
import { dampSandFor, drySandIn } from '../../../lib/trade/mortar-bulking';
import { evaporationOf, hydrationPace } from '../../../lib/trade/mortar-weather';
import { batchWeights, solidVolumes, yieldOf } from '../../../lib/trade/mortar-yield';

// Bulk densities as ASTM C270 is widely quoted; yields by absolute volumes, worked out by a second program.
describe('a batch', () => {
  test.each([
    [
      { cement: 1, lime: 1, sand: 6 },
      { cement: 94, lime: 40, sand: 480 },
    ],
    [
      { cement: 1, lime: 2, sand: 9 },
      { cement: 94, lime: 80, sand: 720 },
    ],
  ])('%j weighs %j lb', (mix, pounds) => {
    expect(batchWeights(mix)).toEqual(pounds);
  });

  const mix = { cement: 1, lime: 1, sand: 6 };
  test.each([
    ['cement', 0.4782],
    ['lime', 0.2787],
    ['sand', 2.9028],
  ] as const)('1:1:6, %s without pores: %d ft³', (material, expected) => {
    expect(solidVolumes(mix)[material]).toBeCloseTo(expected, 4);
  });
  test.each([
    ['solids', 0, 0, 3.6597, 4],
    ['with 92 lb of water', 92, 0, 5.134, 3],
    ['and 8 % of air', 92, 0.08, 5.5805, 3],
  ])('1:1:6, %s', (_, water, air, expected, digits) => {
    expect(yieldOf(mix, water, air)).toBeCloseTo(expected, digits);
  });
  test('which is 93 % of its sand', () => {
    expect(Math.round((100 * yieldOf(mix, 92, 0.08)) / 6)).toBe(93);
  });
});

describe('damp sand', () => {
  test('6 volumes at 25 % hold 4.8 dry, so 1:6 is 1:4.8', () => {
    expect(drySandIn(6, 0.25)).toBe(4.8);
  });
  test('2 volumes at 30 % hold 1.538 dry', () => {
    expect(drySandIn(2, 0.3)).toBeCloseTo(1.538, 3);
  });
  test('6 dry at 25 % are measured as 7.5 damp', () => {
    expect(dampSandFor(6, 0.25)).toBe(7.5);
  });
});

// Uno 1998, ACI Materials Journal 95-M34; worked out by a second program.
test.each([
  [32, 0.3, 20, 1.48492],
  [35, 0.2, 30, 2.78118],
])('%d °C, humidity %d, %d km/h: %d kg/(m²·h)', (air, humidity, wind, expected) => {
  expect(evaporationOf({ surface: air, air, humidity, wind })).toBeCloseTo(expected, 5);
});
test('1.48492 kg/(m²·h) are 0.3041 lb/(ft²·h)', () => {
  const pounds = evaporationOf({ surface: 32, air: 32, humidity: 0.3, wind: 20 }) / 0.45359237;
  expect(pounds * 0.3048 ** 2).toBeCloseTo(0.3041, 4);
});

describe('pace of hardening', () => {
  // NIST (Garboczi and others) prints 0.585 at 15 °C and 1.65 at 35 °C against 25 °C for 38.2 kJ/mol.
  test.each([
    [15, 0.585],
    [35, 1.65],
  ])('NIST, %d °C: %d', (air, printed) => {
    expect(Math.abs(hydrationPace(air, 25) - printed)).toBeLessThan(0.0015);
  });
  // The same formula by a second program.
  test.each([
    [0, 0.244],
    [5, 0.33],
    [10, 0.442],
    [15, 0.586],
    [20, 0.769],
    [25, 1],
    [30, 1.289],
    [35, 1.649],
    [40, 2.092],
  ])('%d °C: %d', (air, expected) => {
    expect(hydrationPace(air, 25)).toBeCloseTo(expected, 3);
  });
  test.each([
    [5, 5.8, 1],
    [30, 1.49, 2],
    [35, 1.17, 2],
    [40, 0.92, 2],
  ])('2.5 h at 20 °C are, by hardening alone, at %d °C %d h', (air, hours, digits) => {
    expect(2.5 / hydrationPace(air, 20)).toBeCloseTo(hours, digits);
  });
  test('from 20 to 30 °C it rises 1.68 times, not two', () => {
    expect(hydrationPace(30, 20)).toBeCloseTo(1.68, 2);
  });
});
