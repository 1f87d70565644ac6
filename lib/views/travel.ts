import type { Box } from './shape';
import type { TargetRow } from './targets';

/** A place in the rows of targets, and the x that up and down try to keep to, as a text cursor does. */
export interface Place {
  readonly row: number;
  readonly index: number;
  readonly wantedX: number;
}

/** Rows that PageUp and PageDown travel. */
const PAGE = 5;

/**
 * Where a key leads from a place; null for a key that does not travel. Left and right stay in the row; up and down go to the part
 * that lies over or under the wanted x, past the last row to a part of it that stands over or under the others.
 */
export function travelled(
  rows: readonly TargetRow[],
  from: Place,
  key: string,
  whole: boolean,
): Place | null {
  const row = rows[from.row];
  if (row === undefined) return null;
  const lastRow = rows.length - 1;
  const lastIndex = row.targets.length - 1;
  switch (key) {
    case 'ArrowLeft':
      return at(rows, from.row, Math.max(0, from.index - 1));
    case 'ArrowRight':
      return at(rows, from.row, Math.min(lastIndex, from.index + 1));
    case 'Home':
      return whole ? at(rows, 0, 0) : at(rows, from.row, 0);
    case 'End':
      return whole
        ? at(rows, lastRow, (rows[lastRow]?.targets.length ?? 1) - 1)
        : at(rows, from.row, lastIndex);
    case 'ArrowUp':
      return from.row < lastRow ? rise(rows, from, from.row + 1) : within(rows, from, 1);
    case 'ArrowDown':
      return from.row > 0 ? rise(rows, from, from.row - 1) : within(rows, from, -1);
    case 'PageUp':
      return rise(rows, from, Math.min(lastRow, from.row + PAGE));
    case 'PageDown':
      return rise(rows, from, Math.max(0, from.row - PAGE));
    default:
      return null;
  }
}

/** The place of a part; null when the layer has it not. */
export function placeOf(rows: readonly TargetRow[], part: string): Place | null {
  for (const [row, { targets }] of rows.entries()) {
    const index = targets.findIndex((target) => target.part === part);
    if (index >= 0) return at(rows, row, index);
  }
  return null;
}

function at(rows: readonly TargetRow[], row: number, index: number): Place {
  const box = rows[row]?.targets[index]?.box;
  return { row, index, wantedX: box ? box.x + box.width / 2 : 0 };
}

/** In a row whose parts stand one over another: the nearest one up (1) or down (-1); itself where there is none. */
function within(rows: readonly TargetRow[], { row, index, wantedX }: Place, sense: 1 | -1): Place {
  const targets = rows[row]?.targets ?? [];
  const from = targets[index]?.box;
  let next = index;
  let least = Number.POSITIVE_INFINITY;
  for (const [each, { box }] of targets.entries()) {
    const away = from ? (sense > 0 ? box.y - from.y - from.height : from.y - box.y - box.height) : -1;
    const reach = away + asideOf(box, wantedX);
    if (away < 0 || reach >= least) continue;
    least = reach;
    next = each;
  }
  return { row, index: next, wantedX };
}

function rise(
  rows: readonly TargetRow[],
  { wantedX, row: fromRow, index: fromIndex }: Place,
  row: number,
): Place {
  if (row === fromRow) return { row, index: fromIndex, wantedX };
  let index = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const [each, { box }] of (rows[row]?.targets ?? []).entries()) {
    const away = asideOf(box, wantedX);
    if (away < least) {
      least = away;
      index = each;
    }
  }
  return { row, index, wantedX };
}

/** How far a box lies to the left or right of x; 0 over or under it. */
function asideOf(box: Box, x: number): number {
  return Math.max(box.x - x, x - box.x - box.width, 0);
}
