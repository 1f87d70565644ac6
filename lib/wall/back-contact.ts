import { clipped } from '../geometry/box';
import { areaOnFace, meanLength } from './cut';
import type { Pat, Unit } from './model';

/** Mortar contact on the back of a unit. Areas in mm². */
export interface BackContact {
  readonly area: number;
  readonly covered: number;
  /** Largest bare area that hangs together by edges. */
  readonly largestBare: number;
  /** True when that area touches no edge of the back. */
  readonly closed: boolean;
}

/** Union of the pats on the back and the bare areas left, by coordinate compression: exact on the grid, but where an end is cut to a slope. */
export function measureBack(unit: Unit): BackContact {
  const area = meanLength(unit) * unit.height;
  const pats = (unit.back ?? [])
    .map((pat) => clipped(pat, { x: 0, y: 0, width: unit.length, height: unit.height }))
    .filter((pat) => pat.width > 0 && pat.height > 0);
  if (pats.length === 1 && unit.cut === undefined) return contactOfOne(pats[0] as Pat, unit, area);
  const xs = cuts(
    pats.flatMap(({ x, width }) => [x, x + width]),
    unit.length,
  );
  const ys = cuts(
    pats.flatMap(({ y, height }) => [y, y + height]),
    unit.height,
  );
  const columns = xs.length - 1;
  const rows = ys.length - 1;
  const bare = new Uint8Array(columns * rows).fill(1);
  for (const pat of pats) {
    for (let row = 0; row < rows; row++) {
      const y = at(ys, row);
      if (y < pat.y || y >= pat.y + pat.height) continue;
      for (let column = 0; column < columns; column++) {
        const x = at(xs, column);
        if (x >= pat.x && x < pat.x + pat.width) bare[row * columns + column] = 0;
      }
    }
  }
  let bareArea = 0;
  let largestBare = 0;
  let closed = false;
  for (let cell = 0; cell < bare.length; cell++) {
    if (bare[cell] !== 1) continue;
    const patch = takePatch(bare, cell, xs, ys, unit);
    bareArea += patch.area;
    if (patch.area > largestBare) {
      largestBare = patch.area;
      closed = patch.closed;
    }
  }
  return { area, covered: area - bareArea, largestBare, closed };
}

/** One pat leaves at most an L or a frame of bare back: a frame touches the edges, so nothing is closed. */
function contactOfOne(pat: Pat, unit: Unit, area: number): BackContact {
  const covered = pat.width * pat.height;
  const wholeLength = pat.width === unit.length;
  const wholeHeight = pat.height === unit.height;
  const largestBare = wholeLength
    ? Math.max(pat.y, unit.height - pat.y - pat.height) * unit.length
    : wholeHeight
      ? Math.max(pat.x, unit.length - pat.x - pat.width) * unit.height
      : area - covered;
  return { area, covered, largestBare, closed: false };
}

function cuts(inside: readonly number[], end: number): readonly number[] {
  return [...new Set([0, ...inside, end])].sort((a, b) => a - b);
}

function at(values: readonly number[], index: number): number {
  return values[index] ?? 0;
}

/** Floods the bare patch that holds `start`, clearing its cells. What was cut away is no part of the back, and joins nothing. */
function takePatch(
  bare: Uint8Array,
  start: number,
  xs: readonly number[],
  ys: readonly number[],
  unit: Unit,
): { area: number; closed: boolean } {
  const columns = xs.length - 1;
  const rows = ys.length - 1;
  const waiting = [start];
  bare[start] = 0;
  let area = 0;
  let closed = true;
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    const column = cell % columns;
    const row = (cell - column) / columns;
    const width = at(xs, column + 1) - at(xs, column);
    const height = at(ys, row + 1) - at(ys, row);
    const here =
      unit.cut === undefined
        ? width * height
        : areaOnFace(unit, { x: at(xs, column), y: at(ys, row), width, height });
    if (here === 0) continue;
    area += here;
    const isAtEnd = column === 0 || row === 0 || column === columns - 1 || row === rows - 1;
    if (isAtEnd || here < width * height) closed = false;
    const around = [
      column > 0 ? cell - 1 : -1,
      column < columns - 1 ? cell + 1 : -1,
      row > 0 ? cell - columns : -1,
      row < rows - 1 ? cell + columns : -1,
    ];
    for (const next of around) {
      if (next >= 0 && bare[next] === 1) {
        bare[next] = 0;
        waiting.push(next);
      }
    }
  }
  return { area, closed };
}
