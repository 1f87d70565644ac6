import type { Mm } from '../units';
import { refuseNegative, refuseNotCount, refuseNotFinite, refuseNotPositive } from './refusals';

/** Which bed joints a height takes in: one under every course, also one above the last, or none under the first. */
export type BedJoints = 'under-each' | 'above-last-too' | 'none-under-first';

/** What a gauge rod is marked with, and the bed joint it leaves. */
export interface Gauge {
  readonly courses: number;
  /** From the top of one course to the top of the next. */
  readonly gauge: Mm;
  readonly joint: Mm;
}

const EXTRA_JOINTS: Readonly<Record<BedJoints, number>> = {
  'under-each': 0,
  'above-last-too': 1,
  'none-under-first': -1,
};

/**
 * Height of so many whole courses, mm: n·u + k·j, where k is n, n + 1 or n − 1 (see BedJoints). A joint of 0 belongs (laid dry).
 * @throws RangeError unless courses is a whole number from 1, the unit is above zero and the joint is not negative.
 */
export function heightOfCourses(
  courses: number,
  unitHeight: Mm,
  joint: Mm,
  beds: BedJoints = 'under-each',
): Mm {
  refuseNotCount('courses', courses);
  refuseNotPositive('unit height', unitHeight);
  refuseNegative('joint', joint);
  return courses * unitHeight + (courses + EXTRA_JOINTS[beds]) * joint;
}

/** How many courses fit a height at a given joint; not rounded. @throws RangeError on senseless numbers. */
export function coursesInHeight(height: Mm, unitHeight: Mm, joint: Mm): number {
  refuseNotPositive('height', height);
  refuseNotPositive('unit height', unitHeight);
  refuseNegative('joint', joint);
  return height / (unitHeight + joint);
}

/**
 * The gauge that brings so many courses, with a bed under each, exactly to a height: gauge = H ÷ n, joint = H ÷ n − u. A joint of 0
 * belongs; whether the joint is a good one is for the limits to say.
 * @throws RangeError on senseless numbers, or when the units alone are higher than the height.
 */
export function gaugeForCourses(height: Mm, courses: number, unitHeight: Mm): Gauge {
  refuseNotPositive('height', height);
  refuseNotCount('courses', courses);
  refuseNotPositive('unit height', unitHeight);
  const gauge = height / courses;
  if (gauge < unitHeight) {
    throw new RangeError(`courses: ${courses} units of ${unitHeight} mm are higher than ${height} mm`);
  }
  return { courses, gauge, joint: gauge - unitHeight };
}

/**
 * The gauge with the whole number of courses nearest to the joint asked for; at least one course, halves go up. For the one course
 * more or less, call gaugeForCourses.
 * @throws RangeError on senseless numbers, or when not even that many units fit.
 */
export function nearestGauge(height: Mm, unitHeight: Mm, joint: Mm): Gauge {
  const courses = Math.max(1, Math.round(coursesInHeight(height, unitHeight, joint)));
  return gaugeForCourses(height, courses, unitHeight);
}

/**
 * How far the top is off after so many courses that are each off by the same amount, mm: n·e. The sign is kept: + is high.
 * @throws RangeError unless courses is a whole number from 1 and the amount is finite.
 */
export function driftAfter(courses: number, offPerCourse: Mm): Mm {
  refuseNotCount('courses', courses);
  refuseNotFinite('off per course', offPerCourse);
  return courses * offPerCourse;
}
