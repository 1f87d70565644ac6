import { expect, test } from 'vitest';
import { tallied, tallyOf } from './coverage';
import { laidCase } from './laid-picture';

const PICTURES = 6;

/** A few of the 2,000 that tests/bench/photo.ts draws: what breaks the chain of uncertainties is seen at once, a per cent is not. */
test('intervals of walls laid at random hold the truth, and no verdict is wrong', () => {
  let tally = tallyOf();
  for (let seed = 0; seed < PICTURES; seed++) tally = tallied(tally, seed, laidCase(seed, 700, 525));
  const counts = Object.values(tally);
  const all = counts.reduce((sum, { n }) => sum + n, 0);
  expect(all).toBeGreaterThan(14 * PICTURES);
  expect(counts.reduce((sum, { holds }) => sum + holds, 0) / all).toBeGreaterThan(0.88);
  expect(counts.reduce((sum, { square }) => sum + square, 0) / all).toBeGreaterThan(0.3);
  expect(counts.reduce((sum, { wrong }) => sum + wrong, 0)).toBe(0);
});
