import { describe, expect, test } from 'vitest';
import { departureWithin, slopeOver } from './bounds';
import { isOver, isUnder } from './naive-finding';
import { spacingVerdict } from './ties';

const STEPS = {
  form: 'any-run',
  runs: [
    { run: 3000, value: 6 },
    { run: 6000, value: 9 },
  ],
  overall: 12,
} as const;
const SHARE = { form: 'pro-rata', run: 5000, value: 8, beyond: 12 } as const;

describe('a steady slope', () => {
  test.each([
    // 0.002 · 2,000 = 4 against 6 (0.67), 9 and 12: the shortest run is the strictest.
    [STEPS, 0.002, 2000, 4, 6],
    // 0.002 · 3,000 = 6 of 6; 0.002 · 4,000 = 8 of 9 and of 12.
    [STEPS, 0.002, 4000, 6, 6],
    // 0.002 · 10,000 = 20 of 12 (1.67) is worse than 6 of 6 and 12 of 9 (1.33).
    [STEPS, 0.002, 10_000, 20, 12],
    // 0.002 · 2,500 = 5 of 8 · 2,500 / 5,000 = 4.
    [SHARE, 0.002, 2500, 5, 4],
    [SHARE, 0.002, 5000, 10, 8],
    [SHARE, 0.002, 6000, 12, 12],
    [{ form: 'number', value: 7 } as const, 0.002, 2500, 5, 7],
  ])('%j at %f over %d mm', (bound, slope, length, measured, limit) => {
    expect(slopeOver(bound, slope, length)).toEqual({ measured, limit });
  });
});

describe('a hump', () => {
  test.each([
    [STEPS, 2000, 6],
    [STEPS, 3000, 6],
    [STEPS, 3000.125, 9],
    [STEPS, 6000, 9],
    [STEPS, 6000.125, 12],
    [SHARE, 2500, 4],
    [SHARE, 5000.125, 12],
  ])('%j within %d mm', (bound, length, most) => {
    expect(departureWithin(bound, length)).toBe(most);
  });
});

describe('tie spacings', () => {
  const AREA = { form: 'tie-area', vertical: 600, horizontal: 800, area: 240_000 } as const;
  test.each([
    [400, 600, undefined],
    [400.125, 600, { measured: 400.125, limit: 400 }],
    [600, 0, undefined],
    [600.125, 0, { measured: 600.125, limit: 600 }],
    [1, 800.125, { measured: 800.125, limit: 800 }],
  ])('%d high and %d wide', (down, across, verdict) => {
    expect(spacingVerdict(AREA, down, across)).toEqual(verdict);
  });
});

test('on its bound is neither over nor under, a last bit off is on it', () => {
  expect([isOver(5, 5), isUnder(5, 5), isOver(0.1 + 0.2, 0.3), isUnder(1 - 0.9, 0.1)]).toEqual([
    false,
    false,
    false,
    false,
  ]);
  expect([isOver(5.125, 5), isUnder(4.875, 5), isOver(0.125, 0)]).toEqual([true, true, true]);
});
