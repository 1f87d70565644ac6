import type { RuleSetId } from '../../lib/limits/limit';
import type { Unit, Wall } from '../../lib/wall/model';
import { numberOf } from './bounds';
import { isJoint, overlap, rightOf } from './geometry';
import { found, isOver, isUnder, type NaiveFinding } from './naive-finding';

interface Stretch {
  readonly row: number;
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
}

interface BareBack {
  readonly contact: number;
  readonly largest: number;
  readonly closed: boolean;
}

/**
 * A stretch as it lies on a back whose ends slope: its corners, then cut off at each slope in turn. Its area by the corners (the surveyor's formula).
 */
function areaOf(unit: Unit, { from, to, low, high }: Stretch): number {
  const { left = 0, right = 0 } = unit.cut ?? {};
  let corners: [number, number][] = [
    [from, low],
    [to, low],
    [to, high],
    [from, high],
  ];
  const inside = [
    ([x, y]: [number, number]) => x - (left * y) / unit.height,
    ([x, y]: [number, number]) => unit.length - (right * y) / unit.height - x,
  ];
  for (const depth of inside) {
    const kept: [number, number][] = [];
    corners.forEach((corner, at) => {
      const before = corners.at(at - 1) ?? corner;
      const [a, b] = [depth(before), depth(corner)];
      if ((a < 0 && b > 0) || (a > 0 && b < 0)) {
        const share = a / (a - b);
        kept.push([before[0] + (corner[0] - before[0]) * share, before[1] + (corner[1] - before[1]) * share]);
      }
      if (b >= 0) kept.push(corner);
    });
    corners = kept;
  }
  let twice = 0;
  corners.forEach(([x, y], at) => {
    const [nextX, nextY] = corners[(at + 1) % corners.length] ?? [x, y];
    twice += x * nextY - nextX * y;
  });
  return twice / 2;
}

/** Scan lines: the back is cut at every lower and upper edge of a pat, and each strip is swept from left to right. */
function bareStretches(unit: Unit): Stretch[] {
  const pats = (unit.back ?? []).map((pat) => ({
    left: Math.max(0, pat.x),
    right: Math.min(unit.length, pat.x + pat.width),
    low: Math.max(0, pat.y),
    high: Math.min(unit.height, pat.y + pat.height),
  }));
  const cuts = [0, unit.height];
  for (const pat of pats) {
    for (const y of [pat.low, pat.high]) if (y > 0 && y < unit.height && !cuts.includes(y)) cuts.push(y);
  }
  cuts.sort((a, b) => a - b);
  const bare: Stretch[] = [];
  cuts.forEach((high, row) => {
    const low = cuts[row - 1];
    if (low === undefined) return;
    const here = pats
      .filter((pat) => pat.right > pat.left && pat.low <= low && pat.high >= high)
      .sort((a, b) => a.left - b.left);
    let reached = 0;
    for (const pat of here) {
      if (pat.left > reached) bare.push({ row, from: reached, to: pat.left, low, high });
      reached = Math.max(reached, pat.right);
    }
    if (reached < unit.length) bare.push({ row, from: reached, to: unit.length, low, high });
  });
  return bare;
}

/** Flood fill over the stretches; the first met of equal areas counts as the largest. */
export function bareBackOf(unit: Unit): BareBack {
  const bare = bareStretches(unit);
  const flooded = new Set<Stretch>();
  let total = 0;
  let largest = 0;
  let closed = false;
  for (const start of bare) {
    if (flooded.has(start) || areaOf(unit, start) <= 0) continue;
    flooded.add(start);
    const waiting = [start];
    let area = 0;
    let atEdge = false;
    for (let here = waiting.pop(); here !== undefined; here = waiting.pop()) {
      const on = areaOf(unit, here);
      area += on;
      if (on < (here.to - here.from) * (here.high - here.low)) atEdge = true;
      if (here.from === 0 || here.to === unit.length || here.low === 0 || here.high === unit.height) {
        atEdge = true;
      }
      for (const next of bare) {
        if (flooded.has(next) || Math.abs(next.row - here.row) !== 1) continue;
        if (!overlap(here.from, here.to, next.from, next.to) || areaOf(unit, next) <= 0) continue;
        flooded.add(next);
        waiting.push(next);
      }
    }
    total += area;
    if (area > largest) {
      largest = area;
      closed = !atEdge;
    }
  }
  const whole = areaOf(unit, { row: 0, from: 0, to: unit.length, low: 0, high: unit.height });
  return { contact: (100 * (whole - total)) / whole, largest, closed };
}

interface FailingBack {
  readonly unit: Unit;
  readonly check: 'missing-back-mortar' | 'ring-buttered-back';
  readonly by: 'contact' | 'void';
  readonly measured: number;
  readonly limit: number;
}

function failingBack(unit: Unit, rules: RuleSetId): FailingBack | undefined {
  const { contact, largest, closed } = bareBackOf(unit);
  const check = closed ? 'ring-buttered-back' : 'missing-back-mortar';
  const least = numberOf(rules, 'back-contact', { depth: unit.depth });
  const most = numberOf(rules, 'back-void', { depth: unit.depth });
  if (least !== undefined && isUnder(contact, least)) {
    return { unit, check, by: 'contact', measured: contact, limit: least };
  }
  if (most !== undefined && isOver(largest, most)) {
    return { unit, check, by: 'void', measured: largest, limit: most };
  }
  return undefined;
}

function touch(wall: Wall, a: Unit, b: Unit): boolean {
  if (a.panel !== b.panel) return false;
  if (Math.abs(a.course - b.course) === 1) return overlap(a.x, rightOf(a), b.x, rightOf(b));
  if (a.course !== b.course || Math.abs(a.position - b.position) !== 1) return false;
  return a.x < b.x ? isJoint(wall, a, b) : isJoint(wall, b, a);
}

function isWorse(one: FailingBack, other: FailingBack): boolean {
  if (one.by !== other.by) return one.by === 'contact';
  return one.by === 'contact' ? one.measured < other.measured : one.measured > other.measured;
}

/** Backs of adhered units: touching units that fail under the same name are one finding. */
export function measureBacks(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  if (wall.masonry !== 'adhered') return [];
  let left: FailingBack[] = [];
  for (const unit of wall.units) {
    const failing = unit.back === undefined ? undefined : failingBack(unit, rules);
    if (failing !== undefined) left.push(failing);
  }
  const findings: NaiveFinding[] = [];
  for (let start = left[0]; start !== undefined; start = left[0]) {
    const group = [start];
    left = left.slice(1);
    for (let at = 0; at < group.length; at += 1) {
      const here = group[at];
      if (here === undefined) break;
      const joined = left.filter((one) => one.check === here.check && touch(wall, one.unit, here.unit));
      group.push(...joined);
      left = left.filter((one) => !joined.includes(one));
    }
    let worst = start;
    for (const one of group) if (isWorse(one, worst)) worst = one;
    findings.push(
      found(
        worst.check,
        group.map(({ unit }) => unit.id),
        worst.measured,
        worst.limit,
      ),
    );
  }
  return findings;
}
