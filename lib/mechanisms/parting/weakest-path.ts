import { FRICTION, SHEAR_BOND, TENSION_BOND } from '../../failing/margins/strengths';
import type { Mm } from '../../units';
import type { PanelSurvey, Placed } from '../../wall/survey';
import type { Field, Gone } from './field';
import { headsOf, type Rows, rowsOf, unitIn } from './rows';

/** Where a crack passes through a course: at x, through a head joint or through a unit; null where it ran round it. */
export interface Pass {
  readonly x: Mm;
  readonly through: boolean;
}

export interface Parting {
  /** By row; null below the first course that is parted and above the last. */
  readonly passes: readonly (Pass | null)[];
}

/** What the two sides do, and how strong the units are against the mortar. */
export interface Tear {
  readonly left: Field;
  readonly right: Field;
  /** Tensile strength of a unit, MPa. A parameter of the drawing, ours: hard mortar sends a crack through the units. */
  readonly unitStrength: number;
  /** Share of the published bond that the mortar has. */
  readonly bond: number;
  /** How far to either side of its foot it may run, mm; without it as far as the wall. */
  readonly reach?: Mm;
}

/** A joint gives this much before it bears, mm. */
const TAKEN_UP: Mm = 0.5;
/** Places nearer than this are one, mm; and a cut keeps this far from the ends of its unit. */
const SAME: Mm = 25;
const FROM_END: Mm = 30;
/** N/mm³ of brickwork. */
const UNIT_WEIGHT = 19e-6;

interface Node {
  readonly x: Mm;
  cost: number;
  /** Index on the level below that it was reached from; or on this level, by the bed. */
  below: number | null;
  beside: number | null;
  through: boolean;
}

/**
 * The way from the foot of the wall to its head on which least work is done in tearing, by bed and head joints or through units. Work of a
 * joint: its area by its strength by how far it is torn; a bed that slides shut rubs as well; one that would have to close cannot be part of it.
 * Null where there is no way up from there.
 */
export function weakestPath(survey: PanelSurvey, joint: Mm, startX: Mm, tear: Tear): Parting | null {
  const rows = rowsOf(survey);
  const top = (rows[rows.length - 1]?.[0]?.unit.y ?? 0) + (rows[rows.length - 1]?.[0]?.unit.height ?? 0);
  const levels = levelsOf(rows, survey, joint).map((nodes) =>
    nodes.filter(({ x }) => Math.abs(x - startX) <= (tear.reach ?? Number.POSITIVE_INFINITY)),
  );
  const start = nearest(levels[0] ?? [], startX);
  if (start === null) return null;
  start.cost = 0;
  for (const [level, nodes] of levels.entries()) {
    if (level > 0) climb(levels[level - 1] ?? [], nodes, rows[level - 1] ?? [], joint, tear);
    if (level > 0) spread(nodes, rows[level - 1], rows[level], joint, tear, top);
  }
  const last = levels[levels.length - 1] ?? [];
  const end = last.reduce((best, node) => (node.cost < best.cost ? node : best), last[0] as Node);
  return Number.isFinite(end.cost) ? { passes: walkBack(levels, end) } : null;
}

/** Places on the level over each row, from the foot (level 0) to the head: wherever a head joint of a course near it meets it. */
function levelsOf(rows: Rows, survey: PanelSurvey, joint: Mm): readonly (readonly Node[])[] {
  const heads = rows.map((row) => headsOf(row, joint * 8));
  const edges = survey.openings.flatMap(({ x, width }) => [x + SAME, x + width - SAME]);
  return Array.from({ length: rows.length + 1 }, (_, level) => {
    const wished = [...[-2, -1, 0, 1].flatMap((near) => heads[level + near] ?? []), ...edges].sort(
      (a, b) => a - b,
    );
    const nodes: Node[] = [];
    for (const x of wished) {
      if (x - (nodes[nodes.length - 1]?.x ?? Number.NEGATIVE_INFINITY) < SAME) continue;
      nodes.push({ x, cost: Number.POSITIVE_INFINITY, below: null, beside: null, through: false });
    }
    return nodes;
  });
}

function nearest(nodes: readonly Node[], x: Mm): Node | null {
  return nodes.reduce<Node | null>(
    (best, node) => (best === null || Math.abs(node.x - x) < Math.abs(best.x - x) ? node : best),
    null,
  );
}

/** Straight up through one course: by a head joint, through a unit, or through an opening for nothing. */
function climb(
  from: readonly Node[],
  to: readonly Node[],
  row: readonly Placed[],
  joint: Mm,
  tear: Tear,
): void {
  for (const node of to) {
    const foot = nearest(from, node.x);
    if (foot === null || Math.abs(foot.x - node.x) > SAME || !Number.isFinite(foot.cost)) continue;
    const placed = unitIn(row, node.x, joint);
    let cost = foot.cost;
    let through = false;
    if (placed !== null) {
      const { unit } = placed;
      const gone = apart(tear, node.x, unit.y + unit.height / 2);
      if (gone.u > TAKEN_UP) continue;
      const isHead = node.x > unit.x + unit.length - SAME || node.x < unit.x + SAME;
      if (!isHead && (node.x < unit.x + FROM_END || node.x > unit.x + unit.length - FROM_END)) continue;
      if (!isHead && unit.height > unit.length) continue;
      through = !isHead;
      const strength = isHead ? TENSION_BOND * tear.bond : tear.unitStrength;
      cost += unit.height * unit.depth * strength * long(gone);
    }
    if (cost < node.cost) {
      node.cost = cost;
      node.below = from.indexOf(foot);
      node.through = through;
    }
  }
}

/** Along the bed on a level, either way from each place. */
function spread(
  nodes: readonly Node[],
  under: readonly Placed[] | undefined,
  over: readonly Placed[] | undefined,
  joint: Mm,
  tear: Tear,
  top: Mm,
): void {
  const pass = (from: number, to: number) => {
    const a = nodes[from];
    const b = nodes[to];
    if (a === undefined || b === undefined || !Number.isFinite(a.cost)) return;
    const x = (a.x + b.x) / 2;
    const lower = unitIn(under, x, joint);
    const upper = unitIn(over, x, joint);
    let cost = a.cost;
    if (lower !== null && upper !== null) {
      if (lower === upper) return;
      const gone = apart(tear, x, upper.unit.y);
      // Going right leaves the left part on top of the right one; going left the other way round.
      const rise = to > from ? gone.v : -gone.v;
      if (rise < -TAKEN_UP) return;
      const slides = Math.abs(gone.u);
      const opens = Math.max(0, rise);
      const pressed = UNIT_WEIGHT * (top - upper.unit.y);
      const work =
        opens >= FRICTION * slides
          ? TENSION_BOND * tear.bond * long(gone)
          : (SHEAR_BOND * tear.bond + FRICTION * pressed) * slides + TENSION_BOND * tear.bond * opens;
      cost += Math.abs(b.x - a.x) * Math.min(lower.unit.depth, upper.unit.depth) * work;
    }
    if (cost < b.cost) {
      b.cost = cost;
      b.beside = from;
      b.below = null;
    }
  };
  for (let at = 0; at + 1 < nodes.length; at++) pass(at, at + 1);
  for (let at = nodes.length - 1; at > 0; at--) pass(at, at - 1);
}

/** How far the left side has gone from the right one. */
function apart({ left, right }: Tear, x: Mm, y: Mm): Gone {
  const one = left.at(x, y);
  const other = right.at(x, y);
  return { u: one.u - other.u, v: one.v - other.v };
}

function long({ u, v }: Gone): Mm {
  return Math.sqrt(u * u + v * v);
}

function walkBack(levels: readonly (readonly Node[])[], end: Node): readonly (Pass | null)[] {
  const passes: (Pass | null)[] = levels.slice(1).map(() => null);
  let node: Node | undefined = end;
  for (let level = levels.length - 1; level > 0 && node !== undefined; ) {
    if (node.beside !== null) {
      node = levels[level]?.[node.beside];
      continue;
    }
    passes[level - 1] = { x: node.x, through: node.through };
    node = node.below === null ? undefined : levels[level - 1]?.[node.below];
    level -= 1;
  }
  return passes;
}
