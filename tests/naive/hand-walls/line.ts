import type { Unit } from '../../../lib/wall/model';
import { changed, type HandWall, hand, times, wallOf, wrong } from '../build';

const rules = 'good-practice';

/** `courses` courses of `count` units with stacked joints; the left unit of course 1 (and of those above) stands `by` too high. */
function tilted(count: number, by: number, courses = 1) {
  const wall = wallOf(times(courses, 0).map(() => times(count, 190)));
  return {
    ...wall,
    units: wall.units.map((unit) => (unit.position === 1 ? { ...unit, y: unit.y + by } : unit)),
  };
}

/** Eight courses of one unit; course c lies (c − 1)·by too high, and the top one `more`. */
function climbing(courses: number, by: number, more = 0) {
  const wall = wallOf(times(courses, 190).map((length) => [length]));
  const up = ({ course }: Unit) => (course - 1) * by + (course === courses ? more : 0);
  return { ...wall, units: wall.units.map((unit) => ({ ...unit, y: unit.y + up(unit) })) };
}

/** Half bond; the joints of courses 1, 3, 5, 7 (true at 195) are shifted by these. */
function leaningPerpend(...shifts: readonly number[]) {
  const courses = shifts.flatMap(() => [
    [190, 190],
    [90, 190, 90],
  ]);
  return changed(
    wallOf(courses),
    Object.fromEntries(
      shifts.flatMap((by, at): [string, Partial<Unit>][] => [
        [`A${2 * at + 1}.1`, { length: 190 + by }],
        [`A${2 * at + 1}.2`, { x: 200 + by, length: 190 - by }],
      ]),
    ),
  );
}
const ODD_HEADS = 'A1.1/2 A3.1/2 A5.1/2 A7.1/2';

/** Ten courses of two; the joints of some (true at 195) are shifted. */
function thirdBond(shifts: Readonly<Record<number, number>>) {
  const wall = wallOf(
    times(10, 0).map(() => [190, 190]),
    { bond: 'third' },
  );
  return changed(
    wall,
    Object.fromEntries(
      Object.entries(shifts).flatMap(([course, by]): [string, Partial<Unit>][] => [
        [`A${course}.1`, { length: 190 + by }],
        [`A${course}.2`, { x: 200 + by, length: 190 - by }],
      ]),
    ),
  );
}

export const LINE_WALLS: readonly HandWall[] = [
  // 6 units: 1,190 long. Steady, so 6.35 in any 3,048 is the stricter. First bed 16.25.
  hand('course off level, just inside', rules, tilted(6, 6.25)),
  hand(
    'course off level, just outside',
    rules,
    tilted(6, 6.375),
    wrong('course-off-level', 6.375, 6.35, 'A1'),
  ),
  hand('course low at its left end', rules, tilted(6, -6.375), ...lowLeft()),
  // 5 units: 990 long, under 1,000.
  hand('course too short to judge', rules, tilted(5, 9)),
  // 1,000 long is judged: 190 × 4 + 4 × 10 + 200.
  hand(
    'course just long enough to judge',
    rules,
    changed(wallOf([[190, 190, 190, 190, 200]]), { 'A1.1': { y: 19 } }),
    wrong('course-off-level', 9, 6.35, 'A1'),
  ),
  // The fall of the last unit counts: 10 − (10 − 6.375). Its bed tapers from 10 to 3.625, mean 6.8125.
  hand(
    'course level by the far end of its last unit',
    rules,
    changed(wallOf([times(6, 190)]), { 'A1.6': { fall: 6.375 } }),
    wrong('course-off-level', 6.375, 6.35, 'A1'),
    wrong('tapering-bed', 6.375, 4, 'A1.6 A1.6-bed'),
  ),
  // 3,190 long: 6.625 · 3,048 / 3,190 = 6.3301.
  hand('long course, just inside over 3,048', rules, tilted(16, 6.625)),
  // 6.75 · 3,048 / 3,190 = 20,574 / 3,190.
  hand(
    'long course, just outside over 3,048',
    rules,
    tilted(16, 6.75),
    wrong('course-off-level', 6.449529780564263, 6.35, 'A1'),
  ),
  // Three courses tilted alike, one on the other: one finding.
  hand('three courses in a block', rules, tilted(6, 7, 3), wrong('course-off-level', 7, 6.35, 'A1 A2 A3')),
  // Courses 1 and 3 only: the bed of A2.1 is 10 − 7 = 3, that of A3.1 is 17.
  hand(
    'two courses with a level one between',
    rules,
    changed(wallOf([times(6, 190), times(6, 190), times(6, 190)]), { 'A1.1': { y: 17 }, 'A3.1': { y: 157 } }),
    wrong('course-off-level', 7, 6.35, 'A1'),
    wrong('course-off-level', 7, 6.35, 'A3'),
    wrong('thin-joint', 3, 7, 'A2.1 A2.1-bed'),
    wrong('thick-joint', 17, 13, 'A3.1 A3.1-bed'),
  ),
  // An opening of 410 stands between; the course is still taken from end to end.
  hand(
    'course over an opening',
    rules,
    changed(wallOf([[190, 190, -410, 190, 190]]), { 'A1.1': { y: 17 } }),
    wrong('course-off-level', 7, 6.35, 'A1'),
  ),
  // 8 in 5,000 is 8 · 1,190 / 5,000 = 1.904 over 1,190.
  hand('course off level, just inside, United Kingdom', 'united-kingdom', tilted(6, 1.875)),
  hand(
    'course off level, just outside, United Kingdom',
    'united-kingdom',
    tilted(6, 2),
    wrong('course-off-level', 2, 1.904, 'A1'),
  ),

  // 7 · 0.75 = 5.25 over 7 courses: 5.25 / 7 · 4 = 3.
  hand('gauge drifts at the most', rules, climbing(8, 0.75)),
  // 5.375 / 7 · 4 = 3.0714…
  hand(
    'gauge drifts above',
    rules,
    climbing(8, 0.75, 0.125),
    wrong('gauge-drift', 3.0714285714285716, 3, 'A'),
  ),
  hand(
    'gauge drifts below',
    rules,
    climbing(8, -0.75, -0.125),
    wrong('gauge-drift', 3.0714285714285716, 3, 'A'),
  ),
  hand('gauge drifts, a step inside', rules, climbing(8, 0.75, -0.125)),
  // 7 courses of 2 mm too much are not judged.
  hand('seven courses have no gauge', rules, climbing(7, 2)),

  hand('perpends drift at the most', rules, leaningPerpend(0, 3.5, 7, 10)),
  hand(
    'perpends drift a step above',
    rules,
    leaningPerpend(0, 3.5, 7, 10.125),
    wrong('perpend-drift', 10.125, 10, ODD_HEADS),
  ),
  hand('perpends drift a step below', rules, leaningPerpend(0, 3.5, 7, 9.875)),
  // Least to greatest, not first to last: 5 − (−5.125).
  hand(
    'perpends snake',
    rules,
    leaningPerpend(0, 5, -5.125, 0),
    wrong('perpend-drift', 10.125, 10, ODD_HEADS),
  ),
  hand('three heads are no chain', rules, leaningPerpend(0, 11, 22)),
  // 12 goes on, and 12.125 begins another chain (1 and 3 heads).
  hand(
    'a jump at the most goes on',
    rules,
    leaningPerpend(0, 12, 12, 12),
    wrong('perpend-drift', 12, 10, ODD_HEADS),
  ),
  // Third bond: courses 1, 4, 7, 10.
  hand(
    'perpends drift in third bond',
    rules,
    thirdBond({ 4: 4, 7: 8, 10: 10.125 }),
    wrong('perpend-drift', 10.125, 10, 'A1.1/2 A4.1/2 A7.1/2 A10.1/2'),
  ),
  hand('a jump a step above breaks the chain', rules, leaningPerpend(0, 12.125, 12.125, 12.125)),
];

/** A first bed of 3.625 is thin too. */
function lowLeft() {
  return [wrong('course-off-level', 6.375, 6.35, 'A1'), wrong('thin-joint', 3.625, 6.35, 'A1.1 A1.1-bed')];
}
