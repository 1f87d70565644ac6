import type { Region } from '../../lib/inspect/finding';
import type { Bound, RuleSetId } from '../../lib/limits/limit';
import type { Panel, Wall } from '../../lib/wall/model';
import { numberOf, ruleOf, type Verdict } from './bounds';
import { type Edge, edgesOf } from './edges';
import { overlap } from './geometry';
import { found, isOver, isUnder, type NaiveFinding } from './naive-finding';
import { round } from './regions';

export function measureTies(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const findings = singleTies(wall, rules);
  if (wall.masonry !== 'anchored') return findings;
  for (const panel of wall.panels) {
    findings.push(...spacing(wall, rules, panel));
    for (const edge of edgesOf(wall, rules, panel)) findings.push(...atEdge(wall, rules, panel, edge));
  }
  return findings;
}

function singleTies(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const embedment = numberOf(rules, 'tie-embedment');
  const cover = numberOf(rules, 'tie-cover');
  const thickness = numberOf(rules, 'tie-thickness');
  const width = numberOf(rules, 'tie-width');
  const findings: NaiveFinding[] = [];
  for (const tie of wall.ties) {
    if (embedment !== undefined && isUnder(tie.embedment, embedment)) {
      findings.push(found('shallow-tie', [tie.id], tie.embedment, embedment));
    }
    const left = wall.family.depth - tie.embedment;
    if (cover !== undefined && isUnder(left, cover)) {
      findings.push(found('tie-near-face', [tie.id], left, cover));
    }
    if (thickness !== undefined && isUnder(tie.thickness, thickness)) {
      findings.push(found('thin-tie', [tie.id], tie.thickness, thickness));
    } else if (width !== undefined && isUnder(tie.width, width)) {
      findings.push(found('thin-tie', [tie.id], tie.width, width));
    }
  }
  return findings;
}

interface Column {
  readonly x: number;
  readonly ys: readonly number[];
}

/** Ties by the stud they are nearest to; half way between two they go to the left one. */
function columnsOf(wall: Wall, panel: Panel): Column[] {
  const studs = [...panel.studs].sort((a, b) => a - b);
  const columns: Column[] = [];
  for (const stud of studs) {
    const ys: number[] = [];
    for (const tie of wall.ties) {
      if (tie.panel !== panel.id) continue;
      let nearest = stud;
      for (const other of studs) {
        const nearer = Math.abs(other - tie.x) - Math.abs(nearest - tie.x);
        if (nearer < 0 || (nearer === 0 && other < nearest)) nearest = other;
      }
      if (nearest === stud) ys.push(tie.y);
    }
    if (ys.length > 0) columns.push({ x: stud, ys: ys.sort((a, b) => a - b) });
  }
  return columns;
}

function spacing(wall: Wall, rules: RuleSetId, panel: Panel): NaiveFinding[] {
  const bound = ruleOf(rules, 'tie-spacing');
  if (bound === undefined) return [];
  const columns = columnsOf(wall, panel);
  let worst: Verdict | undefined;
  let boxes: Region[] = [];
  columns.forEach((column, at) => {
    column.ys.forEach((to, index) => {
      const from = column.ys[index - 1];
      if (from === undefined || isLeftOut(wall, rules, panel, column.x, from, to)) return;
      const toLeft = sideOf(wall, panel, columns[at - 1], column, from, to);
      const toRight = sideOf(wall, panel, column, columns[at + 1], from, to);
      const verdict = spacingVerdict(bound, to - from, Math.max(toLeft, toRight));
      if (verdict === undefined) return;
      const ratio = verdict.measured / verdict.limit;
      const most = worst === undefined ? 0 : worst.measured / worst.limit;
      if (ratio < most) return;
      if (ratio > most) {
        worst = verdict;
        boxes = [];
      }
      const width = toLeft + toRight;
      boxes.push({ panel: panel.id, x: column.x - toLeft, y: from, width, height: to - from });
    });
  });
  const { measured, limit } = worst ?? { measured: 0, limit: 0 };
  return worst === undefined ? [] : [found('ties-too-far-apart', [panel.id], measured, limit, round(boxes))];
}

function isLeftOut(wall: Wall, rules: RuleSetId, panel: Panel, x: number, from: number, to: number): boolean {
  const inOpening = wall.openings.some(
    (one) =>
      one.panel === panel.id &&
      overlap(from, to, one.y, one.y + one.height) &&
      one.x < x &&
      x < one.x + one.width,
  );
  const reach = numberOf(rules, 'tie-edge-distance');
  return (
    inOpening ||
    edgesOf(wall, rules, panel).some((edge) => {
      const away = edge.away(x);
      const near = reach !== undefined && away >= 0 && !isOver(away, reach);
      // Only an edge that is itself a finding keeps its gaps to itself.
      return near && overlap(from, to, edge.from, edge.to) && atEdge(wall, rules, panel, edge).length > 0;
    })
  );
}

/** Distance between two neighbouring columns, or 0 when there is no such side or an opening stands right between. */
function sideOf(
  wall: Wall,
  panel: Panel,
  left: Column | undefined,
  right: Column | undefined,
  from: number,
  to: number,
): number {
  if (left === undefined || right === undefined) return 0;
  const parted = wall.openings.some(
    (one) =>
      one.panel === panel.id &&
      overlap(left.x, right.x, one.x, one.x + one.width) &&
      one.y <= from &&
      to <= one.y + one.height,
  );
  return parted ? 0 : right.x - left.x;
}

/** Undefined when the spacing passes; else the spacing that is too great and the most it could be. */
export function spacingVerdict(bound: Bound, down: number, across: number): Verdict | undefined {
  if (bound.form === 'tie-rows') {
    const wide = Math.max(...bound.rows.map(({ horizontal }) => horizontal));
    if (isOver(across, wide)) return { measured: across, limit: wide };
    let most = 0;
    for (const row of bound.rows) {
      if (!isOver(across, row.horizontal) && row.vertical > most) most = row.vertical;
    }
    return isOver(down, most) ? { measured: down, limit: most } : undefined;
  }
  if (bound.form === 'tie-area') {
    if (isOver(across, bound.horizontal)) return { measured: across, limit: bound.horizontal };
    const most = across > 0 ? Math.min(bound.vertical, bound.area / across) : bound.vertical;
    return isOver(down, most) ? { measured: down, limit: most } : undefined;
  }
  return undefined;
}

function atEdge(wall: Wall, rules: RuleSetId, panel: Panel, edge: Edge): NaiveFinding[] {
  const reach = numberOf(rules, 'tie-edge-distance');
  const apart = numberOf(rules, 'tie-edge-spacing');
  if (reach === undefined) return [];
  let nearest = Infinity;
  const serving: { readonly id: string; readonly y: number }[] = [];
  for (const tie of wall.ties) {
    const away = edge.away(tie.x);
    if (tie.panel !== panel.id || away < 0 || tie.y < edge.from || tie.y > edge.to) continue;
    nearest = Math.min(nearest, away);
    if (!isOver(away, reach)) serving.push(tie);
  }
  const x = edge.isLeft ? edge.x : edge.x - reach;
  const strip = { panel: panel.id, x, y: edge.from, width: reach, height: edge.to - edge.from };
  if (serving.length === 0) {
    const measured = nearest === Infinity ? panel.length : nearest;
    return isOver(measured, reach) ? [found('no-tie-at-edge', [edge.part], measured, reach, strip)] : [];
  }
  if (apart === undefined) return [];
  const stops = [edge.from, ...serving.map(({ y }) => y).sort((a, b) => a - b), edge.to];
  let greatest = 0;
  stops.forEach((y, index) => {
    greatest = Math.max(greatest, y - (stops[index - 1] ?? y));
  });
  if (!isOver(greatest, apart)) return [];
  const parts = [edge.part, ...serving.map(({ id }) => id)];
  return [found('no-tie-at-edge', parts, greatest, apart, strip)];
}
