import { boundAt } from '../limits/bound';
import { namedLimitOf } from '../limits/limits';
import { MM_PER_M } from '../units';
import type { Bounds } from './bounds';
import { nominal } from './find';
import type { Corners } from './homography';
import { type Judged, verdictOf } from './judge';
import type { Frame } from './lens';
import type { Spot } from './matrix';
import type { Known } from './measure';
import { propagated } from './propagate';
import type { Mapping, Reference } from './reference';
import { mappingAt } from './reference';

/** What is measured between points that a person set, beside what the joints give. */
export interface PointMeasure extends Judged {
  readonly value: number;
  readonly sd: number;
  readonly unit: 'mm' | 'mm per m';
  readonly n: number;
  readonly limit: Bounds | undefined;
}

/** A point set under the loupe, px. */
const LOUPE_SD = 0.5;

/** How wide a crack is between two points on its edges, mm. */
export function crackWidth(
  frame: Frame,
  reference: Reference,
  edges: readonly [Spot, Spot],
  { rules }: Known,
): PointMeasure {
  const { value, sd } = measured(frame, reference, edges, ([from, to]) =>
    from && to ? Math.hypot(to.x - from.x, to.y - from.y) : 0,
  );
  const row = namedLimitOf(rules, 'crack-width');
  const limit = row && { limit: row, most: boundAt(row, {}) };
  return {
    value,
    sd,
    unit: 'mm',
    n: 1,
    limit,
    // No width is a pass.
    verdict: limit !== undefined && verdictOf(value, sd, limit) === 'beyond' ? 'beyond' : 'cannot tell',
    settle:
      'No width makes a crack safe. What counts is whether it grows, steps or lies over an opening: ask an engineer.',
  };
}

/** How far the corner of an opening that is least square is off a right angle, mm in a metre. */
export function openingSquare(
  frame: Frame,
  reference: Reference,
  corners: Corners,
  known: Known,
): PointMeasure {
  const { mapping } = nominal(frame, reference);
  const seen = offSquare(corners.map(mapping.toWall));
  const worst = seen.indexOf(Math.max(...seen));
  const { value, sd } = measured(frame, reference, corners, (spots) => offSquare(spots)[worst] ?? 0);
  const settle =
    known.level === undefined
      ? 'The four points may be off square like the opening. Measure its two diagonals with a tape.'
      : 'These rules give no figure for it. Compare its two diagonals with a tape.';
  return { value, sd, unit: 'mm per m', n: 4, limit: undefined, verdict: 'cannot tell', settle };
}

function offSquare(spots: readonly Spot[]): readonly number[] {
  return spots.map((spot, index) => {
    const [before, after] = [spots[(index + 3) % 4] ?? spot, spots[(index + 1) % 4] ?? spot];
    const [ax, ay, bx, by] = [before.x - spot.x, before.y - spot.y, after.x - spot.x, after.y - spot.y];
    return (Math.abs(ax * bx + ay * by) / (Math.hypot(ax, ay) * Math.hypot(bx, by))) * MM_PER_M;
  });
}

/** A quantity of points on the wall, and its standard deviation from those points and from all that the mapping hangs on. */
function measured(
  frame: Frame,
  reference: Reference,
  spots: readonly Spot[],
  quantity: (spots: readonly Spot[]) => number,
) {
  const { camera, parameters } = nominal(frame, reference);
  const all = [
    ...parameters,
    ...spots.flatMap(({ x, y }) => [x, y].map((value) => ({ value, sd: LOUPE_SD }))),
  ];
  const chain = (values: readonly number[]) => {
    const mapping: Mapping = mappingAt(reference.kind, frame, camera.distance, values);
    const set = values.slice(parameters.length);
    return [
      quantity(
        spots.map((_, index) => mapping.toWall({ x: set[2 * index] ?? 0, y: set[2 * index + 1] ?? 0 })),
      ),
    ];
  };
  return { value: chain(all.map(({ value }) => value))[0] ?? 0, sd: propagated(chain, all)[0] ?? 0 };
}
