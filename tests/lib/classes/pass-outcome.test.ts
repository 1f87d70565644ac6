import { expect, test } from 'vitest';
import { passOutcome } from '../../../lib/classes/pass-outcome';

test.each([
  // By hand, 12 walls: middle 13/14, error sqrt(13 · 1 / (196 · 15)) = 0.0665; (0.9286 - 0.6) / 0.0665 = 4.94.
  [1, 12, 0.6, 'reached'],
  // Middle 8.2/14, error sqrt(8.2 · 5.8 / 2940) = 0.1272; (0.5857 - 0.6) / 0.1272 = -0.11.
  [0.6, 12, 0.6, 'more walls needed'],
  // Middle 3.4/14, error sqrt(3.4 · 10.6 / 2940) = 0.1107; (0.2429 - 0.6) / 0.1107 = -3.23.
  [0.2, 12, 0.6, 'not reached yet'],
  // Three walls say little: middle 3.4/5, error sqrt(3.4 · 1.6 / (25 · 6)) = 0.1904; (0.68 - 0.6) / 0.1904 = 0.42.
  [0.8, 3, 0.6, 'more walls needed'],
  // Just over: middle 10.6/14, error sqrt(10.6 · 3.4 / 2940) = 0.1107; (0.7571 - 0.615) / 0.1107 = 1.284 > 1.2816.
  [0.8, 12, 0.615, 'reached'],
  // Just under: (0.7571 - 0.616) / 0.1107 = 1.275.
  [0.8, 12, 0.616, 'more walls needed'],
])('score %d of %i walls against %d: %s', (score, walls, share, outcome) => {
  expect(passOutcome(score, walls, share)).toBe(outcome);
});

test('a score that a person decided on is over the mark or it is not, however few walls', () => {
  expect(passOutcome(0.62, 3, 0.6, true)).toBe('reached');
  expect(passOutcome(0.6, 3, 0.6, true)).toBe('reached');
  expect(passOutcome(0.59, 3, 0.6, true)).toBe('not reached yet');
});
