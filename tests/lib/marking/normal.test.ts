import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exponential, naturalLog } from '../../../lib/marking/log-and-exp';
import { normalDensity, normalQuantile } from '../../../lib/marking/normal';

const relative = (value: number, truth: number) => Math.abs(value - truth) / Math.abs(truth);

describe('natural logarithm and exponential', () => {
  // The engine's own functions may differ in the last bit only; far closer than the 1e-12 asked for here.
  test('agree with the engine over the whole range', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-300, max: 1e300, noNaN: true }), (x) => {
        fc.pre(Math.abs(Math.log(x)) > 1e-6);
        expect(relative(naturalLog(x), Math.log(x))).toBeLessThan(1e-12);
      }),
      { numRuns: 2000 },
    );
    fc.assert(
      fc.property(fc.double({ min: -700, max: 700, noNaN: true }), (x) => {
        expect(relative(exponential(x), Math.exp(x))).toBeLessThan(1e-12);
      }),
      { numRuns: 2000 },
    );
  });

  test('are exact where the answer is plain', () => {
    expect(naturalLog(1)).toBe(0);
    expect(exponential(0)).toBe(1);
    expect(exponential(-800)).toBe(0);
  });

  test.each([
    ['log of 0', () => naturalLog(0), 'naturalLog: 0 is not above zero'],
    ['log below 0', () => naturalLog(-1), 'naturalLog: -1 is not above zero'],
    ['log of infinity', () => naturalLog(Infinity), 'naturalLog: Infinity is not a finite number'],
    ['too large a power', () => exponential(710), 'exponential: 710 is above 709'],
    ['a power that is no number', () => exponential(NaN), 'exponential: NaN is not a finite number'],
  ])('refuses %s', (_, run, message) => {
    expect(run).toThrow(message);
  });
});

describe('normal quantile', () => {
  test('is odd about one half', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1023 }), (n) => {
        expect(normalQuantile(1 - n / 1024)).toBe(-normalQuantile(n / 1024) + 0);
      }),
    );
    expect(normalQuantile(0.5)).toBe(0);
  });

  test('rises, across the joints of its three branches too', () => {
    for (const joint of [0.075, 0.925, 1.3887943864964e-11]) {
      const below = normalQuantile(joint * (1 - 1e-9));
      const above = normalQuantile(joint * (1 + 1e-9));
      expect(above).toBeGreaterThan(below);
      expect(above - below).toBeLessThan(1e-7);
    }
  });

  test.each([0, 1, -0.1, 1.1, NaN])('refuses %d', (p) => {
    expect(() => normalQuantile(p)).toThrow(`normalQuantile: ${p} is not between 0 and 1`);
  });
});

test('normal density: highest in the middle, even', () => {
  expect(normalDensity(0)).toBe(0.3989422804014327);
  expect(normalDensity(-1.5)).toBe(normalDensity(1.5));
});
