import { MM_PER_M } from '../units';
import type { Laid } from './laid';
import { longestDrift } from './perpends';
import { meanOf, spreadOf } from './rows';

/** What is measured of a wall in a photograph, in the order a reader meets it. */
export const QUANTITIES = [
  'gauge',
  'course-spread',
  'tallest-course',
  'shortest-course',
  'bed-joint',
  'bed-joint-spread',
  'thickest-bed',
  'thinnest-bed',
  'head-joint',
  'head-joint-spread',
  'widest-head',
  'narrowest-head',
  'course-level',
  'perpend-drift',
  'lap',
  'stretcher',
  'smallest-piece',
] as const;
export type QuantityName = (typeof QUANTITIES)[number];

/** A value and what it was taken from: so many courses, joints, pieces. Absent where the picture shows none. */
export type Values = Readonly<
  Record<QuantityName, { readonly value: number; readonly n: number } | undefined>
>;

/** A whole unit is at least this share of the longest seen. */
const WHOLE = 0.75;

/**
 * All quantities of a wall as it was seen, mm but for `course-level`, mm per m.
 * Gauge: from the first bed to the last, over the courses between. Course level: the mean fall of the
 * beds to the right, since the one that falls most is seen to fall too much. Lap: the least distance of a head from the nearest in the course below. A piece runs from head to head; a stretcher
 * is a piece at least three quarters as long as the longest.
 */
export function valuesOf({ beds, courses }: Laid): Values {
  const heights = beds.slice(1).map(({ y }, index) => y - (beds[index]?.y ?? 0));
  const bedWidths = beds.map(({ width }) => width);
  const heads = courses.flat();
  const falls = beds.map(({ fall }) => fall * MM_PER_M);
  const headWidths = heads.map(({ width }) => width);
  const pieces = courses.flatMap((course) =>
    course.slice(1).map((right, index) => {
      const left = course[index] ?? right;
      return right.x - right.width / 2 - left.x - left.width / 2;
    }),
  );
  const stretchers = pieces.filter((piece) => piece >= WHOLE * Math.max(...pieces));
  const laps = courses
    .slice(1)
    .flatMap((below, index) =>
      below.length === 0
        ? []
        : (courses[index] ?? []).map(({ x }) => Math.min(...below.map((head) => Math.abs(head.x - x)))),
    );
  const drift = longestDrift(courses);
  return {
    gauge: of(heights, meanOf),
    'course-spread': spread(heights),
    'tallest-course': of(heights, most),
    'shortest-course': of(heights, least),
    'bed-joint': of(bedWidths, meanOf),
    'bed-joint-spread': spread(bedWidths),
    'thickest-bed': of(bedWidths, most),
    'thinnest-bed': of(bedWidths, least),
    'head-joint': of(headWidths, meanOf),
    'head-joint-spread': spread(headWidths),
    'widest-head': of(headWidths, most),
    'narrowest-head': of(headWidths, least),
    'course-level': of(falls, meanOf),
    'perpend-drift': drift && { value: drift.drift, n: drift.heads },
    lap: of(laps, least),
    stretcher: of(stretchers, meanOf),
    'smallest-piece': of(pieces, least),
  };
}

function of(values: readonly number[], take: (values: readonly number[]) => number) {
  return values.length > 0 ? { value: take(values), n: values.length } : undefined;
}

function spread(values: readonly number[]) {
  return values.length > 2 ? { value: spreadOf(values), n: values.length } : undefined;
}

function most(values: readonly number[]): number {
  return Math.max(...values);
}

function least(values: readonly number[]): number {
  return Math.min(...values);
}
