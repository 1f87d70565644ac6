import { describe, expect, test } from 'vitest';
import { correctedRate, soundOrFaulty } from '../../../lib/marking/sound-or-faulty';
import { countVerdicts } from '../../../lib/marking/verdict-counts';
import { shareWithLimits } from '../../../lib/marking/wilson';

const counts = (hits: number, misses: number, falseAlarms: number, soundCalls: number) => ({
  hits,
  misses,
  falseAlarms,
  soundCalls,
});

test('verdicts are counted by truth and answer', () => {
  const said = (faulty: boolean, saidFaulty: boolean) => ({ faulty, saidFaulty });
  expect(
    countVerdicts([
      said(true, true),
      said(true, false),
      said(true, true),
      said(false, true),
      said(false, false),
      said(true, true),
    ]),
  ).toEqual(counts(3, 1, 1, 1));
  expect(countVerdicts([])).toEqual(counts(0, 0, 0, 0));
});

describe('sound or faulty', () => {
  test.each([
    ['perfect', 10, 0, 0, 10, 3.381243, 0],
    ['perfect on more walls: the ceiling depends on how many', 20, 0, 0, 20, 3.961505, 0],
    ['good', 9, 1, 2, 8, 1.844662, -0.174472],
    ['good, cries wolf a little', 18, 2, 6, 14, 1.676962, -0.34128],
    ['cautious', 8, 17, 1, 24, 1.126019, 1.011435],
    ['always "faulty"', 10, 0, 10, 0, 0, -1.690622],
    ['always "sound"', 0, 10, 0, 10, 0, 1.690622],
  ])('%s', (_, hits, misses, falseAlarms, soundCalls, dPrime, criterion) => {
    const figures = soundOrFaulty(counts(hits, misses, falseAlarms, soundCalls));
    expect(figures.dPrime).toBeCloseTo(dPrime, 6);
    expect(figures.criterion).toBeCloseTo(criterion, 6);
    expect(figures.logBeta).toBeCloseTo(dPrime * criterion, 5);
  });

  test('the rate adds one wall, not one and a half', () => {
    expect(correctedRate(9, 10)).toBe(9.5 / 11);
    expect(correctedRate(0, 10)).toBe(0.5 / 11);
    expect(correctedRate(10, 10)).toBe(10.5 / 11);
  });

  test.each([
    ['20 and 20', counts(18, 2, 6, 14), true],
    ['19 faulty', counts(17, 2, 6, 14), false],
    ['19 sound', counts(18, 2, 6, 13), false],
  ])('enough walls to show it: %s', (_, given, enough) => {
    expect(soundOrFaulty(given).enough).toBe(enough);
  });

  test('the plain shares come without correction', () => {
    const { hitShare, falseAlarmShare } = soundOrFaulty(counts(9, 1, 2, 8));
    expect([hitShare.share, falseAlarmShare.share]).toEqual([0.9, 0.2]);
  });

  // Worked from the stated formula with Python's statistics.NormalDist; the formula itself is from memory.
  test.each([
    ['100 and 100 walls', counts(82, 18, 46, 54), 0.192418],
    ['20 and 20', counts(18, 2, 6, 14), 0.467433],
    ['10 and 10', counts(9, 1, 2, 8), 0.662911],
  ])('standard error, formula from memory: %s', (_, given, expected) => {
    expect(soundOrFaulty(given).standardError).toBeCloseTo(expected, 6);
  });

  test.each([
    ['no faulty wall', counts(0, 0, 1, 1), 'hits, misses: no faulty wall was judged'],
    ['no sound wall', counts(1, 1, 0, 0), 'falseAlarms, soundCalls: no sound wall was judged'],
    ['a negative count', counts(1, -1, 1, 1), 'misses: -1 is negative'],
    ['part of a wall', counts(1.5, 1, 1, 1), 'hits: 1.5 is not a whole number'],
    ['no number', counts(1, 1, NaN, 1), 'falseAlarms: NaN is not a finite number'],
  ])('refuses %s', (_, given, message) => {
    expect(() => soundOrFaulty(given)).toThrow(message);
  });
});

describe('a share with 95 % limits', () => {
  test.each([
    [8, 10, 0.49, 0.943],
    [16, 20, 0.584, 0.919],
    [32, 40, 0.652, 0.895],
    [80, 100, 0.711, 0.867],
    [10, 10, 0.722, 1],
    [0, 10, 0, 0.278],
  ])('%i of %i', (count, total, low, high) => {
    const limits = shareWithLimits(count, total);
    expect(limits.share).toBe(count / total);
    expect(limits.low).toBeCloseTo(low, 3);
    expect(limits.high).toBeCloseTo(high, 3);
  });

  test('the ends are exactly 0 and 1', () => {
    expect(shareWithLimits(0, 7).low).toBe(0);
    expect(shareWithLimits(7, 7).high).toBe(1);
  });

  test.each([
    ['none of none', 0, 0, 'total: no cases, so no share'],
    ['more than all', 3, 2, 'count: 3 of only 2'],
    ['less than none', -1, 2, 'count: -1 is negative'],
  ])('refuses %s', (_, count, total, message) => {
    expect(() => shareWithLimits(count, total)).toThrow(message);
  });
});
