import { expect, test } from 'vitest';
import { fingerTaps } from './fingers';

/** The bench makes 2,000 and names every miss. */
const TAPS = 200;
/** 99 in a hundred. */
const LEAST = 198;

test('a finger on a phone that means a fault and takes every default marks that fault, 99 times in 100', () => {
  const taps = fingerTaps(TAPS, 1);
  const misses = taps.filter(({ hit }) => !hit);
  const told = misses.map(({ finding, marked, where }) => `${finding.check} marked ${marked}: ${where}`);
  expect(told.slice(0, TAPS - misses.length >= LEAST ? 0 : told.length)).toEqual([]);
  // On walls of every kind, and at most kinds of fault.
  expect(new Set(taps.map(({ where }) => where.split(' ')[1])).size).toBe(4);
  expect(new Set(taps.map(({ finding }) => finding.check)).size).toBeGreaterThan(18);
});
