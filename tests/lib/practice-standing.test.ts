import { expect, test } from 'vitest';
import type { Verdict } from '../../lib/marking/verdict-counts';
import { standingOf } from '../../lib/practice/standing';

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
  const { figures } = standingOf(verdicts(82, 18, 46, 54));
  expect(figures?.dPrime).toBeCloseTo(1.002793, 6);
  // Φ(1.002793 ÷ √2) = Φ(.70908); a normal table gives .7580 at .70 and .7611 at .71.
  expect(figures?.pairsOf100).toBe(76);
  // The standard error of d′ for 100 and 100 walls is about .19: 1.96 × .19 = .37, and half of it for the criterion.
  expect(figures).toMatchObject({ isBetterThanChance: true, lean: 'to faulty' });
});

test('one wall short of twenty of each sort there are no figures, only shares', () => {
  const short = standingOf(verdicts(15, 4, 5, 15));
  expect(short).toMatchObject({ figures: null, soundToCome: 0, faultyToCome: 1 });
  // Wilson limits of 15 in 19 by hand: (.7895 + .1011 ∓ 1.9600 × .1058 …) ÷ 1.2022 = .567 and .915.
  expect(short.caught?.low).toBeCloseTo(0.567, 3);
  expect(short.caught?.high).toBeCloseTo(0.915, 3);
  expect(standingOf(verdicts(16, 4, 5, 15)).figures?.dPrime).toBeGreaterThan(1);
});

test('answers by a coin are told as no better than guessing, leaning neither way', () => {
  expect(standingOf(verdicts(10, 10, 10, 10)).figures).toMatchObject({
    dPrime: 0,
    isBetterThanChance: false,
    pairsOf100: 50,
    lean: 'none to be seen',
  });
});

test('who says sound to everything leans to sound', () => {
  expect(standingOf(verdicts(1, 24, 0, 25)).figures).toMatchObject({
    lean: 'to sound',
    isBetterThanChance: false,
  });
});

test('nothing judged gives no shares at all', () => {
  expect(standingOf([])).toMatchObject({
    caught: null,
    wronglyCalled: null,
    soundToCome: 20,
    faultyToCome: 20,
  });
});
