import type { Unit, Wall } from '../../../lib/wall/model';
import { BRICK, courseChanged, type HandWall, hand, type Rows, times, wallOf, wrong } from '../build';

const rules = 'good-practice';

/** Stacked units, five in a course, each set as its place says. */
function faceOf(courses: number, setOf: (unit: Unit) => number): Wall {
  const wall = wallOf(times(courses, 0).map(() => times(5, 190)));
  return { ...wall, units: wall.units.map((unit) => ({ ...unit, set: setOf(unit) })) };
}

/** Columns 2 to 4 stand proud by `by`. */
const hump = (by: number, courses = 5) =>
  faceOf(courses, ({ position }) => (position > 1 && position < 5 ? by : 0));
/** Every course stands `by` further out than the one below. */
const lean = (by: number, courses = 5) => faceOf(courses, ({ course }) => (course - 1) * by);

/** Five courses of units 290 long with these clear joints between them, columns 2 up to the last but one proud by `by`. */
function broad(joint: number, by: number, columns = 5, courses = 5): Wall {
  const row = times(columns, 290).flatMap((length, at) => (at === 0 ? [length] : [-joint, length]));
  const rows: Rows = times(courses, 0).map(() => row);
  const wall = wallOf(rows, { family: { ...BRICK, length: 290 } });
  const isProud = ({ position }: Unit) => position > 1 && position < columns;
  return { ...wall, units: wall.units.map((unit) => ({ ...unit, set: isProud(unit) ? by : 0 })) };
}

/** Units 290 high (gauge 300), courses 2 to 4 proud by `by`, and every course `more` further out than the one below. */
function tall(by: number, more: number): Wall {
  const wall = wallOf(
    times(5, 0).map(() => times(5, 190)),
    { family: { ...BRICK, height: 290 } },
  );
  const setOf = ({ course }: Unit) => (course > 1 && course < 5 ? by : 0) + (course - 1) * more;
  return { ...wall, units: wall.units.map((unit) => ({ ...unit, set: setOf(unit) })) };
}

/** Sets that lie on the plane 0.0186·(y − 40), with one course falling by `fall`: its middles, and so its sets, go by half of it. */
function onPlane(course: number, fall: number): Wall {
  const flat = faceOf(
    5,
    (unit) => 0.0186 * 70 * (unit.course - 1) - (unit.course === course ? 0.0093 * fall : 0),
  );
  return courseChanged(flat, course, () => ({ fall }));
}

export const PLANE_WALLS: readonly HandWall[] = [
  // Sets 0 h h h 0: mean 0.6 h, no slope; off the plane −0.6 h and 0.4 h. Pads: middle 0.4 h, next (−0.6 + 0.8)/3 h = 0.07 h, ends −0.1 h.
  // 990 long, so 6.35: 0.4 · 15.75 = 6.3 and 0.4 · 16 = 6.4.
  hand('bulge, just inside', rules, hump(15.75)),
  hand('bulge, just outside', rules, hump(16), wrong('bulge-or-hollow', 6.4, 6.35, 'A')),
  hand('hollow, just outside', rules, hump(-16), wrong('bulge-or-hollow', 6.4, 6.35, 'A')),
  // 20 units are not judged.
  hand('bulge in too few units', rules, hump(16, 4)),
  // 0.4 · 20 = 8 and 0.4 · 20.125 = 8.05.
  hand('bulge at the most, United Kingdom', 'united-kingdom', hump(20)),
  hand(
    'bulge a step above, United Kingdom',
    'united-kingdom',
    hump(20.125),
    wrong('bulge-or-hollow', 8.05, 8, 'A'),
  ),

  // Slope by/70 over 4 · 70 + 60 = 340 high: 1.25 · 340/70 = 6.071, 1.375 · 340/70 = 6.679.
  hand('leaning, just inside', rules, lean(1.25)),
  hand('leaning out', rules, lean(1.375), wrong('out-of-plumb', 6.678571428571429, 6.35, 'A')),
  hand('leaning in', rules, lean(-1.375), wrong('out-of-plumb', 6.678571428571429, 6.35, 'A')),
  hand('leaning in too few units', rules, lean(2, 4)),
  // 1.625 · 340/70 = 7.893, 1.75 · 340/70 = 8.5.
  hand('leaning, just inside, United Kingdom', 'united-kingdom', lean(1.625)),
  hand('leaning out, United Kingdom', 'united-kingdom', lean(1.75), wrong('out-of-plumb', 8.5, 8, 'A')),
  // What the drawing wants is no bulge: the hump is designed.
  hand('a band wanted proud', rules, {
    ...hump(16),
    projections: [{ units: hump(16).units.flatMap(({ id, set }) => (set > 0 ? [id] : [])), by: 16 }],
  }),

  // The hump on a face turned by 2 mm from column to column: the plane takes the turn up, the hump stays 0.4 · 16.
  hand(
    'bulge on a face set askew',
    rules,
    faceOf(5, ({ position }) => (position > 1 && position < 5 ? 16 : 0) + (position - 1) * 2),
    wrong('bulge-or-hollow', 6.4, 6.35, 'A'),
  ),
  // Pitch 300: the columns beside belong to the pad (ends belong), 0.4 · 11 = 4.4 in the middle, (−0.6 + 0.4)/2 · 11 at the ends.
  hand('pad reaches 300 to the side', rules, broad(10, 11)),
  // Pitch 300.125: each column is a pad by itself, five units: 0.6 · 11 = 6.6 at the ends.
  hand(
    'pad reaches no further to the side',
    rules,
    broad(10.125, 11),
    wrong('bulge-or-hollow', 6.6, 6.35, 'A'),
  ),
  // Six columns of four: a pad of four units is none.
  hand('pads of too few units', rules, broad(10.125, 50, 6, 4)),
  // Pitch 300 upward, sets 0 h h h 0 from course to course: 0.4 · 16. The lean of 1 mm a course, 1/300, is 1,490/300 = 4.97 over the height.
  hand('bulge on a leaning face', rules, tall(16, 1), wrong('bulge-or-hollow', 6.4, 6.35, 'A')),
  // 5 mm a course: 5/300 over 1,490 high. All of it is lean, nothing is left to bulge.
  hand('a lean is no bulge', rules, tall(0, 5), wrong('out-of-plumb', 24.833333333333332, 6.35, 'A')),
  // Tops at the middles of the top course, each rising 4 to the right: 352 − 10 = 342, not 340. 0.0186 · 342 = 6.3612 (· 340 = 6.324).
  hand('height to the middles of the top', rules, onPlane(5, -4), wrong('out-of-plumb', 6.3612, 6.35, 'A')),
  // Undersides at the middles of course 1, each falling 4: 350 − 8 = 342.
  hand(
    'height from the middles of the first',
    rules,
    onPlane(1, 4),
    wrong('out-of-plumb', 6.3612, 6.35, 'A'),
  ),
];
