import { describe, expect, test } from 'vitest';
import { archRadius, archThrust, setOutArch } from '../../../lib/trade/arch';

describe('the circle of an arch', () => {
  // The right triangle of 3, 4 and 5, and of 5, 12 and 13: half the span, radius less rise, radius.
  test.each([
    [6, 1, 5],
    [8, 2, 5],
    [10, 1, 13],
    [24, 8, 13],
    // A semicircle: the rise is the radius.
    [1000, 500, 500],
  ])('span %d, rise %d: radius %d', (span, rise, radius) => {
    expect(archRadius(span, rise)).toBe(radius);
  });

  test.each([
    ['span', 0, 100],
    ['rise', 1000, -1],
  ])('a %s that is not positive is refused by name', (name, span, rise) => {
    expect(() => archRadius(span, rise)).toThrow(new RegExp(`^${name}`));
  });
});

describe('units of an arch', () => {
  // By hand: a semicircle of radius 500 has an underside of 500π = 1570.8 mm. With 57 mm units and 23 of them, 24 joints share
  // 1570.8 − 1311 = 259.8 mm: 10.82 mm each. At the back, 115 mm out, 615π = 1932.1 mm: (1932.1 − 1311) ÷ 24 = 25.88 mm.
  test('are odd in number and fill the curve, with a joint at each skewback', () => {
    const set = setOutArch({ span: 1000, rise: 500, ring: 115, unit: 57 }, 10);
    expect(set.count).toBe(23);
    expect(Math.abs(set.inside - 10.82)).toBeLessThan(0.01);
    expect(Math.abs(set.outside - 25.88)).toBeLessThan(0.01);
    expect(Math.abs(set.half - Math.PI / 2)).toBeLessThan(1e-9);
  });

  test('more rise than half the span, or a unit longer than the curve, is refused', () => {
    expect(() => setOutArch({ span: 1000, rise: 501, ring: 100, unit: 57 }, 10)).toThrow(/^rise: 501 mm/);
    expect(() => setOutArch({ span: 50, rise: 5, ring: 100, unit: 57 }, 10)).toThrow(/^unit: 57 mm/);
  });
});

// Worked out by a second hand for a ring 215 mm deep in a wall 102.5 mm thick, span 1.2 m, rise 120 mm, brickwork of 1900 kg/m³: the ring
// weighs 410.6 N a metre, the triangle 687.5 N, the moment is 211.4 N·m and the push 1.76 kN.
test('an arch of 1.2 m pushes outward with 1.76 kN', () => {
  const thrust = archThrust({ span: 1200, rise: 120, ring: 215, unit: 65 }, 102.5);
  expect(Math.abs(thrust - 1760)).toBeLessThanOrEqual(5);
});

test('half the rise, twice the push', () => {
  const shape = { span: 1200, rise: 120, ring: 215, unit: 65 };
  expect(archThrust({ ...shape, rise: 60 }, 102.5)).toBe(2 * archThrust(shape, 102.5));
});
