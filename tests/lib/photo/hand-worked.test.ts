import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../../lib/photo/bounds';
import { judge, verdictOf } from '../../../lib/photo/judge';
import type { Laid } from '../../../lib/photo/laid';
import { type Values, valuesOf } from '../../../lib/photo/quantities';

/** Eight courses of 75 mm but for one of 79; beds of 10 mm but for one of 14; heads of 10 mm over each other in every second course, but for one. */
const WALL: Laid = {
  beds: [0, 75, 150, 225, 304, 379, 454, 529, 604].map((y, index) => ({
    y,
    fall: index === 2 ? -0.004 : 0.001,
    width: index === 4 ? 14 : 10,
  })),
  courses: [0, 1, 2, 3, 4, 5, 6, 7].map((course) =>
    course % 2 === 0
      ? [100, course === 4 ? 330 : 325, 550].map((x) => ({ x, width: 10 }))
      : [212.5, 437.5].map((x) => ({ x, width: x === 437.5 && course === 3 ? 12 : 10 })),
  ),
};

describe('a wall worked out by hand', () => {
  const values = valuesOf(WALL);
  test.each([
    ['gauge', 75.5, 8],
    ['tallest-course', 79, 8],
    ['shortest-course', 75, 8],
    ['bed-joint', 10 + 4 / 9, 9],
    ['thickest-bed', 14, 9],
    ['thinnest-bed', 10, 9],
    ['head-joint', 10.1, 20],
    ['widest-head', 12, 20],
    ['narrowest-head', 10, 20],
    ['course-level', (8 * 1 - 4) / 9, 9],
    ['perpend-drift', 5, 4],
    // From 330 to the heads at 437.5.
    ['lap', 107.5, 18],
    // 550 − 330 − 10.
    ['smallest-piece', 210, 12],
    // Eleven of 215 but two beside the head that is off: 220 and 210; one of 214 beside the wide one.
    ['stretcher', (9 * 215 + 220 + 210 + 214) / 12, 12],
  ] as const)('%s: %d of %d', (name, value, n) => {
    expect(values[name]?.value).toBeCloseTo(value, 9);
    expect(values[name]?.n).toBe(n);
  });

  test('spread is the standard deviation of a sample: one of nine beds 4 mm thicker', () => {
    expect(values['bed-joint-spread']?.value).toBeCloseTo(4 / 3, 9);
  });
});

describe('a verdict of three: value ± 2 sd against both ends', () => {
  test.each([
    [10, 1, 'within'],
    [7, 1, 'within'],
    [6.9, 1, 'cannot tell'],
    [15, 0.1, 'cannot tell'],
    [17, 1, 'cannot tell'],
    [17.1, 1, 'beyond'],
    [3, 1, 'cannot tell'],
    [2.9, 1, 'beyond'],
  ])('%d ± %d against 5 to 15: %s', (value, sd, verdict) => {
    expect(verdictOf(value, sd, { least: 5, most: 15 })).toBe(verdict);
  });
});

describe('limits come from the rules', () => {
  const none = Object.fromEntries([]) as unknown as Values;
  const unit = { length: 215, height: 65 };
  test.each([
    // NBC 2020, 9.20.4.1: 10 ± 5 mm.
    ['thickest-bed', 'canada', 5, 15],
    // CSA A371: 10 ± 3 mm.
    ['head-joint', 'good-practice', 7, 13],
    // Rod of 65 + 10 mm, 3 mm over four courses.
    ['gauge', 'canada', 74.25, 75.75],
    // TMS 602: 1/4 in. in 10 ft governs over 2 m.
    ['course-level', 'good-practice', -3.175, 3.175],
  ] as const)('%s in %s: %d to %d', (name, rules, least, most) => {
    const bounds = boundsOf(name, none, rules, 2000, unit);
    expect(bounds?.least).toBeCloseTo(least, 2);
    expect(bounds?.most).toBeCloseTo(most, 2);
  });

  test('a thick bed in the United Kingdom is held to the mean of its neighbours: 5 mm (LABC)', () => {
    const values = { ...none, 'bed-joint': { value: 11, n: 9 } };
    expect(boundsOf('thickest-bed', values, 'united-kingdom', 2000)).toMatchObject({ least: 6, most: 16 });
  });
});

describe('what the photograph cannot say stays open', () => {
  const fine = {
    pixelsPerMm: 2,
    softness: 0.1,
    reference: 'rectangle',
    isLevelled: false,
    run: 2000,
  } as const;
  const bounds = boundsOf('course-level', valuesOf(WALL), 'good-practice', 2000);
  test.each([
    ['course-level', fine, /may lean with the wall/],
    ['perpend-drift', fine, /may lean with the wall/],
    ['course-level', { ...fine, run: 900 }, /at least a metre/],
    ['bed-joint', { ...fine, pixelsPerMm: 0.9 }, /has 0\.90 pixels to a mm and this needs 1\./],
    ['lap', { ...fine, pixelsPerMm: 0.4 }, /has 0\.40 pixels to a mm and this needs 0\.5\./],
    ['bed-joint', { ...fine, softness: 0.41 }, /not sharp enough/],
    ['gauge', { ...fine, reference: 'counts' }, /counted to find the scale/],
    ['smallest-piece', fine, /how thick the unit is/],
  ] as const)('%s', (name, grounds, settle) => {
    expect(judge(name, 0, 0.01, bounds, grounds)).toEqual({
      verdict: 'cannot tell',
      settle: expect.stringMatching(settle),
    });
  });

  test('a level held against the wall frees the courses', () => {
    expect(judge('course-level', 0, 0.01, bounds, { ...fine, isLevelled: true })).toEqual({
      verdict: 'within',
    });
  });
});
