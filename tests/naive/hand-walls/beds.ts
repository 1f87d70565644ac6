import {
  changed,
  courseChanged,
  type Expected,
  type HandWall,
  hand,
  ledge,
  type Rows,
  times,
  wallOf,
  wrong,
} from '../build';

const STACKED: Rows = [
  [190, 190, 190],
  [190, 190, 190],
];
const TWO = wallOf(STACKED);
const rules = 'good-practice';

/** Course 2 lifted whole by `by`: every bed of it is 10 + by. */
const lifted = (by: number) => courseChanged(TWO, 2, ({ y }) => ({ y: y + by }));
const firstLifted = (by: number) => wallOf([[190, 190]], { supports: [ledge(0, 390, { y: -by })] });
const wholeSecond = 'A2.1 A2.1-bed A2.2 A2.2-bed A2.3 A2.3-bed';
const wholeFirst = 'A1.1 A1.1-bed A1.2 A1.2-bed';
const thick = (measured: number, limit: number, parts: string): Expected =>
  wrong('thick-joint', measured, limit, parts);
const thin = (measured: number, limit: number, parts: string): Expected =>
  wrong('thin-joint', measured, limit, parts);

/** Courses of one unit each, the top one lifted: three beds above the first, or nine. */
const tower = (courses: number, by: number) =>
  courseChanged(wallOf(times(courses, 190).map((length) => [length])), courses, ({ y }) => ({ y: y + by }));

export const BED_WALLS: readonly HandWall[] = [
  // Left end 82 − 70 = 12, right end 82 − 4 − 70 = 8: 4 mm, mean 10.
  hand('bed tapers at the most', rules, changed(TWO, { 'A2.2': { y: 82, fall: 4 } })),
  // 12 and 8.125.
  hand('bed tapers a step below', rules, changed(TWO, { 'A2.2': { y: 82, fall: 3.875 } })),
  // 12 and 7.875.
  hand(
    'bed tapers a step above',
    rules,
    changed(TWO, { 'A2.2': { y: 82, fall: 4.125 } }),
    wrong('tapering-bed', 4.125, 4, 'A2.2 A2.2-bed'),
  ),
  // Up to the right: 8 and 12.125.
  hand(
    'bed tapers the other way',
    rules,
    changed(TWO, { 'A2.2': { y: 78, fall: -4.125 } }),
    wrong('tapering-bed', 4.125, 4, 'A2.2 A2.2-bed'),
  ),
  // On the ledge: 12 and 7.875 (mean 9.94, a first bed may be 6.35..20). The bed above, 80 − 72 = 8 and 80 − 67.875 = 12.125, tapers too.
  hand(
    'bed tapers on the ledge and above it',
    rules,
    changed(TWO, { 'A1.2': { y: 12, fall: 4.125 } }),
    wrong('tapering-bed', 4.125, 4, 'A1.2 A1.2-bed'),
    wrong('tapering-bed', 4.125, 4, 'A2.2 A2.2-bed'),
  ),
  // A piece of 90 is shorter than half a unit (95): its taper of 5 is not judged. Ends 12.5 and 7.5.
  hand(
    'short piece may lie askew',
    rules,
    changed(
      wallOf([
        [190, 190],
        [190, 90],
      ]),
      { 'A2.2': { y: 82.5, fall: 5 } },
    ),
  ),

  // A2.1 (0..390) begins left of all that is below: there the nearest counts, A1.1 (100..190), lowered to a top of 66.375: 13.625.
  // Its right end (390) stands on A1.2, raised to a top of 70.5: 9.5.
  hand(
    'bed beyond the unit below',
    rules,
    changed(wallOf([[-100, 90, 190], [390]]), { 'A1.1': { y: 6.375 }, 'A1.2': { y: 10.5 } }),
    wrong('tapering-bed', 4.125, 4, 'A2.1 A2.1-bed'),
  ),

  hand('bed at the most', rules, lifted(3)),
  hand('bed a step above', rules, lifted(3.125), thick(13.125, 13, wholeSecond)),
  hand('bed a step below the most', rules, lifted(2.875)),
  hand('bed at the least', rules, lifted(-3)),
  hand('bed a step below', rules, lifted(-3.125), thin(6.875, 7, wholeSecond)),
  hand('bed a step above the least', rules, lifted(-2.875)),
  // Only the ends of the course: two findings, since the middle bed is sound.
  hand(
    'two thick beds with a sound one between',
    rules,
    changed(TWO, { 'A2.1': { y: 83.5 }, 'A2.3': { y: 84 } }),
    thick(13.5, 13, 'A2.1 A2.1-bed'),
    thick(14, 13, 'A2.3 A2.3-bed'),
  ),
  // Side by side they are one, as thick as the thicker.
  hand(
    'two thick beds side by side',
    rules,
    changed(TWO, { 'A2.1': { y: 83.5 }, 'A2.2': { y: 84 } }),
    thick(14, 13, 'A2.1 A2.1-bed A2.2 A2.2-bed'),
  ),
  // An opening of 200 parts them.
  hand(
    'two thick beds with an opening between',
    rules,
    changed(
      wallOf([
        [190, -200, 190],
        [190, -200, 190],
      ]),
      { 'A2.1': { y: 83.5 }, 'A2.2': { y: 84 } },
    ),
    thick(13.5, 13, 'A2.1 A2.1-bed'),
    thick(14, 13, 'A2.2 A2.2-bed'),
  ),
  // The sound one between may be short (60, a sliver under 90): joints of 10, 60 and 10 are less than half a unit together.
  hand(
    'two thick beds with a short piece between',
    rules,
    changed(
      wallOf([
        [190, 60, 190],
        [190, 60, 190],
      ]),
      { 'A2.1': { y: 83.5 }, 'A2.3': { y: 84 } },
    ),
    thick(13.5, 13, 'A2.1 A2.1-bed'),
    thick(14, 13, 'A2.3 A2.3-bed'),
    ...['A1.2', 'A2.2'].map((id) => wrong('sliver-piece', 60, 90, id)),
  ),
  // Side by side, but one too thick and one too thin.
  hand(
    'thick beside thin',
    rules,
    changed(TWO, { 'A2.1': { y: 84 }, 'A2.2': { y: 76 } }),
    thick(14, 13, 'A2.1 A2.1-bed'),
    thin(6, 7, 'A2.2 A2.2-bed'),
  ),

  hand('first bed at the most', rules, firstLifted(10)),
  hand('first bed a step above', rules, firstLifted(10.125), thick(20.125, 20, wholeFirst)),
  // 1/4 in = 6.35.
  hand('first bed just above the least', rules, firstLifted(-3.625)),
  hand('first bed just below', rules, firstLifted(-3.75), thin(6.25, 6.35, wholeFirst)),
  // 3/4 in = 19.05: 19 passes, 19.125 does not.
  hand('first bed just below the most, United States', 'united-states', firstLifted(9)),
  hand(
    'first bed just above the most, United States',
    'united-states',
    firstLifted(9.125),
    thick(19.125, 19.05, wholeFirst),
  ),
  hand('bed at the most, Canada', 'canada', lifted(5)),
  hand('bed a step above, Canada', 'canada', lifted(5.125), thick(15.125, 15, wholeSecond)),
  hand('bed at the least, Canada', 'canada', lifted(-5)),
  hand('bed a step below, Canada', 'canada', lifted(-5.125), thin(4.875, 5, wholeSecond)),

  // Beds 10, 10, 17.5: mean 12.5, and 17.5 − 12.5 = 5.
  hand('bed from the mean at the most, United Kingdom', 'united-kingdom', tower(4, 7.5)),
  // Beds 10, 10, 17.875: mean 12.625, and 17.875 − 12.625 = 5.25. The others are 2.625 too small.
  hand(
    'bed from the mean above, United Kingdom',
    'united-kingdom',
    tower(4, 7.875),
    thick(5.25, 5, 'A4.1 A4.1-bed'),
  ),
  // Beds 10, 10, 2.125: mean 7.375, and 7.375 − 2.125 = 5.25.
  hand(
    'bed from the mean below, United Kingdom',
    'united-kingdom',
    tower(4, -7.875),
    thin(5.25, 5, 'A4.1 A4.1-bed'),
  ),
  // Nine beds; the only eight with the top one are the last: mean 10 + 6/8 = 10.75, and 16 − 10.75 = 5.25.
  hand(
    'bed from the mean of eight of nine',
    'united-kingdom',
    tower(10, 6),
    thick(5.25, 5, 'A10.1 A10.1-bed'),
  ),
  // Mean 10 + 5.625/8 = 10.703125, and 15.625 − 10.703125 = 4.921875; of all nine it would be 5.0 exactly.
  hand('bed from the mean of eight of nine, just inside', 'united-kingdom', tower(10, 5.625)),
];
