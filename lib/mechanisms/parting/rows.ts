import type { Mm } from '../../units';
import { topCourseOf } from '../../wall/model';
import { headWidth, type PanelSurvey, type Placed } from '../../wall/survey';

/** What stands in each course, from the left, units that stand through it too. Row 0 is course 1. */
export type Rows = readonly (readonly Placed[])[];

export function rowsOf({ placed, panel }: PanelSurvey): Rows {
  const rows: Placed[][] = Array.from({ length: panel.courses }, () => []);
  for (const each of placed) {
    const top = topCourseOf(each.unit);
    for (let course = each.unit.course; course <= top; course++) rows[course - 1]?.push(each);
  }
  for (const row of rows) row.sort((a, b) => a.unit.x - b.unit.x);
  return rows;
}

/** The unit of a row at x, none in an opening or past an end. A head joint belongs to the unit on its left. */
export function unitIn(row: readonly Placed[] | undefined, x: Mm, joint: Mm): Placed | null {
  return row?.find(({ unit }) => unit.x <= x && x < unit.x + unit.length + joint) ?? null;
}

/** Middles of the head joints of a row, from the left. */
export function headsOf(row: readonly Placed[], widest: Mm): readonly Mm[] {
  return row.slice(1).flatMap(({ unit }, index) => {
    const left = row[index]?.unit;
    if (left === undefined) return [];
    const gap = headWidth(left, unit);
    return gap < widest ? [left.x + left.length + gap / 2] : [];
  });
}

/** The first row whose units stand on or above this height. */
export function rowOver(rows: Rows, y: Mm): number {
  const row = rows.findIndex((each) => each.some(({ unit }) => unit.y > y - 1));
  return row < 0 ? rows.length : row;
}
