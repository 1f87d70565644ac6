import { describe, expect, test } from 'vitest';
import {
  coursesInHeight,
  driftAfter,
  gaugeForCourses,
  heightOfCourses,
  nearestGauge,
} from '../../../lib/trade/coursing';

describe('height of courses, 65 mm brick at 10 mm', () => {
  test.each([
    [1, 'under-each' as const, 75],
    [1, 'above-last-too' as const, 85],
    [1, 'none-under-first' as const, 65],
    [4, 'under-each' as const, 300],
    [4, 'above-last-too' as const, 310],
    [4, 'none-under-first' as const, 290],
  ])('%i courses, joints %s: %i mm', (courses, beds, height) => {
    expect(heightOfCourses(courses, 65, 10, beds)).toBe(height);
  });

  test('a bed under each course unless told otherwise', () => {
    expect(heightOfCourses(28, 65, 10)).toBe(2100);
  });

  test('laid dry', () => {
    expect(heightOfCourses(3, 65, 0)).toBe(195);
  });
});

describe('gauge', () => {
  test('2440 mm of 57 mm brick at 10: 36 courses, gauge 67.8, bed 10.8', () => {
    expect(coursesInHeight(2440, 57, 10)).toBeCloseTo(36.418, 3);
    const { courses, gauge, joint } = nearestGauge(2440, 57, 10);
    expect(courses).toBe(36);
    expect(gauge).toBeCloseTo(67.778, 3);
    expect(joint).toBeCloseTo(10.778, 3);
  });

  test('halves go up', () => {
    expect(nearestGauge(262.5, 65, 10)).toEqual({ courses: 4, gauge: 65.625, joint: 0.625 });
  });

  test('never less than one course', () => {
    expect(nearestGauge(70, 65, 80)).toEqual({ courses: 1, gauge: 70, joint: 5 });
  });

  test('no joint left belongs', () => {
    expect(gaugeForCourses(650, 10, 65)).toEqual({ courses: 10, gauge: 65, joint: 0 });
  });
});

describe('drift', () => {
  test.each([
    [1, 0.5, 0.5],
    [32, 0.5, 16],
    [40, -0.25, -10],
    [7, 0, 0],
  ])('%i courses, each off by %d mm: %d mm', (courses, each, all) => {
    expect(driftAfter(courses, each)).toBe(all);
  });
});

test.each([
  ['no course', () => heightOfCourses(0, 65, 10), 'courses: 0 is not above zero'],
  ['half a course', () => heightOfCourses(2.5, 65, 10), 'courses: 2.5 is not a whole number'],
  [
    'courses without end',
    () => heightOfCourses(Infinity, 65, 10),
    'courses: Infinity is not a finite number',
  ],
  ['no unit', () => heightOfCourses(3, 0, 10), 'unit height: 0 is not above zero'],
  ['a unit that is no number', () => heightOfCourses(3, NaN, 10), 'unit height: NaN is not a finite number'],
  ['a joint below nothing', () => heightOfCourses(3, 65, -1), 'joint: -1 is negative'],
  ['no height', () => coursesInHeight(0, 65, 10), 'height: 0 is not above zero'],
  ['height of no unit', () => coursesInHeight(100, -65, 10), 'unit height: -65 is not above zero'],
  ['a joint that is no number', () => coursesInHeight(100, 65, NaN), 'joint: NaN is not a finite number'],
  ['too many courses', () => gaugeForCourses(200, 4, 65), 'courses: 4 units of 65 mm are higher than 200 mm'],
  ['no courses to gauge', () => gaugeForCourses(200, 0, 65), 'courses: 0 is not above zero'],
  ['a height too low', () => nearestGauge(60, 65, 10), 'courses: 1 units of 65 mm are higher than 60 mm'],
  ['drift of no number', () => driftAfter(3, NaN), 'off per course: NaN is not a finite number'],
  ['drift of no course', () => driftAfter(-1, 1), 'courses: -1 is not above zero'],
])('refuses %s', (_, act, message) => {
  expect(act).toThrow(RangeError);
  expect(act).toThrow(message);
});
