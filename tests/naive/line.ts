import type { RuleSetId } from '../../lib/limits/limit';
import type { Panel, Wall } from '../../lib/wall/model';
import { numberOf, ruleOf, slopeOver, type Verdict } from './bounds';
import {
  courseName,
  courseOf,
  coursesOf,
  type Head,
  headsOfCourse,
  rightOf,
  standsThrough,
} from './geometry';
import { found, isOver, type NaiveFinding } from './naive-finding';
import { boxOfHead, round } from './regions';

const SHORTEST_RUN = 1000;
const LEAST_COURSES = 8;
const LEAST_HEADS = 4;
const REACH = 12;

/** Courses, gauge and perpends: what is judged over many units of one panel. */
export function measureLines(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  return wall.panels.flatMap((panel) => [
    ...courseBlocks(wall, rules, panel),
    ...gauge(wall, rules, panel),
    ...perpends(wall, rules, panel),
  ]);
}

function courseBlocks(wall: Wall, rules: RuleSetId, panel: Panel): NaiveFinding[] {
  const bound = ruleOf(rules, 'course-level');
  if (bound === undefined) return [];
  const beyond: { readonly course: number; readonly verdict: Verdict }[] = [];
  for (const course of coursesOf(wall, panel)) {
    const row = courseOf(wall, panel.id, course);
    const first = row[0];
    const last = row.at(-1);
    if (first === undefined || last === undefined) continue;
    const run = rightOf(last) - first.x;
    if (run < SHORTEST_RUN) continue;
    const drop = Math.abs(first.y - (last.y - last.fall));
    const verdict = slopeOver(bound, drop / run, run);
    if (verdict !== undefined && isOver(verdict.measured, verdict.limit)) beyond.push({ course, verdict });
  }
  const findings: NaiveFinding[] = [];
  for (let at = 0; at < beyond.length; ) {
    const block = [beyond[at]].filter((one) => one !== undefined);
    for (at += 1; at < beyond.length; at += 1) {
      const next = beyond[at];
      if (next === undefined || next.course !== (block.at(-1)?.course ?? 0) + 1) break;
      block.push(next);
    }
    const [lowest] = block;
    if (lowest === undefined) break;
    let worst = lowest.verdict;
    for (const { verdict } of block) {
      if (verdict.measured / verdict.limit > worst.measured / worst.limit) worst = verdict;
    }
    const parts = block.map(({ course }) => courseName(panel.id, course));
    findings.push(found('course-off-level', parts, worst.measured, worst.limit));
  }
  return findings;
}

function gauge(wall: Wall, rules: RuleSetId, panel: Panel): NaiveFinding[] {
  const most = numberOf(rules, 'gauge');
  const gaps = panel.courses - 1;
  const bottom = levelOf(wall, panel, 1);
  const top = levelOf(wall, panel, panel.courses);
  if (most === undefined || panel.courses < LEAST_COURSES) return [];
  if (bottom === undefined || top === undefined) return [];
  const drift = Math.abs(((top - bottom - gaps * wall.gauge) / gaps) * 4);
  return isOver(drift, most) ? [found('gauge-drift', [panel.id], drift, most)] : [];
}

function levelOf(wall: Wall, panel: Panel, course: number): number | undefined {
  const row = courseOf(wall, panel.id, course);
  if (row.length === 0) return undefined;
  let sum = 0;
  for (const unit of row) sum += unit.y - unit.fall / 2;
  return sum / row.length;
}

function centreOf(head: Head): number {
  return (rightOf(head.left) + head.right.x) / 2;
}

function perpends(wall: Wall, rules: RuleSetId, panel: Panel): NaiveFinding[] {
  const most = numberOf(rules, 'perpend-line');
  if (most === undefined) return [];
  const parts = new Set<string>();
  let worst: Head[] = [];
  let greatest = 0;
  const third = wall.bond === 'third' ? chainsOf(wall, panel, 3) : [];
  const chains = third.some(({ length }) => length >= LEAST_HEADS) ? third : chainsOf(wall, panel, 2);
  for (const chain of chains) {
    const xs = chain.map(centreOf);
    const drift = Math.max(...xs) - Math.min(...xs);
    if (chain.length < LEAST_HEADS || !isOver(drift, most)) continue;
    if (drift > greatest) worst = [];
    greatest = Math.max(greatest, drift);
    if (drift === greatest) worst.push(...chain);
    for (const head of chain) parts.add(head.id);
  }
  return parts.size === 0
    ? []
    : [found('perpend-drift', [...parts], greatest, most, round(worst.map(boxOfHead)))];
}

/** Heads in line every so many courses. */
function chainsOf(wall: Wall, panel: Panel, step: number): Head[][] {
  const continued = new Set<string>();
  const chains: Head[][] = [];
  for (const course of coursesOf(wall, panel)) {
    for (const start of lowHeads(wall, panel.id, course)) {
      // A head that goes on from one below is part of a chain already followed.
      if (continued.has(start.id)) continue;
      const chain = [start];
      let last = start;
      for (let above = course + step; ; above += step) {
        const next = nearestHead(lowHeads(wall, panel.id, above), centreOf(last));
        if (next === undefined) break;
        continued.add(next.id);
        chain.push(next);
        last = next;
      }
      chains.push(chain);
    }
  }
  return chains;
}

/** Heads between units of one course each: beside a soldier or a quoin there is no perpend. */
function lowHeads(wall: Wall, panel: string, course: number): Head[] {
  return headsOfCourse(wall, panel, course).filter(
    ({ left, right }) => standsThrough(left) === 1 && standsThrough(right) === 1,
  );
}

function nearestHead(heads: readonly Head[], x: number): Head | undefined {
  let nearest: Head | undefined;
  let away = Infinity;
  for (const head of heads) {
    const distance = Math.abs(centreOf(head) - x);
    if (distance <= REACH && distance < away) {
      nearest = head;
      away = distance;
    }
  }
  return nearest;
}
