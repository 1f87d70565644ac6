import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaUnder, cornersOf, operatingPoints, type Plot } from '../../lib/marking/operating-points';
import type { RatedWall } from '../../lib/marking/rated-wall';
import {
  afroc1Area,
  afrocArea,
  falseAlarmShare,
  falseMarksPerWall,
  foundShare,
  inferredRocArea,
  leaveOneOut,
  wafroc1Area,
  wafrocArea,
  weightedFoundShare,
} from '../../lib/marking/set-statistics';
import { NINE_WALLS } from './marking-nine-walls';

/** The same walls with other answers. */
const answered = (
  falseRatings: (wall: RatedWall) => readonly number[],
  rating: (fault: number) => number | null,
): readonly RatedWall[] =>
  NINE_WALLS.map((wall) => ({
    falseRatings: falseRatings(wall),
    faults: wall.faults.map(({ weight }, i) => ({ weight, rating: rating(i) })),
  }));
const isSound = (wall: RatedWall) => wall.faults.length === 0;

describe('answers whose worth is known', () => {
  test.each([
    [
      'nothing marked',
      answered(
        () => [],
        () => null,
      ),
      0.5,
    ],
    [
      'everything found, nothing false',
      answered(
        () => [],
        () => 3,
      ),
      1,
    ],
    [
      'only false marks, one on every sound wall',
      answered(
        (w) => (isSound(w) ? [2] : []),
        () => null,
      ),
      0,
    ],
    [
      'everything marked, all alike: no better than silence',
      answered(
        () => [1, 1, 1],
        () => 1,
      ),
      0.5,
    ],
  ])('%s', (_, walls, expected) => {
    expect(afrocArea(walls)).toBeCloseTo(expected, 12);
    expect(wafrocArea(walls)).toBeCloseTo(expected, 12);
    expect(inferredRocArea(walls)).toBeCloseTo(expected, 12);
  });

  test('the first fault of each wall found, nothing false', () => {
    // Weights found 1, 1, .1, .9, .3 of 1 each: .66; what was not found counts half.
    expect(
      wafrocArea(
        answered(
          () => [],
          (i) => (i === 0 ? 2 : null),
        ),
      ),
    ).toBeCloseTo(0.83, 12);
  });
});

// Computed from the published rows; the published points and sums are in tests/reference.
test.each([
  [3.0, 0, 0.1111111, 0.18, 0],
  [2.5, 0, 0.2222222, 0.26, 0],
  [2.0, 0, 0.3333333, 0.28, 0],
  [1.6, 0, 0.4444444, 0.3, 0],
  [1.5, 0.1111111, 0.4444444, 0.3, 0],
  [1.0, 0.1111111, 0.6666667, 0.42, 0],
  [0.9, 0.1111111, 0.7777778, 0.62, 0],
  [0.7, 0.2222222, 0.7777778, 0.62, 0.25],
  [0.6, 0.3333333, 0.7777778, 0.62, 0.25],
  [0.5, 0.4444444, 0.7777778, 0.62, 0.5],
  [-0.2, 0.4444444, 0.8888889, 0.82, 0.5],
  [-0.3, 0.5555556, 0.8888889, 0.82, 0.75],
])('nine walls at threshold %d', (threshold, nlf, llf, wllf, fpf) => {
  expect(falseMarksPerWall(NINE_WALLS, threshold)).toBeCloseTo(nlf, 7);
  expect(foundShare(NINE_WALLS, threshold)).toBeCloseTo(llf, 7);
  expect(weightedFoundShare(NINE_WALLS, threshold)).toBeCloseTo(wllf, 7);
  expect(falseAlarmShare(NINE_WALLS, threshold)).toBeCloseTo(fpf, 7);
});

test('nine walls, any rating', () => {
  expect(falseMarksPerWall(NINE_WALLS)).toBe(5 / 9);
  expect(falseMarksPerWall(NINE_WALLS.filter(isSound))).toBe(1);
  expect(foundShare(NINE_WALLS)).toBe(8 / 9);
  // A fault that was not found is never found, not even at the lowest threshold: weight .9 of the third wall.
  expect(weightedFoundShare(NINE_WALLS, -Infinity)).toBeCloseTo(0.82, 12);
});

test('leaving out each wall in turn, computed', () => {
  const expected = [0.686667, 0.783333, 0.783333, 0.716667, 0.678125, 0.803125, 0.875, 0.678125, 0.678125];
  leaveOneOut(NINE_WALLS, wafrocArea).forEach((value, i) => {
    expect(value).toBeCloseTo(expected[i] ?? NaN, 6);
  });
});

describe('laws', () => {
  const rating = fc.integer({ min: 1, max: 3 });
  const wallArb = fc.record({
    falseRatings: fc.array(rating, { maxLength: 3 }),
    faults: fc.array(fc.record({ rating: fc.option(rating), weight: fc.integer({ min: 1, max: 3 }) }), {
      maxLength: 3,
    }),
  });
  const setArb = fc
    .array(wallArb, { minLength: 1, maxLength: 8 })
    .map((walls): RatedWall[] => [
      ...walls,
      { falseRatings: [1], faults: [] },
      { falseRatings: [], faults: [{ rating: 2, weight: 1 }] },
    ]);

  test('each area is the area under its own plot', () => {
    fc.assert(
      fc.property(setArb, (walls) => {
        const under = (plot: Plot) => areaUnder(operatingPoints(walls, plot));
        expect(under('AFROC')).toBeCloseTo(afrocArea(walls), 12);
        expect(under('wAFROC')).toBeCloseTo(wafrocArea(walls), 12);
        expect(under('AFROC1')).toBeCloseTo(afroc1Area(walls), 12);
        expect(under('wAFROC1')).toBeCloseTo(wafroc1Area(walls), 12);
        expect(areaUnder(cornersOf(operatingPoints(walls, 'AFROC')))).toBeCloseTo(afrocArea(walls), 12);
      }),
    );
  });

  test('only the order of ratings counts, and only the ratios of weights', () => {
    fc.assert(
      fc.property(setArb, (walls) => {
        const stretched = walls.map(({ falseRatings, faults }) => ({
          falseRatings: falseRatings.map((r) => r * r * 10 - 40),
          faults: faults.map((f) => ({
            rating: f.rating === null ? null : f.rating * f.rating * 10 - 40,
            weight: f.weight * 4,
          })),
        }));
        expect(wafrocArea(stretched)).toBe(wafrocArea(walls));
        expect(inferredRocArea(stretched)).toBe(inferredRocArea(walls));
      }),
    );
  });
});

describe('refusals', () => {
  const sound: RatedWall = { falseRatings: [], faults: [] };
  const faulty = (weight: number, rating: number | null = 1): RatedWall => ({
    falseRatings: [],
    faults: [{ rating, weight }],
  });
  test.each([
    ['no walls', () => falseMarksPerWall([]), 'walls: none given'],
    ['no sound wall', () => wafrocArea([faulty(1)]), 'walls: no sound wall in the set'],
    ['no faulty wall', () => foundShare([sound]), 'walls: no faulty wall in the set'],
    ['negative weight', () => afrocArea([sound, faulty(-1)]), 'walls.1.faults.0.weight: -1 is negative'],
    ['no weight at all', () => afrocArea([sound, faulty(0)]), 'walls.1.faults: all weights are zero'],
    [
      'rating off the numbers',
      () => afrocArea([faulty(1, Infinity)]),
      'walls.0.faults.0.rating: Infinity is not a finite number',
    ],
    [
      'false rating that is none',
      () => afrocArea([{ ...sound, falseRatings: [NaN] }]),
      'walls.0.falseRatings.0: NaN is not',
    ],
    [
      'last sound wall left out',
      () => leaveOneOut([sound, faulty(1)], wafrocArea),
      'walls: no sound wall in the set',
    ],
  ])('%s', (_, run, message) => {
    expect(run).toThrow(message);
  });
});
