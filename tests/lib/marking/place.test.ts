import { describe, expect, test } from 'vitest';
import { canMean, distanceInSteps, isWide, takesPlaces } from '../../../lib/marking/place';
import type { PartId } from '../../../lib/wall/part-id';
import { sampleFinding, sampleMark } from './samples';

describe('how wide a part is', () => {
  test.each<[PartId, boolean]>([
    ['A', true],
    ['A12', true],
    ['B1', true],
    ['A12.5', false],
    ['A12.5-bed', false],
    ['A12.4/5', false],
    ['A-tie12.3', false],
    ['A-ledge', false],
    ['A-window1', false],
    ['A-lintel1', false],
    ['A-B-corner', false],
    ['batch-2', false],
  ])('%s: whole panel or course %s', (part, wide) => {
    expect(isWide(part)).toBe(wide);
  });
});

describe('what a mark can mean', () => {
  // Region x 100 to 300, y 50 to 110; slack 10 makes it x 90 to 310, y 40 to 120.
  const bed = sampleFinding('thick-joint', ['A3.2-bed'], [100, 50, 200, 60]);
  test.each([
    ['in the middle', 200, 80, true],
    ['on the left end of the grown region', 90, 80, true],
    ['one step left of it', 89.875, 80, false],
    ['on the right end', 310, 80, true],
    ['one step right of it', 310.125, 80, false],
    ['on the lower end', 200, 40, true],
    ['one step below', 200, 39.875, false],
    ['on the upper end', 200, 120, true],
    ['one step above', 200, 120.125, false],
  ])('a mark on another part, %s', (_, x, y, expected) => {
    expect(canMean(sampleMark('A9.9', [x, y], 'open-head'), bed, 10)).toBe(expected);
  });

  test('the same part counts wherever the mark lies', () => {
    expect(canMean(sampleMark('A3.2-bed', [9000, 9000], 'open-head'), bed, 10)).toBe(true);
  });

  test('the same place on another panel does not', () => {
    expect(canMean(sampleMark('B9.9', [200, 80], 'open-head', { panel: 'B' }), bed, 10)).toBe(false);
  });

  test('a mark on a course or panel goes by part only', () => {
    const course = sampleFinding('course-off-level', ['A3'], [0, 50, 900, 60]);
    expect(canMean(sampleMark('A3', [5000, 5000], 'course-off-level'), course, 10)).toBe(true);
    expect(canMean(sampleMark('A4', [200, 80], 'course-off-level'), course, 10)).toBe(false);
    expect(canMean(sampleMark('A', [200, 80], 'course-off-level'), course, 10)).toBe(false);
    // A unit that lies in the course with another name does not mean it: a block of courses is no target.
    expect(canMean(sampleMark('A3.2', [200, 80], 'proud-unit'), course, 10)).toBe(false);
  });

  test('a finding of a whole panel goes by part only', () => {
    const lean = sampleFinding('out-of-plumb', ['A'], [0, 0, 900, 900]);
    expect(canMean(sampleMark('A', [5, 5], 'out-of-plumb'), lean, 10)).toBe(true);
    expect(canMean(sampleMark('A3.2', [200, 80], 'out-of-plumb'), lean, 10)).toBe(false);
    expect(takesPlaces(lean)).toBe(false);
    // What the finding is about stands first: a mixing and its courses lie all over the wall.
    expect(takesPlaces(sampleFinding('stale-mortar', ['batch-2', 'A3'], [0, 0, 9, 9]))).toBe(false);
    expect(takesPlaces(sampleFinding('overhang-too-far', ['A-ledge', 'A1.1'], [0, 0, 9, 9]))).toBe(true);
  });
});

describe('distance from the centre of the region, in eighths of a mm', () => {
  // Centre (200, 80).
  const bed = sampleFinding('thick-joint', ['A3.2-bed'], [100, 50, 200, 60]);
  test.each([
    ['at the centre', 200, 80, 0],
    ['3 across and 4 up: 5 mm', 203, 84, 40],
    ['one eighth', 200.125, 80, 1],
    ['far beyond 16 m', 99_000, 80, 131_072],
  ])('%s', (_, x, y, steps) => {
    expect(distanceInSteps(sampleMark('A1.1', [x, y], 'open-head'), bed)).toBe(steps);
  });

  test('on another panel', () => {
    expect(distanceInSteps(sampleMark('B1.1', [200, 80], 'open-head', { panel: 'B' }), bed)).toBe(131_072);
  });
});
