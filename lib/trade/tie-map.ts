import type { Box } from '../geometry/box';
import type { Mm } from '../units';
import { refuseNegative, refuseNotPositive } from './refusals';

/** Ties on the studs of a panel with one opening or none. mm. */
export interface TieField {
  readonly width: Mm;
  readonly height: Mm;
  /** Between columns of ties: a stud spacing or a multiple of it. */
  readonly across: Mm;
  /** Between rows of ties. */
  readonly up: Mm;
  /** Of the first column from the left end, and of the first row from the foot. */
  readonly firstAcross: Mm;
  readonly firstUp: Mm;
  readonly opening: Box | null;
}

/** One tie and the wall that leans on it. */
export interface MappedTie {
  readonly x: Mm;
  readonly y: Mm;
  /** All points nearer to it than to any other tie, openings left out, mm². */
  readonly area: number;
}

/** Ties, and for every square of the panel which of them holds it. */
export interface TieMap {
  readonly ties: readonly MappedTie[];
  readonly columns: number;
  readonly rows: number;
  /** Row by row from the lower left: place in `ties`, −1 in the opening or where there are no ties. */
  readonly owners: readonly number[];
}

/** Side of the squares by which areas are told, mm: true to a few per cent of a tie's share. */
const SQUARE: Mm = 50;

/**
 * The ties of a field and the area each has to hold. Ties inside the opening are left out: the wall around it then leans on the ones
 * next to it, which is why codes ask for more at its edges. A tie on the edge of the opening stays.
 * @throws RangeError for a size or spacing not above zero, or a negative first place.
 */
export function tieMapOf(field: TieField): TieMap {
  refuseNotPositive('width', field.width);
  refuseNotPositive('height', field.height);
  refuseNotPositive('spacing across', field.across);
  refuseNotPositive('spacing up', field.up);
  refuseNegative('first across', field.firstAcross);
  refuseNegative('first up', field.firstUp);
  const places = stepsOf(field.firstUp, field.up, field.height).flatMap((y) =>
    stepsOf(field.firstAcross, field.across, field.width)
      .filter((x) => !isWithin(field.opening, x, y))
      .map((x) => ({ x, y })),
  );
  const squares = new Array<number>(places.length).fill(0);
  const owners: number[] = [];
  const columns = Math.ceil(field.width / SQUARE);
  const rows = Math.ceil(field.height / SQUARE);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const x = ((column + 0.5) * field.width) / columns;
      const y = ((row + 0.5) * field.height) / rows;
      const nearest = isWithin(field.opening, x, y) ? -1 : nearestOf(places, x, y);
      owners.push(nearest);
      if (nearest >= 0) squares[nearest] = (squares[nearest] ?? 0) + 1;
    }
  }
  const each = (field.width / columns) * (field.height / rows);
  const ties = places.map((place, index) => ({ ...place, area: (squares[index] ?? 0) * each }));
  return { ties, columns, rows, owners };
}

/** How far the nearest tie stands outward from the left jamb of the opening, mm; Infinity where none stands beside it. */
export function firstTieBeside(opening: Box, ties: readonly MappedTie[]): Mm {
  const away = ties
    .filter(({ y }) => y >= opening.y && y <= opening.y + opening.height)
    .map(({ x }) => Math.max(opening.x - x, x - opening.x - opening.width));
  return Math.min(Number.POSITIVE_INFINITY, ...away);
}

function stepsOf(first: Mm, step: Mm, end: Mm): readonly Mm[] {
  const count = Math.max(0, Math.floor((end - first) / step) + 1);
  return Array.from({ length: count }, (_, index) => first + index * step);
}

function nearestOf(places: readonly { readonly x: Mm; readonly y: Mm }[], x: Mm, y: Mm): number {
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  places.forEach((place, index) => {
    const away = (place.x - x) ** 2 + (place.y - y) ** 2;
    if (away < least) {
      least = away;
      best = index;
    }
  });
  return best;
}

function isWithin(box: Box | null, x: Mm, y: Mm): boolean {
  return box !== null && x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height;
}
