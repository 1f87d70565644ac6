import type { CheckId } from '../../lib/inspect/finding';
import type { RuleSetId } from '../../lib/limits/limit';
import type { Panel, Pat, Support, Tie, Unit, UnitFamily, Wall } from '../../lib/wall/model';
import type { PanelId } from '../../lib/wall/part-id';

export interface Expected {
  readonly check: CheckId;
  readonly measured: number;
  readonly limit: number;
  /** Sorted as text. */
  readonly parts: readonly string[];
}

/** A wall small enough to be worked on paper, and all that is wrong with it by one set of rules. */
export interface HandWall {
  readonly name: string;
  readonly wall: Wall;
  readonly rules: RuleSetId;
  readonly expected: readonly Expected[];
}

export function hand(name: string, rules: RuleSetId, wall: Wall, ...expected: readonly Expected[]): HandWall {
  return { name, rules, wall, expected };
}

/** One thing wrong; `parts` with blanks between. */
export function wrong(check: CheckId, measured: number, limit: number, parts: string): Expected {
  return { check, measured, limit, parts: parts.split(' ').sort() };
}

export const BRICK: UnitFamily = { name: 'hand brick', length: 190, height: 60, depth: 90 };
export const BLOCK: UnitFamily = { name: 'hand block', length: 390, height: 190, depth: 90 };
const JOINT = 10;

/** Courses from the bottom, each as the lengths of its units from the left; a negative number is a clear gap of so many mm instead of a joint. */
export type Rows = readonly (readonly number[])[];

export function times(count: number, length: number): number[] {
  return Array.from({ length: count }, () => length);
}

export function ledge(from: number, to: number, change: Partial<Support> = {}): Support {
  return {
    id: 'A-ledge',
    panel: 'A',
    kind: 'ledge',
    material: 'concrete',
    fromX: from,
    toX: to,
    y: 0,
    back: -90,
    front: 0,
    ...change,
  };
}

/** A sound strap, wherever it is put: number `id` over course 1. */
export function tie(id: number, x: number, y: number, change: Partial<Tie> = {}): Tie {
  const size = { thickness: 1, width: 25, embedment: 56 };
  return { id: `A-tie1.${id}`, panel: 'A', course: 1, x, y, kind: 'strap', ...size, ...change };
}

/** One tie for every y in every stud's column, numbered from 1 as they come. */
export function tieGrid(studs: readonly number[], ys: readonly number[]): Tie[] {
  return studs.flatMap((x, at) => ys.map((y, row) => tie(at * ys.length + row + 1, x, y)));
}

function layRow(row: readonly number[], panel: PanelId, course: number, family: UnitFamily): Unit[] {
  const units: Unit[] = [];
  let x = 0;
  let joint = 0;
  for (const length of row) {
    if (length < 0) {
      x += -length;
      joint = 0;
      continue;
    }
    x += joint;
    const position = units.length + 1;
    units.push({
      id: `${panel}${course}.${position}`,
      panel,
      course,
      position,
      kind: 'stretcher',
      x,
      y: JOINT + (course - 1) * (family.height + JOINT),
      length,
      height: family.height,
      depth: family.depth,
      fall: 0,
      twist: 0,
      lean: 0,
      set: 0,
      texture: 'smooth',
      condition: 'sound',
      shade: 0,
    });
    x += length;
    joint = JOINT;
  }
  return units;
}

/** An adhered panel A with ends that meet nothing and true beds and joints of 10 mm on a ledge at y = 0: sound by every set of rules. */
export function wallOf(
  rows: Rows,
  change: Partial<Wall> = {},
  panelChange: Partial<Panel> = {},
  panel: PanelId = 'A',
): Wall {
  const family = change.family ?? BRICK;
  const units = rows.flatMap((row, at) => layRow(row, panel, at + 1, family));
  const length = Math.max(...units.map((unit) => unit.x + unit.length));
  return {
    version: 2,
    kind: 'plain-panel',
    masonry: 'adhered',
    finish: 'brick',
    family,
    bond: 'running',
    joint: JOINT,
    gauge: family.height + JOINT,
    storeysAbove: 0,
    cavity: 0,
    panels: [
      {
        id: panel,
        length,
        courses: rows.length,
        plan: { leftX: 0, leftZ: 0, rightX: length, rightZ: 0 },
        leftEnd: 'corner',
        rightEnd: 'corner',
        profile: 'concave',
        recess: 0,
        gable: null,
        studs: [],
        ...panelChange,
      },
    ],
    units,
    heads: [],
    openings: [],
    supports: [ledge(0, length, { id: `${panel}-ledge`, panel })],
    ties: [],
    flashings: [],
    batches: [],
    projections: [],
    tone: { mortar: 0, lot: 0 },
    ...change,
  };
}

/** The same wall with some units changed; a name that is in no unit is a slip of the pen. */
export function changed(wall: Wall, changes: Readonly<Record<string, Partial<Unit>>>): Wall {
  const strange = Object.keys(changes).filter((id) => !wall.units.some((unit) => unit.id === id));
  if (strange.length > 0) throw new Error(`no such unit: ${strange.join(', ')}`);
  return { ...wall, units: wall.units.map((unit) => ({ ...unit, ...changes[unit.id] })) };
}

/** The same wall with a whole course changed. */
export function courseChanged(wall: Wall, course: number, change: (unit: Unit) => Partial<Unit>): Wall {
  return {
    ...wall,
    units: wall.units.map((unit) => (unit.course === course ? { ...unit, ...change(unit) } : unit)),
  };
}

export function pat(x: number, y: number, width: number, height: number): Pat {
  return { x, y, width, height };
}
