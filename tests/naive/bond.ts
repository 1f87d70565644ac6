import type { RuleSetId } from '../../lib/limits/limit';
import type { Unit, Wall } from '../../lib/wall/model';
import { numberOf } from './bounds';
import { courseOf, rightOf, runsOf, standsThrough } from './geometry';
import { found, isUnder, type NaiveFinding } from './naive-finding';

const ALIKE = 3;
/** By the bond; or as long and short quoins take turns, three courses each. */
const PARTNERS = [-6, -3, -2, 2, 3, 6];

export function measureBond(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const findings: NaiveFinding[] = [];
  for (const unit of wall.units) {
    if (unit.kind === 'soldier') continue;
    const least = numberOf(rules, 'smallest-piece', { depth: unit.depth });
    const long = halfwayUp(unit);
    if (least === undefined || !isUnder(long, least) || isCloser(wall, unit)) continue;
    findings.push(found('sliver-piece', [unit.id], long, least));
  }
  return findings;
}

/** Length between the two ends at half the height. */
function halfwayUp(unit: Unit): number {
  const from = unit.x + (unit.cut?.left ?? 0) / 2;
  return rightOf(unit) - (unit.cut?.right ?? 0) / 2 - from;
}

/** A piece at an end of its run that another of its length answers, at the same end two or three courses away. */
function isCloser(wall: Wall, unit: Unit): boolean {
  const run = runsOf(wall, unit.panel, unit.course).find((one) => one.some(({ id }) => id === unit.id)) ?? [];
  const at = run.findIndex(({ id }) => id === unit.id);
  const isFirst = isRunEnd(run[at - 1]);
  const isLast = isRunEnd(run[at + 1]);
  for (const step of PARTNERS) {
    for (const other of courseOf(wall, unit.panel, unit.course + step)) {
      if (Math.abs(other.length - unit.length) > ALIKE) continue;
      if (isFirst && Math.abs(other.x - unit.x) <= ALIKE) return true;
      if (isLast && Math.abs(rightOf(other) - rightOf(unit)) <= ALIKE) return true;
    }
  }
  return false;
}

/** The bond runs up to nothing, or to a soldier or a quoin. */
function isRunEnd(beside: Unit | undefined): boolean {
  return beside === undefined || standsThrough(beside) > 1;
}
