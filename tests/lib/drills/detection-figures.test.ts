import { expect, test } from 'vitest';
import { detectionFiguresOf } from '../../../lib/drills/quick/detection-figures';
import type { Verdict } from '../../../lib/marking/verdict-counts';

function verdicts(hits: number, misses: number, falseAlarms: number, soundCalls: number): readonly Verdict[] {
  const many = (count: number, faulty: boolean, saidFaulty: boolean) =>
    Array.from({ length: count }, () => ({ faulty, saidFaulty }));
  return [
    ...many(hits, true, true),
    ...many(misses, true, false),
    ...many(falseAlarms, false, true),
    ...many(soundCalls, false, false),
  ];
}

test('82, 18, 46 and 54: the published d′ of 1.002793 and criterion of −.4019603, in words', () => {
  const { sensitivity } = detectionFiguresOf(verdicts(82, 18, 46, 54));
  expect(sensitivity?.dPrime).toBeCloseTo(1.002793, 6);
  // Φ(1.002793 ÷ √2) = Φ(.70908); a normal table gives .7580 at .70 and .7611 at .71.
  expect(sensitivity?.pairsOf100).toBe(76);
  // The standard error of d′ for 100 and 100 walls is about .19: 1.96 × .19 = .37, and half of it for the criterion.
  expect(sensitivity).toMatchObject({ isBetterThanChance: true, lean: 'to faulty' });
});

test('one wall short of twenty of each sort there are no figures, only shares', () => {
  const short = detectionFiguresOf(verdicts(15, 4, 5, 15));
  expect(short).toMatchObject({ sensitivity: null, soundToCome: 0, faultyToCome: 1 });
  // Wilson limits of 15 in 19 by hand: (.7895 + .1011 ∓ 1.9600 × .1058 …) ÷ 1.2022 = .567 and .915.
  expect(short.caught?.low).toBeCloseTo(0.567, 3);
  expect(short.caught?.high).toBeCloseTo(0.915, 3);
  expect(detectionFiguresOf(verdicts(16, 4, 5, 15)).sensitivity?.dPrime).toBeGreaterThan(1);
});

test('answers by a coin are told as no better than guessing, leaning neither way', () => {
  expect(detectionFiguresOf(verdicts(10, 10, 10, 10)).sensitivity).toMatchObject({
    dPrime: 0,
    isBetterThanChance: false,
    pairsOf100: 50,
    lean: 'none to be seen',
  });
});

test('who says sound to everything leans to sound', () => {
  expect(detectionFiguresOf(verdicts(1, 24, 0, 25)).sensitivity).toMatchObject({
    lean: 'to sound',
    isBetterThanChance: false,
  });
});

test('nothing judged gives no shares at all', () => {
  expect(detectionFiguresOf([])).toMatchObject({
    caught: null,
    wronglyCalled: null,
    soundToCome: 20,
    faultyToCome: 20,
  });
});
