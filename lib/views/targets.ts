import type { LengthSystem } from '../units';
import type { Wall } from '../wall/model';
import { type Part, type PartKind, partsOf } from '../wall/parts';
import { partNames } from './part-names';
import type { Box, Drawing } from './shape';
import type { View } from './view';

/** What can be pointed at together: one layer at a time. */
export type Layer = 'units' | 'joints' | 'fixings';

export interface Target {
  readonly part: string;
  readonly name: string;
  readonly box: Box;
}

/** Targets that stand side by side, from the left. */
export interface TargetRow {
  readonly key: string;
  readonly targets: readonly Target[];
}

const KINDS: Readonly<Record<Layer, readonly PartKind[]>> = {
  units: ['unit'],
  joints: ['bed', 'head'],
  fixings: ['tie', 'support', 'opening', 'corner', 'edge'],
};

/**
 * The targets of a layer in rows, from the bottom up: a course of units, its beds, its heads, a row of ties. Where the view shows
 * nothing of that layer, what it does show: there is always something to point at.
 */
export function targetRows(
  wall: Wall,
  view: View,
  drawing: Drawing,
  layer: Layer,
  system: LengthSystem,
): readonly TargetRow[] {
  for (const each of [layer, 'fixings', 'units'] as const) {
    const rows = rowsOfLayer(wall, view, drawing, each, system);
    if (rows.length > 0) return rows;
  }
  return [];
}

function rowsOfLayer(
  wall: Wall,
  view: View,
  drawing: Drawing,
  layer: Layer,
  system: LengthSystem,
): readonly TargetRow[] {
  const names = partNames(wall, view, system);
  const parts = partsOf(wall);
  const rows = new Map<string, Target[]>();
  for (const { part: id, x, y, width, height } of drawing.spots) {
    const part = parts.get(id);
    if (part === undefined || !KINDS[layer].includes(part.kind)) continue;
    const key = rowKey(part);
    const target: Target = { part: id, name: names.get(id) ?? id, box: { x, y, width, height } };
    rows.set(key, [...(rows.get(key) ?? []), target]);
  }
  return [...rows]
    .map(([key, targets]) => ({ key, targets: targets.sort((a, b) => a.box.x - b.box.x) }))
    .sort((a, b) => middleOf(a) - middleOf(b));
}

function rowKey({ kind, course, y }: Part): string {
  if (kind === 'support') return `support at ${Math.round(y / 100)}`;
  return course === null ? kind : `${kind} ${course}`;
}

/** Mean height of a row's middles: what decides which row is above which. */
function middleOf({ targets }: TargetRow): number {
  return targets.reduce((sum, { box }) => sum + box.y + box.height / 2, 0) / targets.length;
}

/** How far a point lies outside a box; 0 inside it. */
export function distanceTo(box: Box, x: number, y: number): number {
  const dx = Math.max(box.x - x, x - box.x - box.width, 0);
  const dy = Math.max(box.y - y, y - box.y - box.height, 0);
  return Math.sqrt(dx * dx + dy * dy);
}

/** The target under a point or nearest to it within `slack` (end included); of two equally near ones the smaller. */
export function targetAt(rows: readonly TargetRow[], x: number, y: number, slack: number): Target | null {
  let best: Target | null = null;
  let bestAway = slack;
  let bestSize = Number.POSITIVE_INFINITY;
  for (const { targets } of rows) {
    for (const target of targets) {
      const away = distanceTo(target.box, x, y);
      if (away > bestAway) continue;
      const size = target.box.width * target.box.height;
      if (away < bestAway || size < bestSize) {
        best = target;
        bestAway = away;
        bestSize = size;
      }
    }
  }
  return best;
}
