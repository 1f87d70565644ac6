import type { RuleSetId } from '../../lib/limits/limit';
import type { Panel, Unit, Wall } from '../../lib/wall/model';
import { departureWithin, numberOf, ruleOf, slopeOver } from './bounds';
import { across, courseOf, headsOfCourse, rightOf, unitsOf, wantedSet } from './geometry';
import { found, isOver, type NaiveFinding } from './naive-finding';
import { faces } from './regions';

const LEAST_UNITS = 24;
const PAD_REACH = 300;
const PAD_LEAST = 5;
const LEAST_NEIGHBOURS = 3;

/** The face of each panel: bulge, plumb, single units, corners. */
export function measureFaces(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  return [
    ...wall.panels.flatMap((panel) => planeOf(wall, rules, panel)),
    ...singleUnits(wall, rules),
    ...corners(wall, rules),
  ];
}

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

function spotOf(wall: Wall, unit: Unit): Spot {
  return {
    x: unit.x + unit.length / 2,
    y: unit.y - unit.fall / 2 + unit.height / 2,
    z: unit.set - wantedSet(wall, unit),
  };
}

/** Slopes across and up, from sums about the middle (so that only two unknowns are left for Cramer's rule). */
function slopesOf(spots: readonly Spot[], middle: Spot): { b: number; c: number } | undefined {
  let xx = 0;
  let xy = 0;
  let yy = 0;
  let xz = 0;
  let yz = 0;
  for (const spot of spots) {
    const dx = spot.x - middle.x;
    const dy = spot.y - middle.y;
    const dz = spot.z - middle.z;
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
    xz += dx * dz;
    yz += dy * dz;
  }
  const whole = xx * yy - xy * xy;
  if (whole === 0) return undefined;
  return { b: (xz * yy - yz * xy) / whole, c: (xx * yz - xy * xz) / whole };
}

function mean(values: readonly number[]): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum / values.length;
}

function planeOf(wall: Wall, rules: RuleSetId, panel: Panel): NaiveFinding[] {
  const units = unitsOf(wall, panel.id);
  if (units.length < LEAST_UNITS) return [];
  const spots = units.map((unit) => spotOf(wall, unit));
  const middle = {
    x: mean(spots.map(({ x }) => x)),
    y: mean(spots.map(({ y }) => y)),
    z: mean(spots.map(({ z }) => z)),
  };
  const slopes = slopesOf(spots, middle);
  if (slopes === undefined) return [];
  const off = ({ x, y, z }: Spot) => z - middle.z - slopes.b * (x - middle.x) - slopes.c * (y - middle.y);
  const depths = spots.map((here) => {
    const pad = spots.filter(
      ({ x, y }) => Math.abs(x - here.x) <= PAD_REACH && Math.abs(y - here.y) <= PAD_REACH,
    );
    return pad.length >= PAD_LEAST ? Math.abs(mean(pad.map(off))) : 0;
  });
  const bulge = Math.max(...depths);
  const bellied = units.filter((_, at) => (depths[at] ?? 0) > bulge / 2);
  const findings: NaiveFinding[] = [];
  const faceBound = ruleOf(rules, 'face-line');
  const run = Math.max(...units.map(rightOf)) - Math.min(...units.map(({ x }) => x));
  const most = faceBound && departureWithin(faceBound, run);
  if (most !== undefined && isOver(bulge, most)) {
    findings.push(found('bulge-or-hollow', [panel.id], bulge, most, faces(bellied)));
  }
  const plumb = ruleOf(rules, 'plumb');
  const verdict = plumb && slopeOver(plumb, Math.abs(slopes.c), heightOf(wall, panel));
  if (verdict && isOver(verdict.measured, verdict.limit)) {
    findings.push(found('out-of-plumb', [panel.id], verdict.measured, verdict.limit));
  }
  return findings;
}

function heightOf(wall: Wall, panel: Panel): number {
  const tops = courseOf(wall, panel.id, panel.courses).map(({ y, fall, height }) => y - fall / 2 + height);
  const undersides = courseOf(wall, panel.id, 1).map(({ y, fall }) => y - fall / 2);
  return Math.max(...tops) - Math.min(...undersides);
}

function singleUnits(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const twist = numberOf(rules, 'unit-twist');
  const set = numberOf(rules, 'unit-set');
  const findings: NaiveFinding[] = [];
  for (const unit of wall.units) {
    if (twist !== undefined && isOver(Math.abs(unit.twist), twist)) {
      findings.push(found('twisted-unit', [unit.id], Math.abs(unit.twist), twist));
    }
    const beside: Unit[] = [];
    for (const { left, right } of headsOfCourse(wall, unit.panel, unit.course)) {
      if (left.id === unit.id) beside.push(right);
      if (right.id === unit.id) beside.push(left);
    }
    const around = [...beside, ...across(wall, unit, -1), ...across(wall, unit, 1)];
    if (set === undefined || around.length < LEAST_NEIGHBOURS) continue;
    const standing = (one: Unit) => one.set - wantedSet(wall, one);
    const off = Math.abs(standing(unit) - median(around.map(standing)));
    if (isOver(off, set)) findings.push(found('proud-unit', [unit.id], off, set));
  }
  return findings;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  const low = sorted[Math.ceil(half) - 1] ?? 0;
  const high = sorted[Math.floor(half)] ?? 0;
  return (low + high) / 2;
}

function corners(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const most = numberOf(rules, 'corner-square');
  if (most === undefined) return [];
  const findings: NaiveFinding[] = [];
  wall.panels.forEach((right, at) => {
    const left = wall.panels[at - 1];
    if (left?.rightEnd !== 'corner' || right.leftEnd !== 'corner') return;
    const u = alongOf(left);
    const v = alongOf(right);
    const off = (1000 * Math.abs(u.x * v.x + u.z * v.z)) / (u.length * v.length);
    if (isOver(off, most)) {
      findings.push(found('corner-not-square', [`${left.id}-${right.id}-corner`], off, most));
    }
  });
  return findings;
}

function alongOf({ plan }: Panel): { x: number; z: number; length: number } {
  const x = plan.rightX - plan.leftX;
  const z = plan.rightZ - plan.leftZ;
  return { x, z, length: Math.sqrt(x * x + z * z) };
}
