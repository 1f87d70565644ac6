import type { Box } from '../../geometry/box';
import { levelOf, shortestOf, type Target, type TargetRow } from './targets';

/** A place in the rows of targets, and what a journey keeps to, as a text cursor does. */
export interface GridPlace {
  readonly row: number;
  readonly index: number;
  /** The row that left and right keep to: of a tall target one that it stands through, else its own. */
  readonly along: number;
  /** The x that up and down try to keep to. */
  readonly wantedX: number;
}

/** Rows that PageUp and PageDown travel. */
const PAGE = 5;
/** A target this many times as high as the lowest of its row stands through the rows over it, too. */
const TALL = 1.5;
/** A row counts as over a tall target from this share of its height on: courses are not quite level. */
const NEAR_TOP = 0.9;

/**
 * Where a key leads from a place; null for a key that does not travel. Left and right stay in the row; up and down go to the part
 * that lies over or under the wanted x (of a tall one, to what lies over its top or under its foot), past the last row to a part of
 * it that stands over or under the others.
 */
export function placeAfterKey(
  rows: readonly TargetRow[],
  from: GridPlace,
  key: string,
  whole: boolean,
): GridPlace | null {
  const target = rows[from.row]?.targets[from.index];
  if (target === undefined) return null;
  const last = rows.length - 1;
  switch (key) {
    case 'ArrowLeft':
      return beside(rows, from, -1);
    case 'ArrowRight':
      return beside(rows, from, 1);
    case 'Home':
      return endOf(rows, whole ? 0 : from.along, 0);
    case 'End':
      return endOf(rows, whole ? last : from.along, -1);
    case 'ArrowUp':
      return from.row < last
        ? rise(rows, from, Math.min(last, rowOver(rows, from, target)))
        : within(rows, from, 1);
    case 'ArrowDown':
      return from.row > 0 ? rise(rows, from, from.row - 1) : within(rows, from, -1);
    case 'PageUp':
      return rise(rows, from, Math.min(last, from.row + PAGE));
    case 'PageDown':
      return rise(rows, from, Math.max(0, from.row - PAGE));
    default:
      return null;
  }
}

/** The place of a part; null if it is not in this layer. */
export function gridPlaceOf(rows: readonly TargetRow[], part: string): GridPlace | null {
  for (const [row, { targets }] of rows.entries()) {
    const index = targets.findIndex((target) => target.part === part);
    if (index >= 0) return at(rows, { row, index }, row);
  }
  return null;
}

type Cell = Pick<GridPlace, 'row' | 'index'>;

function at(rows: readonly TargetRow[], { row, index }: Cell, along: number): GridPlace {
  const box = rows[row]?.targets[index]?.box;
  return { row, index, along, wantedX: box ? box.x + box.width / 2 : 0 };
}

/** In a row whose parts stand one over another: the nearest one up (1) or down (-1); itself where there is none. */
function within(rows: readonly TargetRow[], from: GridPlace, sense: 1 | -1): GridPlace {
  const targets = rows[from.row]?.targets ?? [];
  const here = targets[from.index]?.box;
  let next = from.index;
  let least = Number.POSITIVE_INFINITY;
  for (const [each, { box }] of targets.entries()) {
    const away = here ? (sense > 0 ? box.y - here.y - here.height : here.y - box.y - box.height) : -1;
    const reach = away + asideOf(box, from.wantedX);
    if (away < 0 || reach >= least) continue;
    least = reach;
    next = each;
  }
  return { ...from, index: next };
}

/** All that stands in a row, from the left: its own targets, and the tall ones of its kind that stand through it from below. */
function cellsIn(rows: readonly TargetRow[], at: number): readonly Cell[] {
  const row = rows[at];
  if (row === undefined) return [];
  const level = levelOf(row);
  const found = rows
    .slice(0, at + 1)
    .flatMap((each, index): (Cell & { readonly x: number })[] =>
      kindOf(each) === kindOf(row)
        ? each.targets.flatMap((target, place) =>
            index === at || (isTall(each, target) && target.box.y + target.box.height > level)
              ? [{ row: index, index: place, x: target.box.x }]
              : [],
          )
        : [],
    );
  return found.length === row.targets.length ? found : found.sort((a, b) => a.x - b.x);
}

function kindOf({ key }: TargetRow): string {
  return key.slice(0, key.indexOf(' '));
}

function isTall(row: TargetRow, { box }: Target): boolean {
  return box.height > TALL * shortestOf(row);
}

function beside(rows: readonly TargetRow[], from: GridPlace, step: 1 | -1): GridPlace {
  const standing = cellsIn(rows, from.along);
  const here = standing.findIndex(({ row, index }) => row === from.row && index === from.index);
  return at(rows, standing[here + step] ?? from, from.along);
}

function endOf(rows: readonly TargetRow[], along: number, end: 0 | -1): GridPlace {
  return at(rows, cellsIn(rows, along).at(end) ?? { row: along, index: 0 }, along);
}

/** The next row, or of a tall target the first that lies over it. */
function rowOver(rows: readonly TargetRow[], { row }: Cell, target: Target): number {
  const own = rows[row];
  if (own === undefined || !isTall(own, target)) return row + 1;
  const top = target.box.y + target.box.height * NEAR_TOP;
  const over = rows.findIndex((each, index) => index > row && levelOf(each) > top);
  return over < 0 ? row : over;
}

function rise(rows: readonly TargetRow[], from: GridPlace, row: number): GridPlace {
  if (row === from.row) return from;
  let best: Cell = { row, index: 0 };
  let least = Number.POSITIVE_INFINITY;
  for (const spot of cellsIn(rows, row)) {
    const box = rows[spot.row]?.targets[spot.index]?.box;
    if (box === undefined) continue;
    const away = asideOf(box, from.wantedX);
    if (away < least) {
      least = away;
      best = spot;
    }
  }
  return { ...best, along: row, wantedX: from.wantedX };
}

/** How far a box lies to the left or right of x; 0 over or under it. */
function asideOf(box: Box, x: number): number {
  return Math.max(box.x - x, x - box.x - box.width, 0);
}
