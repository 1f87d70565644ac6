import { inverse, type Matrix, type Spot, solved, times } from './matrix';
import { PhotoError } from './photo-error';

/** Corners of a rectangle on the wall, in the order top left, top right, bottom right, bottom left of the wall. */
export type Corners = readonly [Spot, Spot, Spot, Spot];

/** Three corners whose triangle is smaller than this share of the box round all four lie as good as in a line. */
const FLAT = 0.01;

/**
 * The projective mapping that sends four points to four others, its last number 1. The direct linear transformation, with both
 * sets moved to their middle and scaled to a mean distance of √2 (R. Hartley, A. Zisserman, Multiple View Geometry, algorithm 4.2).
 */
export function homographyOf(from: Corners, to: Corners): Matrix {
  const before = normaliserOf(from);
  const after = normaliserOf(to);
  const rows: number[][] = [];
  for (const [index, start] of from.entries()) {
    const u = before[0] * start.x + before[2];
    const v = before[4] * start.y + before[5];
    const x = after[0] * (to[index]?.x ?? 0) + after[2];
    const y = after[4] * (to[index]?.y ?? 0) + after[5];
    rows.push([u, v, 1, 0, 0, 0, -x * u, -x * v, x], [0, 0, 0, u, v, 1, -y * u, -y * v, y]);
  }
  const [a, b, c, d, e, f, g, h] = solved(rows) ?? [];
  if (a === undefined || b === undefined || c === undefined || d === undefined || e === undefined)
    throw new PhotoError('the four points do not settle how the wall lies');
  const found: Matrix = [a, b, c, d, e, f ?? 0, g ?? 0, h ?? 0, 1];
  const whole = times(times(inverse(after), found), before);
  const last = whole[8];
  return whole.map((value) => value / last) as unknown as Matrix;
}

function normaliserOf(spots: Corners): Matrix {
  const x = spots.reduce((sum, spot) => sum + spot.x, 0) / 4;
  const y = spots.reduce((sum, spot) => sum + spot.y, 0) / 4;
  const far = spots.reduce((sum, spot) => sum + Math.hypot(spot.x - x, spot.y - y), 0) / 4;
  const by = Math.SQRT2 / far;
  return [by, 0, -by * x, 0, by, -by * y, 0, 0, 1];
}

/** Four corners in the order of `Corners`: those told row by row are put in order. Refuses what cannot be a rectangle seen from in front. */
export function cornersOf(spots: readonly Spot[]): Corners {
  const [first, second, third, fourth, ...more] = spots;
  if (!first || !second || !third || !fourth || more.length > 0)
    throw new PhotoError(`the corners: four points are needed, not ${spots.length}`);
  const width = extent(spots.map(({ x }) => x));
  const height = extent(spots.map(({ y }) => y));
  const round: Corners = [first, second, third, fourth];
  const turns = turnsOf(round);
  if (turns.some((turn) => Math.abs(turn) < 2 * FLAT * width * height) || !(width * height > 0))
    throw new PhotoError('the corners: three of the four points lie as good as in one line');
  if (turns.every((turn) => turn > 0)) return round;
  const byRow: Corners = [first, second, fourth, third];
  if (turnsOf(byRow).every((turn) => turn > 0)) return byRow;
  throw new PhotoError(
    'the corners: the four points must go round a rectangle as top left, top right, bottom right, bottom left',
  );
}

/** Twice the area of the triangle at each corner, positive where the way round turns right. */
function turnsOf(corners: Corners): readonly number[] {
  return corners.map((corner, index) => {
    const next = corners[(index + 1) % 4] ?? corner;
    const after = corners[(index + 2) % 4] ?? corner;
    return (next.x - corner.x) * (after.y - next.y) - (next.y - corner.y) * (after.x - next.x);
  });
}

function extent(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
