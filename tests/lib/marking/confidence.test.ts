import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { brierScore, calibrationOf, type SureAnswer } from '../../../lib/marking/confidence';

const answers = (sure: 1 | 2 | 3, right: number, of: number): SureAnswer[] =>
  Array.from({ length: of }, (_, i) => ({ sure, right: i < right }));

describe('Brier score', () => {
  test.each([
    ['certain and right', [{ claimed: 1, right: true }], 0],
    ['certain and wrong', [{ claimed: 1, right: false }], 1],
    [
      'half and half',
      [
        { claimed: 0.5, right: true },
        { claimed: 0.5, right: false },
      ],
      0.25,
    ],
  ])('%s', (_, forecasts, expected) => {
    expect(brierScore(forecasts)).toBe(expected);
  });

  test.each([
    ['none', [], 'forecasts: none given'],
    ['above 1', [{ claimed: 1.1, right: true }], 'forecasts.0.claimed: 1.1 is not between 0 and 1'],
    ['no number', [{ claimed: NaN, right: true }], 'forecasts.0.claimed: NaN is not a finite number'],
  ])('refuses: %s', (_, forecasts, message) => {
    expect(() => brierScore(forecasts)).toThrow(message);
  });
});

describe('calibration by three levels', () => {
  test('6 of 10 unsure, 7 of 10 fairly sure and 17 of 20 certain are right', () => {
    const figures = calibrationOf([...answers(1, 6, 10), ...answers(2, 7, 10), ...answers(3, 17, 20)]);
    expect(figures.brier).toBeCloseTo(0.1825, 12);
    expect(figures.reliability).toBeCloseTo(0.00625, 12);
    expect(figures.resolution).toBeCloseTo(0.01125, 12);
    expect(figures.uncertainty).toBeCloseTo(0.1875, 12);
    expect(figures.overconfidence).toBeCloseTo(0.05, 12);
    expect(figures.levels).toEqual([
      { sure: 1, answers: 10, right: 6 },
      { sure: 2, answers: 10, right: 7 },
      { sure: 3, answers: 20, right: 17 },
    ]);
  });

  test('one level used, and too modest', () => {
    const figures = calibrationOf(answers(1, 4, 4));
    // Claimed .55, right every time.
    expect(figures.brier).toBeCloseTo(0.2025, 12);
    expect(figures.overconfidence).toBeCloseTo(-0.45, 12);
    expect(figures.resolution).toBe(0);
  });

  test('the three parts add up to the score', () => {
    const answer = fc.record({
      sure: fc.constantFrom(1 as const, 2 as const, 3 as const),
      right: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(answer, { minLength: 1, maxLength: 40 }), (given) => {
        const { brier, reliability, resolution, uncertainty } = calibrationOf(given);
        expect(reliability - resolution + uncertainty).toBeCloseTo(brier, 12);
      }),
    );
  });

  test('refuses no answers, and a level outside 1 to 3', () => {
    expect(() => calibrationOf([])).toThrow('answers: none given');
    expect(() => calibrationOf([{ sure: 0 as 1, right: true }])).toThrow(
      'answers.0.sure: 0 is not 1, 2 or 3',
    );
  });
});
