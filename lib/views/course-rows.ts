import type { Ring } from '../geometry/polygon';
import type { Mm } from '../units';
import { topLeft, topRight } from '../wall/cut';
import { isTall, topCourseOf, type Unit } from '../wall/model';
import { headWidth, type PanelSurvey, type Placed, undersideAt } from '../wall/survey';

/** A unit where it stands in a course, with its neighbours there: also those that one of the two stands beside from a course below. */
export interface InCourse {
  readonly placed: Placed;
  readonly unit: Unit;
  readonly left: Placed | null;
  readonly right: Placed | null;
}

/** For each course from the bottom all that stands in it, from the left: its own units, and what stands through from below. */
export function courseRows({ courses, placed }: PanelSurvey): readonly (readonly InCourse[])[] {
  const rows: Placed[][] = courses.map(() => []);
  for (const each of placed) {
    for (let course = each.unit.course; course <= topCourseOf(each.unit); course++)
      rows[course - 1]?.push(each);
  }
  return rows.map((unsorted) => {
    const row = unsorted.sort((a, b) => a.unit.x - b.unit.x);
    return row.map((each, at) => {
      const before = row[at - 1];
      const after = row[at + 1];
      return {
        placed: each,
        unit: each.unit,
        left: before && areJoined(before, each) ? before : null,
        right: after && areJoined(each, after) ? after : null,
      };
    });
  });
}

/** Only a joint between: less than half the longer of the two, as no opening is. */
function areJoined(left: Placed, right: Placed): boolean {
  if (left.right === right) return true;
  if (!isTall(left.unit) && !isTall(right.unit)) return false;
  return headWidth(left.unit, right.unit) < Math.max(left.unit.length, right.unit.length) / 2;
}

/** The part of a tall unit that stands beside a lower one and the bed under that; any other unit as it is. */
export function partBeside(unit: Unit, { unit: other, bed }: Placed): Unit {
  if (!isTall(unit) || isTall(other)) return unit;
  const x = Math.min(Math.max(unit.x, other.x), other.x + other.length);
  const top = undersideAt(other, x) + other.height;
  const y = Math.max(unit.y, undersideAt(other, x) - (bed?.left ?? 0));
  const height = top - y;
  const middle = (y + height / 2 - unit.y) / unit.height - 0.5;
  return {
    ...unit,
    y,
    height,
    fall: 0,
    lean: (unit.lean * height) / unit.height,
    set: unit.set + unit.lean * middle,
  };
}

/** The tops of the courses as lines along the wall, each broken where a unit stands on through it. */
export function topsIn(survey: PanelSurvey): readonly Ring[] {
  return courseRows(survey).flatMap((course, index) => {
    const runs: Unit[][] = [[]];
    for (const { unit } of course) {
      if (topCourseOf(unit) > index + 1) runs.push([]);
      else runs[runs.length - 1]?.push(unit);
    }
    return runs.flatMap((run): readonly Ring[] => {
      const first = run[0];
      const last = run[run.length - 1];
      if (first === undefined || last === undefined) return [];
      return [
        [
          [topLeft(first), first.y + first.height],
          [topRight(last), last.y + last.height - last.fall],
        ],
      ];
    });
  });
}

/** How high the highest unit of a panel reaches. */
export function topOf({ placed }: PanelSurvey): Mm {
  return placed.reduce((most, { unit }) => Math.max(most, unit.y + unit.height), 0);
}
