import type { RuleSetId } from '../../lib/limits/limit';
import type { Panel, Unit, Wall } from '../../lib/wall/model';
import { numberOf } from './bounds';
import { bedUnder, courseOf, coursesOf, type Head, headsOfCourse, isJoint, rightOf } from './geometry';
import { found, isOver, isUnder, type NaiveFinding } from './naive-finding';

const bedName = (unit: Unit) => `${unit.id}-bed`;

export function measureJoints(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const findings: NaiveFinding[] = [];
  for (const panel of wall.panels) {
    const isByMean = numberOf(rules, 'bed-from-mean-of-eight') !== undefined;
    const courseBeds = isByMean ? courseBedsOf(wall, panel) : [];
    for (const course of coursesOf(wall, panel)) {
      const row = courseOf(wall, panel.id, course);
      findings.push(...tapers(wall, rules, row));
      findings.push(...bedRuns(wall, rules, row, meansOfEight(courseBeds, course)));
      for (const head of headsOfCourse(wall, panel.id, course)) findings.push(...headWidth(rules, head));
    }
  }
  return [...findings, ...openHeads(wall, rules), ...rakedPanels(wall, rules)];
}

function tapers(wall: Wall, rules: RuleSetId, row: readonly Unit[]): NaiveFinding[] {
  const most = numberOf(rules, 'bed-taper');
  if (most === undefined) return [];
  const findings: NaiveFinding[] = [];
  for (const unit of row) {
    if (unit.length < wall.family.length / 2) continue;
    const bed = bedUnder(wall, unit);
    if (bed === undefined) continue;
    const taper = Math.abs(bed.left - bed.right);
    if (isOver(taper, most)) findings.push(found('tapering-bed', [bedName(unit), unit.id], taper, most));
  }
  return findings;
}

interface OffBed {
  readonly check: 'thick-joint' | 'thin-joint';
  readonly measured: number;
  readonly limit: number;
}

function offBed(wall: Wall, rules: RuleSetId, unit: Unit, means: readonly number[]): OffBed | undefined {
  const bed = bedUnder(wall, unit);
  if (bed === undefined) return undefined;
  const fromMean = unit.course === 1 ? undefined : numberOf(rules, 'bed-from-mean-of-eight');
  if (fromMean !== undefined) {
    const thick = Math.max(...means.map((mean) => bed.mean - mean));
    const thin = Math.max(...means.map((mean) => mean - bed.mean));
    if (isOver(thick, fromMean)) return { check: 'thick-joint', measured: thick, limit: fromMean };
    if (isOver(thin, fromMean)) return { check: 'thin-joint', measured: thin, limit: fromMean };
    return undefined;
  }
  const most = numberOf(rules, unit.course === 1 ? 'first-bed-most' : 'bed-joint-most');
  const least = numberOf(rules, unit.course === 1 ? 'first-bed-least' : 'bed-joint-least');
  if (most !== undefined && isOver(bed.mean, most)) {
    return { check: 'thick-joint', measured: bed.mean, limit: most };
  }
  if (least !== undefined && isUnder(bed.mean, least)) {
    return { check: 'thin-joint', measured: bed.mean, limit: least };
  }
  return undefined;
}

interface CourseBed {
  readonly course: number;
  readonly mean: number;
}

/** Mean of the mean beds of each course from the second up; a course that has none is jumped. */
function courseBedsOf(wall: Wall, panel: Panel): CourseBed[] {
  const beds: CourseBed[] = [];
  for (const course of coursesOf(wall, panel)) {
    let sum = 0;
    let count = 0;
    for (const unit of course === 1 ? [] : courseOf(wall, panel.id, course)) {
      const bed = bedUnder(wall, unit);
      if (bed === undefined) continue;
      sum += bed.mean;
      count += 1;
    }
    if (count > 0) beds.push({ course, mean: sum / count });
  }
  return beds;
}

/** The mean of every eight course beds in a row (of all, when fewer) that include this course. */
function meansOfEight(beds: readonly CourseBed[], course: number): number[] {
  const size = Math.min(8, beds.length);
  const means: number[] = [];
  for (let from = 0; from + size <= beds.length; from += 1) {
    const eight = beds.slice(from, from + size);
    if (!eight.some((bed) => bed.course === course)) continue;
    means.push(eight.reduce((sum, { mean }) => sum + mean, 0) / size);
  }
  return means;
}

function bedRuns(
  wall: Wall,
  rules: RuleSetId,
  row: readonly Unit[],
  means: readonly number[],
): NaiveFinding[] {
  const runs: { worst: OffBed; units: Unit[] }[] = [];
  let open: { worst: OffBed; units: Unit[] } | undefined;
  for (const unit of row) {
    const off = offBed(wall, rules, unit, means);
    if (off === undefined) {
      open = undefined;
      continue;
    }
    const last = open?.units.at(-1);
    if (open && last && open.worst.check === off.check && isJoint(wall, last, unit)) {
      open.units.push(unit);
      if (isWorseBed(off, open.worst)) open.worst = off;
    } else {
      open = { worst: off, units: [unit] };
      runs.push(open);
    }
  }
  return runs.map(({ worst, units }) =>
    found(
      worst.check,
      units.flatMap((unit) => [bedName(unit), unit.id]),
      worst.measured,
      worst.limit,
    ),
  );
}

/** Measured as a thickness, a thin bed is worse when smaller; measured as a difference it is worse when greater. */
function isWorseBed(one: OffBed, other: OffBed): boolean {
  return Math.abs(one.measured - one.limit) > Math.abs(other.measured - other.limit);
}

function headWidth(rules: RuleSetId, head: Head): NaiveFinding[] {
  const parts = [head.id, head.left.id, head.right.id];
  const most = numberOf(rules, 'head-joint-most');
  const least = numberOf(rules, 'head-joint-least');
  if (most !== undefined && isOver(head.width, most)) return [found('thick-joint', parts, head.width, most)];
  if (least !== undefined && isUnder(head.width, least)) {
    return [found('thin-joint', parts, head.width, least)];
  }
  return [];
}

function openHeads(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const least = numberOf(rules, 'head-fill');
  if (least === undefined) return [];
  const findings: NaiveFinding[] = [];
  for (const panel of wall.panels) {
    for (const course of coursesOf(wall, panel)) {
      for (const head of headsOfCourse(wall, panel.id, course)) {
        for (const { joint, filled } of wall.heads) {
          if (joint !== head.id || !isUnder(filled, least) || (filled === 0 && isWeep(wall, head))) continue;
          findings.push(found('open-head', [head.id, head.left.id, head.right.id], filled, least));
        }
      }
    }
  }
  return findings;
}

/** The whole joint must lie over the flashing; ends belong. The rise is that of the left unit's underside at its left end. */
function isWeep(wall: Wall, { left, right }: Head): boolean {
  return wall.flashings.some((flashing) => {
    const rise = left.y - flashing.y;
    if (flashing.panel !== left.panel || rise < 0 || rise >= wall.gauge / 2) return false;
    return rightOf(left) >= flashing.fromX && right.x <= flashing.toX;
  });
}

function rakedPanels(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const most = numberOf(rules, 'rake-on-thin-veneer', { depth: wall.family.depth });
  if (most === undefined) return [];
  return wall.panels
    .filter((panel) => isOver(panel.recess, most))
    .map((panel) => found('raked-thin-veneer', [panel.id], panel.recess, most));
}
