import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sampleFinding } from '../lib/marking/samples';
import { guessShare, isHardToGuess } from './guess-share';

type Box = readonly [number, number, number, number];
const area = ([x, y, width, height]: Box, panel = 'A') => ({ panel, x, y, width, height });
const at = (box: Box) => sampleFinding('open-head', ['A1.1/2'], box);
const WALL = [area([0, 0, 100, 100])];

describe('share of a panel 100 by 100', () => {
  test.each([
    ['no finding', [], 0],
    ['a region of 20 by 10', [at([30, 30, 20, 10])], 0.02],
    ['a point', [at([50, 50, 0, 0])], 0],
    ['two that overlap by 10 by 10 count it once', [at([0, 0, 20, 20]), at([10, 10, 20, 20])], 0.07],
    ['the same twice', [at([0, 0, 20, 20]), at([0, 0, 20, 20])], 0.04],
    ['what hangs over the edge is cut', [at([-10, -10, 30, 30])], 0.04],
    ['a whole panel takes no places', [sampleFinding('out-of-plumb', ['A'], [0, 0, 100, 100])], 0],
    ['another panel is not hit', [sampleFinding('open-head', ['B1.1/2'], [0, 0, 50, 50], { panel: 'B' })], 0],
  ])('%s', (_, findings, expected) => {
    expect(guessShare(findings, WALL)).toBe(expected);
  });
});

test('a panel in two pieces, and two panels', () => {
  // 100 by 100 with the middle third open: 60 by 100 of wall; the finding lies half over the opening.
  const pieces = [area([0, 0, 30, 100]), area([70, 0, 30, 100])];
  expect(guessShare([at([20, 0, 20, 60])], pieces)).toBe(0.1);
  expect(guessShare([at([0, 0, 50, 40])], [...WALL, area([0, 0, 100, 100], 'B')])).toBe(0.1);
});

test.each([
  [0.199, true],
  [0.2, true],
  [0.201, false],
])('a share of %d is hard enough to guess: %s', (share, expected) => {
  expect(isHardToGuess(share)).toBe(expected);
});

test('the share is that of the squares covered, counted one by one', () => {
  const side = fc.integer({ min: 0, max: 8 });
  fc.assert(
    fc.property(fc.array(fc.tuple(side, side, side, side), { maxLength: 6 }), (boxes) => {
      let squares = 0;
      for (let x = 0; x < 10; x += 1) {
        for (let y = 0; y < 10; y += 1) {
          if (boxes.some(([l, b, w, h]) => l <= x && x < l + w && b <= y && y < b + h)) squares += 1;
        }
      }
      expect(guessShare(boxes.map(at), [area([0, 0, 10, 10])])).toBe(squares / 100);
    }),
  );
});
