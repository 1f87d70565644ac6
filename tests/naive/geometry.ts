import type { Panel, Support, Unit, Wall } from '../../lib/wall/model';

/** Units of a course from the left, found anew each time. */
export function courseOf(wall: Wall, panel: string, course: number): Unit[] {
  const row: Unit[] = [];
  for (const unit of wall.units) if (unit.panel === panel && unit.course === course) row.push(unit);
  return row.sort((a, b) => a.x - b.x);
}

export function unitsOf(wall: Wall, panel: string): Unit[] {
  const all: Unit[] = [];
  for (const unit of wall.units) if (unit.panel === panel) all.push(unit);
  return all;
}

export function coursesOf(wall: Wall, panel: Panel): number[] {
  const seen: number[] = [];
  for (const unit of wall.units) {
    if (unit.panel === panel.id && !seen.includes(unit.course)) seen.push(unit.course);
  }
  return seen.sort((a, b) => a - b);
}

export const rightOf = (unit: Unit): number => unit.x + unit.length;
export const courseName = (panel: string, course: number): string => `${panel}${course}`;

export function undersideAt(unit: Unit, x: number): number {
  return unit.y - (unit.fall * (x - unit.x)) / unit.length;
}

export function topAt(unit: Unit, x: number): number {
  return undersideAt(unit, x) + unit.height;
}

/** Where the top of a unit begins and ends: a slope takes some of it off. */
export const topFrom = ({ x, cut }: Unit): number => x + (cut?.left ?? 0);
export const topTo = (unit: Unit): number => rightOf(unit) - (unit.cut?.right ?? 0);

/** Do two stretches share more than a point? */
export function overlap(from1: number, to1: number, from2: number, to2: number): boolean {
  return Math.min(to1, to2) - Math.max(from1, from2) > 0;
}

/** A soldier or a quoin stands through three courses. */
export const standsThrough = ({ kind }: Unit): number => (kind === 'soldier' || kind === 'quoin' ? 3 : 1);

/** Units next above (+1) or below (-1) that share some of this one's stretch, from the left: what begins over its top course, or ends under its lowest. */
export function across(wall: Wall, unit: Unit, step: 1 | -1): Unit[] {
  return unitsOf(wall, unit.panel)
    .filter((other) =>
      step === 1
        ? other.course === unit.course + standsThrough(unit)
        : other.course + standsThrough(other) === unit.course,
    )
    .filter((other) =>
      step === 1
        ? overlap(topFrom(unit), topTo(unit), other.x, rightOf(other))
        : overlap(unit.x, rightOf(unit), topFrom(other), topTo(other)),
    )
    .sort((a, b) => a.x - b.x);
}

export interface Head {
  readonly id: string;
  readonly left: Unit;
  readonly right: Unit;
  readonly width: number;
}

/** Between two neighbours of a course there is a joint, or, from half a unit up, an opening. */
export function isJoint(wall: Wall, left: Unit, right: Unit): boolean {
  return right.x - rightOf(left) < wall.family.length / 2;
}

export function headsOfCourse(wall: Wall, panel: string, course: number): Head[] {
  const row = courseOf(wall, panel, course);
  const heads: Head[] = [];
  row.forEach((right, at) => {
    const left = row[at - 1];
    if (left === undefined || !isJoint(wall, left, right)) return;
    heads.push({ id: `${left.id}/${right.position}`, left, right, width: right.x - rightOf(left) });
  });
  return heads;
}

/** A course cut into its runs at the openings. */
export function runsOf(wall: Wall, panel: string, course: number): Unit[][] {
  const runs: Unit[][] = [];
  let run: Unit[] = [];
  for (const unit of courseOf(wall, panel, course)) {
    const last = run.at(-1);
    if (last !== undefined && !isJoint(wall, last, unit)) {
      runs.push(run);
      run = [];
    }
    run.push(unit);
  }
  if (run.length > 0) runs.push(run);
  return runs;
}

export function restsOn(wall: Wall, unit: Unit, support: Support): boolean {
  if (unit.panel !== support.panel) return false;
  if (!overlap(unit.x, rightOf(unit), support.fromX, support.toX)) return false;
  const rise = unit.y - support.y;
  if (support.kind === 'ledge') return unit.course === 1 && rise > 0;
  return rise > 0 && rise < wall.gauge / 2;
}

/** How much of the unit's face the drawing wants proud, mm. */
export function wantedSet(wall: Wall, unit: Unit): number {
  let by = 0;
  for (const projection of wall.projections) if (projection.units.includes(unit.id)) by += projection.by;
  return by;
}

export interface Bed {
  readonly left: number;
  readonly right: number;
  readonly mean: number;
}

/** The bed under a unit, mm at its two ends; undefined unless something is below at both. */
export function bedUnder(wall: Wall, unit: Unit): Bed | undefined {
  const below = across(wall, unit, -1);
  const left = levelBelow(wall, unit, below, unit.x);
  const right = levelBelow(wall, unit, below, rightOf(unit));
  if (left === undefined || right === undefined) return undefined;
  const atLeft = unit.y - left;
  const atRight = unit.y - unit.fall - right;
  return { left: atLeft, right: atRight, mean: (atLeft + atRight) / 2 };
}

function levelBelow(wall: Wall, unit: Unit, below: readonly Unit[], x: number): number | undefined {
  for (const one of below) if (topFrom(one) <= x && x <= topTo(one)) return topAt(one, x);
  for (const support of wall.supports) {
    if (restsOn(wall, unit, support) && support.fromX <= x && x <= support.toX) return support.y;
  }
  let nearest: Unit | undefined;
  let away = Infinity;
  for (const one of below) {
    const distance = Math.max(topFrom(one) - x, x - topTo(one));
    if (distance < away) {
      away = distance;
      nearest = one;
    }
  }
  return nearest === undefined ? undefined : topAt(nearest, x);
}
