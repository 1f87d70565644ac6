import type { AngleRow, Bound, RuleSetId } from '../../lib/limits/limit';
import type { Angle, Opening, Support, Wall } from '../../lib/wall/model';
import { numberOf, ruleOf, type Verdict } from './bounds';
import { courseOf, overlap, restsOn, rightOf, unitsOf } from './geometry';
import { found, isOver, isUnder, type NaiveFinding } from './naive-finding';

/** What the masonry stands on, and what carries it over openings. */
export function measureSupports(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  return [
    ...overhangs(wall, rules),
    ...bearing(wall, rules),
    ...lintelEnds(wall, rules),
    ...openingsWithout(wall, rules),
    ...angles(wall, rules),
  ];
}

function overhangs(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const depth = wall.family.depth;
  const bounds = [
    numberOf(rules, 'overhang-share', { depth }),
    numberOf(rules, 'overhang-fixed', { depth }),
  ].filter((bound) => bound !== undefined);
  if (wall.masonry !== 'anchored' || bounds.length === 0) return [];
  const most = Math.min(...bounds);
  const findings: NaiveFinding[] = [];
  for (const support of wall.supports) {
    const resting = wall.units.filter((unit) => restsOn(wall, unit, support));
    if (support.material === 'wood' || resting.length === 0) continue;
    const overhang = Math.max(...resting.map(({ set }) => set)) - support.front;
    if (!isOver(overhang, most)) continue;
    findings.push(found('overhang-too-far', [support.id, ...resting.map(({ id }) => id)], overhang, most));
  }
  return findings;
}

function bearing(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const least = numberOf(rules, 'supported-share');
  if (wall.masonry !== 'anchored' || least === undefined) return [];
  const findings: NaiveFinding[] = [];
  for (const panel of wall.panels) {
    const ledges = wall.supports.filter(({ panel: id, kind }) => id === panel.id && kind === 'ledge');
    const sound = ledges.filter(({ material }) => material !== 'wood');
    const row = courseOf(wall, panel.id, 1);
    const without: string[] = [];
    let whole = 0;
    let held = 0;
    for (const unit of row) {
      const here = coveredLength(unit.x, rightOf(unit), sound);
      whole += unit.length;
      held += here;
      if (isUnder(here, unit.length)) without.push(unit.id);
    }
    const share = (100 * held) / whole;
    if (row.length === 0 || !isUnder(share, least)) continue;
    findings.push(found('no-bearing-return', [...ledges.map(({ id }) => id), ...without], share, least));
  }
  return findings;
}

/** Length of a stretch with a support below it; where two overlap it counts once. */
function coveredLength(from: number, to: number, supports: readonly Support[]): number {
  let reached = from;
  let covered = 0;
  for (const { fromX, toX } of [...supports].sort((a, b) => a.fromX - b.fromX)) {
    const start = Math.max(reached, fromX);
    const end = Math.min(to, toX);
    if (end <= start) continue;
    covered += end - start;
    reached = end;
  }
  return covered;
}

/** Openings that a lintel lies over: its top at the head within half a gauge, some of the width covered. Wood is none. */
function openingsUnder(wall: Wall, support: Support): readonly Opening[] {
  if (support.kind !== 'lintel' || support.material === 'wood') return [];
  return wall.openings.filter((one) => {
    const rise = support.y - (one.y + one.height);
    const above = rise > -wall.gauge / 2 && rise < wall.gauge / 2;
    return (
      one.panel === support.panel && above && overlap(support.fromX, support.toX, one.x, one.x + one.width)
    );
  });
}

function lintelEnds(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const findings: NaiveFinding[] = [];
  for (const lintel of wall.supports) {
    for (const opening of openingsUnder(wall, lintel)) {
      const least = numberOf(rules, 'lintel-bearing', { span: opening.width, depth: wall.family.depth });
      const shorter = Math.min(opening.x - lintel.fromX, lintel.toX - (opening.x + opening.width));
      if (least !== undefined && isUnder(shorter, least)) {
        findings.push(found('short-lintel-bearing', [lintel.id, opening.id], shorter, least));
      }
    }
  }
  return findings;
}

function openingsWithout(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  if (wall.masonry !== 'anchored' || ruleOf(rules, 'lintel-present') === undefined) return [];
  const findings: NaiveFinding[] = [];
  for (const opening of wall.openings) {
    const above = unitsOf(wall, opening.panel).filter(
      (unit) =>
        unit.y >= opening.y + opening.height &&
        overlap(unit.x, rightOf(unit), opening.x, opening.x + opening.width),
    );
    const hasLintel = wall.supports.some((one) => openingsUnder(wall, one).includes(opening));
    if (above.length === 0 || hasLintel) continue;
    const lowest = Math.min(...above.map(({ course }) => course));
    const directly = above.filter(({ course }) => course === lowest).map(({ id }) => id);
    findings.push(found('no-lintel', [opening.id, ...directly], 0, 1));
  }
  return findings;
}

function angles(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const table = ruleOf(rules, 'angle-size');
  const findings: NaiveFinding[] = [];
  for (const lintel of wall.supports) {
    for (const opening of openingsUnder(wall, lintel)) {
      if (lintel.angle === undefined) continue;
      const weak = table
        ? fromTable(wall, table, lintel.angle, opening.width)
        : fromLeast(rules, lintel.angle, wall.family.depth);
      if (weak !== undefined) {
        findings.push(found('weak-angle', [lintel.id, opening.id], weak.measured, weak.limit));
      }
    }
  }
  return findings;
}

/** The name of the table's column: text of a number. */
function columnOf(wall: Wall, rows: readonly AngleRow[], by: string): string | undefined {
  if (by === 'storeys above') return String(wall.storeysAbove);
  let column: string | undefined;
  for (const row of rows) {
    for (const key of Object.keys(row.spans)) {
      const depth = Number(key);
      if (depth >= wall.family.depth && (column === undefined || depth < Number(column))) column = key;
    }
  }
  return column;
}

function fromTable(wall: Wall, table: Bound, angle: Angle, span: number): Verdict | undefined {
  if (table.form !== 'angle-table') return undefined;
  const { rows, caseBy } = table;
  const column = columnOf(wall, rows, caseBy);
  if (column === undefined) return { measured: span, limit: 0 };
  const serving = rows.filter((row) => (row.spans[column] ?? -1) >= span);
  for (const row of serving) if (shortfall(angle, row) === undefined) return undefined;
  const [first] = serving;
  if (first !== undefined) return shortfall(angle, first);
  const spans = rows.flatMap((row) => row.spans[column] ?? []);
  return { measured: span, limit: Math.max(0, ...spans) };
}

/** The measure furthest below what the row asks, by ratio; undefined when none is. */
function shortfall(angle: Angle, least: Angle): Verdict | undefined {
  return worstShort([
    { measured: angle.vertical, limit: least.vertical },
    { measured: angle.horizontal, limit: least.horizontal },
    { measured: angle.thickness, limit: least.thickness },
  ]);
}

function fromLeast(rules: RuleSetId, angle: Angle, depth: number): Verdict | undefined {
  const thickness = numberOf(rules, 'angle-thickness', { depth });
  const leg = numberOf(rules, 'angle-leg', { depth });
  return worstShort([
    ...(thickness === undefined ? [] : [{ measured: angle.thickness, limit: thickness }]),
    ...(leg === undefined ? [] : [{ measured: angle.horizontal, limit: leg }]),
  ]);
}

function worstShort(tried: readonly Verdict[]): Verdict | undefined {
  let worst: Verdict | undefined;
  for (const one of tried) {
    if (!isUnder(one.measured, one.limit)) continue;
    if (worst === undefined || one.measured / one.limit < worst.measured / worst.limit) worst = one;
  }
  return worst;
}
