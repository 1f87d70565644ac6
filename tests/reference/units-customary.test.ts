import { describe, expect, test } from 'vitest';
import { formatInches, fromSystem, inches, inSystem, type MetricUnit } from '../../lib/units';

/** NIST SP 811, 2008 edition, appendix B.8: so many of the metric unit in one of the other. Given there to seven figures or exactly. */
const PUBLISHED: readonly (readonly [metric: MetricUnit, each: number, other: string])[] = [
  ['N', 4.448222, 'lbf'],
  ['kN', 0.004448222, 'lbf'],
  ['kN·m', 0.001355818, 'lbf·ft'],
  ['MPa', 0.006894757, 'psi'],
  ['J', 1.355818, 'ft·lbf'],
  ['kg', 0.45359237, 'lb'],
  ['m/s', 0.3048, 'ft/s'],
  ['km/h', 1.609344, 'mph'],
  ['cm³', 16.38706, 'cu in'],
  ['m²', 0.09290304, 'sq ft'],
  ['kg/m²', 4.882428, 'lb per sq ft'],
  ['g/m²', 305.1517, 'oz per sq ft'],
];

describe('units that go with inches', () => {
  test.each(PUBLISHED)('%s: %d make one %s, and one is so many', (metric, each, other) => {
    expect(inSystem(each, metric, 'inches').unit).toBe(other);
    expect(inSystem(each, metric, 'inches').value).toBeCloseTo(1, 6);
    expect(fromSystem(1, metric, 'inches') / each).toBeCloseTo(1, 6);
  });

  // A pound a foot is 1.488164 kg/m (the same table), so a pound in 1000 ft is 1.488164 g/m.
  test('a line of 1.488164 g/m weighs a pound in 1000 ft', () => {
    expect(inSystem(1.488164, 'g/m', 'inches').value).toBeCloseTo(1, 6);
    expect(inSystem(1.488164, 'g/m', 'inches').unit).toBe('lb in 1000 ft');
  });

  test.each([
    [0, 32],
    [100, 212],
    [-40, -40],
    [5, 41],
    [37.5, 99.5],
  ])('%d °C is %d °F, there and back', (celsius, fahrenheit) => {
    expect(inSystem(celsius, '°C', 'inches')).toEqual({ value: fahrenheit, unit: '°F' });
    expect(fromSystem(fahrenheit, '°C', 'inches')).toBe(celsius);
  });

  // 1/4 in ÷ 10 ft = 6.35 mm ÷ 3.048 m = 2.0833 mm in a metre.
  test('a slope of 2.0833 mm in a metre is 1/4 in in 10 ft', () => {
    expect((inches(1 / 4) / inches(0, 10)) * 1000).toBeCloseTo(2.0833, 4);
    expect(formatInches((2.0833 * inches(0, 10)) / 1000)).toBe('1/4 in');
  });

  test('metric stays as it is', () => {
    expect(inSystem(12.5, 'kN', 'mm')).toEqual({ value: 12.5, unit: 'kN' });
    expect(fromSystem(12.5, 'kN', 'mm')).toBe(12.5);
  });
});
