import { MM_PER_M, type Mm } from '../units';
import type { Head, Laid } from './laid';
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

/** A head goes on in the next course but one with a head whose middle is within this of its own: as on the walls that are laid here. */
const IN_LINE: Mm = 12;
const LEAST_HEADS = 4;

/** Of the lines of head joints up every second course, the one whose middles lie furthest apart; undefined where no line has four heads. */
function longestDrift(
  courses: readonly (readonly Head[])[],
): { readonly drift: Mm; readonly heads: number } | undefined {
  let worst: { drift: Mm; heads: number } | undefined;
  for (const start of [0, 1]) {
    let open: { last: Mm; least: Mm; most: Mm; heads: number }[] = [];
    for (let index = start; index < courses.length; index += 2) {
      const taken = new Set<(typeof open)[number]>();
      open = (courses[index] ?? []).map(({ x }) => {
        const near = open
          .filter((line) => !taken.has(line) && Math.abs(line.last - x) <= IN_LINE)
          .sort((a, b) => Math.abs(a.last - x) - Math.abs(b.last - x))[0];
        if (near === undefined) return { last: x, least: x, most: x, heads: 1 };
        taken.add(near);
        return {
          last: x,
          least: Math.min(near.least, x),
          most: Math.max(near.most, x),
          heads: near.heads + 1,
        };
      });
      for (const { least, most, heads } of open) {
        if (heads >= LEAST_HEADS && (worst === undefined || most - least > worst.drift))
          worst = { drift: most - least, heads };
      }
    }
  }
  return worst;
}
