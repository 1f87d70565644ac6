import type { Drawing } from '../../drawing/shape';
import { type Box, distanceTo } from '../../geometry/box';
import type { LengthSystem } from '../../units';
import type { PartKind } from '../../wall/part-id';
import { partName } from '../../wall/part-names';
import type { Part } from '../../wall/parts';
import type { SurveyedWall } from '../../wall/surveyed';
import { ticketReadout } from '../tickets/words';
import type { View } from '../view';
import type { Distance } from '../viewing-conditions';
import { partReadouts } from './part-readouts';

/** What can be pointed at together: one layer at a time. */
export type Layer = 'units' | 'joints' | 'fixings';

export interface Target {
  readonly part: string;
  readonly name: string;
  readonly box: Box;
  /** Where it shows besides: a ledge in each strip of a plan. */
  readonly others?: readonly Box[];
}

/** Targets that stand side by side, from the left. */
export interface TargetRow {
  readonly key: string;
  readonly targets: readonly Target[];
}

const KINDS: Readonly<Record<Layer, readonly PartKind[]>> = {
  units: ['unit'],
  joints: ['bed', 'head'],
  fixings: ['tie', 'support', 'opening', 'corner', 'edge', 'batch'],
};

/**
 * The targets of a layer in rows, from the bottom up: a course of units, its beds, its heads, a row of ties. Where the view shows
 * nothing of that layer, what it does show: there is always something to point at. `from` is where parts are read from; from nothing they
 * are named and no more.
 */
export function targetRows(
  surveyed: SurveyedWall,
  view: View,
  drawing: Drawing,
  layer: Layer,
  system: LengthSystem,
  from: Distance | 'nothing' = 'near',
): readonly TargetRow[] {
  const readouts =
    from === 'nothing'
      ? new Map<string, string>()
      : new Map([
          ...partReadouts(surveyed, view, system, from),
          ...surveyed.wall.batches.map((batch) => [batch.id, ticketReadout(batch)] as const),
        ]);
  for (const each of [layer, 'fixings', 'units'] as const) {
    const rows = rowsOfLayer(surveyed, view, drawing, each, readouts);
    if (rows.length > 0) return rows;
  }
  return [];
}

function rowsOfLayer(
  { wall, parts }: SurveyedWall,
  view: View,
  drawing: Drawing,
  layer: Layer,
  readouts: ReadonlyMap<string, string>,
): readonly TargetRow[] {
  const rows = new Map<string, Map<string, Target>>();
  for (const { part: id, x, y, width, height } of drawing.spots) {
    const part = parts.get(id);
    if (part === undefined || !KINDS[layer].includes(part.kind)) continue;
    const key = rowKey(part, view);
    const row = rows.get(key) ?? new Map<string, Target>();
    const box = { x, y, width, height };
    const before = row.get(id);
    row.set(
      id,
      before
        ? { ...before, others: [...(before.others ?? []), box] }
        : { part: id, name: `${partName(part, wall)}${readouts.get(id) ?? ''}`, box },
    );
    rows.set(key, row);
  }
  // A plan in strips goes on from strip to strip: its parts stand as they lie along the wall, not as they lie on the sheet.
  const inStrips = view.kind === 'above' || view.kind === 'below';
  const left = ({ part, box }: Target) => (inStrips ? (parts.get(part)?.x ?? box.x) : box.x);
  return [...rows]
    .map(([key, row]) => ({ key, targets: [...row.values()].sort((a, b) => left(a) - left(b)) }))
    .sort((a, b) => levelOf(a) - levelOf(b));
}

function rowKey({ kind, course, y }: Part, view: View): string {
  // What stands through a course from below lies beside the units of that course.
  if (view.kind === 'above' && course !== null) return `${kind} ${view.course}`;
  if (kind === 'support') return `support at ${Math.round(y / 100)}`;
  return course === null ? kind : `${kind} ${course}`;
}

/** Height of a row in the middle of the lowest of its targets, as a mean: what decides which row is above which. */
export function levelOf({ targets }: TargetRow): number {
  const foot = targets.reduce((sum, { box }) => sum + box.y, 0) / targets.length;
  return foot + shortestOf({ targets }) / 2;
}

/** The height of the lowest target of a row. */
export function shortestOf({ targets }: Pick<TargetRow, 'targets'>): number {
  return Math.min(...targets.map(({ box }) => box.height));
}

/** The target under a point or nearest to it within `slack` (end included); of two equally near ones the smaller. */
export function targetAt(rows: readonly TargetRow[], x: number, y: number, slack: number): Target | null {
  let best: Target | null = null;
  let bestAway = slack;
  let bestSize = Number.POSITIVE_INFINITY;
  for (const { targets } of rows) {
    for (const target of targets) {
      for (const box of [target.box, ...(target.others ?? [])]) {
        const away = distanceTo(box, x, y);
        if (away > bestAway) continue;
        const size = box.width * box.height;
        if (away < bestAway || size < bestSize) {
          best = target;
          bestAway = away;
          bestSize = size;
        }
      }
    }
  }
  return best;
}
