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
 * that lies over or under the wanted x.
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
      return rise(rows, from, Math.min(lastRow, from.row + 1));
    case 'ArrowDown':
      return rise(rows, from, Math.max(0, from.row - 1));
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

function rise(
  rows: readonly TargetRow[],
  { wantedX, row: fromRow, index: fromIndex }: Place,
  row: number,
): Place {
  if (row === fromRow) return { row, index: fromIndex, wantedX };
  let index = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const [each, { box }] of (rows[row]?.targets ?? []).entries()) {
    const away = Math.max(box.x - wantedX, wantedX - box.x - box.width, 0);
    if (away < least) {
      least = away;
      index = each;
    }
  }
  return { row, index, wantedX };
}
