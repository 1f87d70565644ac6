import type { Mm } from '../../units';
import type { PanelId, UnitId } from '../../wall/part-id';
import { type CrackStep, crackSteps, SEEN } from './crack-steps';
import type { FailingWall } from './model';

/** Two steps belong to one crack when an end of one lies this near an end of the other: a joint and a half, mm. */
const NEAR: Mm = 25;

/** What has come apart in one line, from its lowest step to its highest. */
export interface Crack {
  readonly panel: PanelId;
  readonly steps: readonly CrackStep[];
  readonly way: 'stepped' | 'vertical' | 'horizontal';
  /** Where it stands open widest, mm. */
  readonly width: Mm;
  /** Means over its upright steps of how far they stand open, and over its beds, mm: the movement of one side against the other. */
  readonly opensAlong: Mm;
  readonly opensUp: Mm;
  /** Width by height, fitted to its upright steps and beds alike: mm at its foot and at its head. */
  readonly atFoot: Mm;
  readonly atHead: Mm;
  /** Units it goes through. */
  readonly through: readonly UnitId[];
  readonly left: Mm;
  readonly right: Mm;
  readonly low: Mm;
  readonly high: Mm;
}

/** Every crack that can be seen, the widest first. */
export function cracksOf(failing: FailingWall): readonly Crack[] {
  const { length, height } = failing.survey.wall.family;
  return linesOf(crackSteps(failing))
    .filter((steps) => steps.some(({ widths }) => Math.max(...widths) >= SEEN))
    .map((steps) => crackOf(steps, length, height))
    .sort((a, b) => b.width - a.width || a.low - b.low || a.left - b.left);
}

/** Steps whose ends meet, gathered by a search from each that is not taken yet. */
function linesOf(steps: readonly CrackStep[]): readonly (readonly CrackStep[])[] {
  const cellOf = (panel: string, x: Mm, y: Mm) => `${panel}${Math.floor(x / NEAR)},${Math.floor(y / NEAR)}`;
  const cells = new Map<string, number[]>();
  for (const [index, { panel, from, to }] of steps.entries()) {
    for (const [x, y] of [from, to]) {
      const cell = cellOf(panel, x, y);
      const there = cells.get(cell);
      if (there) there.push(index);
      else cells.set(cell, [index]);
    }
  }
  const taken = new Set<number>();
  return steps.flatMap((_, first) => {
    if (taken.has(first)) return [];
    taken.add(first);
    const line: CrackStep[] = [];
    const waiting = [first];
    for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
      const step = steps[at];
      if (step === undefined) continue;
      line.push(step);
      for (const [x, y] of [step.from, step.to]) {
        for (const dx of [-NEAR, 0, NEAR]) {
          for (const dy of [-NEAR, 0, NEAR]) {
            for (const other of cells.get(cellOf(step.panel, x + dx, y + dy)) ?? []) {
              if (taken.has(other) || !meets(steps[other], x, y)) continue;
              taken.add(other);
              waiting.push(other);
            }
          }
        }
      }
    }
    return [line.sort((a, b) => a.from[1] - b.from[1] || a.from[0] - b.from[0])];
  });
}

function meets(step: CrackStep | undefined, x: Mm, y: Mm): boolean {
  return (
    step !== undefined &&
    [step.from, step.to].some(([px, py]) => (px - x) * (px - x) + (py - y) * (py - y) <= NEAR * NEAR)
  );
}

function crackOf(steps: readonly CrackStep[], length: Mm, height: Mm): Crack {
  const xs = steps.flatMap(({ from, to }) => [from[0], to[0]]);
  const ys = steps.flatMap(({ from, to }) => [from[1], to[1]]);
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const upright = steps.filter(({ kind }) => kind !== 'bed');
  const beds = steps.filter(({ kind }) => kind === 'bed');
  const line = fitted(
    steps.map((step) => [(step.from[1] + step.to[1]) / 2, (step.widths[0] + step.widths[1]) / 2] as const),
  );
  return {
    panel: steps[0]?.panel as PanelId,
    steps,
    way: high - low < height ? 'horizontal' : right - left <= length ? 'vertical' : 'stepped',
    width: Math.max(...steps.flatMap(({ widths }) => widths)),
    opensAlong: meanOf(upright.map(({ u }) => u)),
    opensUp: meanOf(beds.map(({ v }) => v)),
    atFoot: line(low),
    atHead: line(high),
    through: steps.flatMap((step) => (step.kind === 'unit' ? [step.part as UnitId] : [])),
    left,
    right,
    low,
    high,
  };
}

function meanOf(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** The straight line through points by least squares; level where they all stand at one height. */
function fitted(points: readonly (readonly [number, number])[]): (z: number) => number {
  const meanZ = meanOf(points.map(([z]) => z));
  const meanW = meanOf(points.map(([, w]) => w));
  let zz = 0;
  let zw = 0;
  for (const [z, w] of points) {
    zz += (z - meanZ) * (z - meanZ);
    zw += (z - meanZ) * (w - meanW);
  }
  const slope = zz > 0 ? zw / zz : 0;
  return (z) => meanW + slope * (z - meanZ);
}
