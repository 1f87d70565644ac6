import { describe, expect, test } from 'vitest';
import {
  bearingPressure,
  bothLoads,
  selfWeight,
  spanToDeflection,
  triangleWeight,
  triangularBending,
  uniformBending,
} from '../../../lib/trade/lintel-bending';
import { angleSection } from '../../../lib/trade/steel-angle';

const BEAM = { elastic: 200_000, inertia: 1_000_000 };

test('a 100 × 50 × 10 angle worked by hand', () => {
  const { area, centroid, inertia, modulus } = angleSection({ upright: 100, level: 50, thickness: 10 });
  // 1000 mm² at 50 and 400 mm² at 5: (50 000 + 2000) ÷ 1400.
  expect(area).toBe(1400);
  expect(centroid).toBeCloseTo(37.142857, 6);
  // 10·100³/12 + 1000·12.857143² + 40·10³/12 + 400·32.142857²
  expect(inertia).toBeCloseTo(833_333.333 + 165_306.122 + 3333.333 + 413_265.306, 2);
  expect(modulus).toBeCloseTo(22_515.15, 2);
});

test('the level leg is not the upright one', () => {
  const tall = angleSection({ upright: 100, level: 50, thickness: 10 });
  const flat = angleSection({ upright: 50, level: 100, thickness: 10 });
  expect(flat.area).toBe(tall.area);
  expect(flat.inertia).toBeLessThan(tall.inertia / 3);
});

describe('bending by hand', () => {
  test('a triangle over 2 m of wall at 2 kPa', () => {
    expect(triangleWeight(0.002, 2000)).toBe(2000);
    const { load, moment, reaction, deflection } = triangularBending(2000, 2000, BEAM);
    expect([load, reaction]).toEqual([2000, 1000]);
    expect(moment).toBeCloseTo(666_666.667, 3);
    expect(deflection).toBeCloseTo(4 / 3, 9);
  });

  test('an even load', () => {
    const { load, moment, reaction, deflection } = uniformBending(1, 2000, BEAM);
    expect([load, moment, reaction]).toEqual([2000, 500_000, 1000]);
    expect(deflection).toBeCloseTo(1.041667, 6);
  });

  test('two loads add, and none bends nothing', () => {
    const nothing = triangularBending(0, 2000, BEAM);
    expect(nothing).toEqual({ load: 0, moment: 0, reaction: 0, deflection: 0 });
    const even = uniformBending(1, 2000, BEAM);
    expect(bothLoads(even, nothing)).toEqual(even);
    expect(bothLoads(even, even)).toEqual(uniformBending(2, 2000, BEAM));
  });

  test('twice the span: eight times the deflection under one weight, sixteen under one line load', () => {
    const ratio = (bend: typeof triangularBending) =>
      bend(1, 4000, BEAM).deflection / bend(1, 2000, BEAM).deflection;
    expect(ratio(triangularBending)).toBeCloseTo(8, 9);
    expect(ratio(uniformBending)).toBeCloseTo(16, 9);
  });

  test('weight of steel, span over deflection, pressure', () => {
    expect(selfWeight(1000, 7850)).toBeCloseTo(0.0769822, 8);
    expect(spanToDeflection(3000, 5)).toBe(600);
    expect(bearingPressure(900, 100, 90)).toBe(0.1);
    expect(bearingPressure(0, 100, 90)).toBe(0);
  });
});

test.each([
  [
    'no upright leg',
    () => angleSection({ upright: 0, level: 90, thickness: 6 }),
    'upright leg: 0 is not above',
  ],
  [
    'no level leg',
    () => angleSection({ upright: 90, level: -9, thickness: 6 }),
    'level leg: -9 is not above',
  ],
  [
    'no thickness',
    () => angleSection({ upright: 90, level: 90, thickness: 0 }),
    'thickness: 0 is not above zero',
  ],
  [
    'a thickness of the whole leg',
    () => angleSection({ upright: 90, level: 75, thickness: 75 }),
    'thickness: 75 mm is not less than the shorter leg',
  ],
  ['a wall that pulls', () => triangleWeight(-1, 2000), 'wall weight: -1 is negative'],
  ['no span', () => triangleWeight(1, 0), 'span: 0 is not above zero'],
  ['a load that pulls', () => triangularBending(-1, 2000, BEAM), 'load: -1 is negative'],
  ['a triangle on no span', () => triangularBending(1, NaN, BEAM), 'span: NaN is not a finite number'],
  [
    'no stiffness',
    () => triangularBending(1, 1, { elastic: 0, inertia: 1 }),
    'elastic modulus: 0 is not above',
  ],
  ['no inertia', () => uniformBending(1, 1, { elastic: 1, inertia: 0 }), 'inertia: 0 is not above zero'],
  ['a line load that pulls', () => uniformBending(-1, 1, BEAM), 'line load: -1 is negative'],
  ['no section', () => selfWeight(0, 7850), 'area: 0 is not above zero'],
  ['no density', () => selfWeight(1000, 0), 'density: 0 is not above zero'],
  ['no deflection', () => spanToDeflection(3000, 0), 'deflection: 0 is not above zero'],
  ['no span to share', () => spanToDeflection(0, 5), 'span: 0 is not above zero'],
  ['a reaction that pulls', () => bearingPressure(-1, 100, 90), 'reaction: -1 is negative'],
  ['no bearing', () => bearingPressure(900, 0, 90), 'bearing: 0 is not above zero'],
  ['no width', () => bearingPressure(900, 100, 0), 'width: 0 is not above zero'],
])('refuses %s', (_, act, message) => {
  expect(act).toThrow(RangeError);
  expect(act).toThrow(message);
});
