import { topLeft, topRight } from './cut';
import { type Cut, isTall, type Opening, topCourseOf, type Unit, type Wall, WallError } from './model';
import { bedId, parsePartId, unitId } from './part-id';
import { headWidth, type Placed, surveyOf, undersideAt } from './survey';

/** Refuses a wall that cannot be: names that clash or point nowhere, units that overlap or lie outside their panel. @throws WallError with the path. */
export function refuseUnstandable(wall: Wall): void {
  refuseNames(wall);
  const courses = new Map(wall.panels.map((panel) => [panel.id, panel]));
  for (const [index, unit] of wall.units.entries()) {
    const panel = courses.get(unit.panel);
    const where = `units.${index}`;
    if (panel === undefined) throw new WallError(`${where}.panel: there is no panel ${unit.panel}`);
    if (unit.id !== unitId(unit.panel, unit.course, unit.position)) {
      throw new WallError(`${where}.id: ${unit.id} does not name its panel, course and position`);
    }
    if (topCourseOf(unit) > panel.courses)
      throw new WallError(`${where}.course: panel ${panel.id} has ${panel.courses}`);
    if (unit.x < -OUTSIDE || unit.x + unit.length > panel.length + OUTSIDE) {
      throw new WallError(`${where}: lies outside panel ${panel.id}`);
    }
  }
  refuseHoles(wall);
  refuseOverlaps(wall);
}

/** Scatter may carry an end this far past the panel, mm. */
const OUTSIDE = 10;

/** Every course of a panel is laid, every panel has a length in plan, and what is fixed to a panel lies on it. */
function refuseHoles(wall: Wall): void {
  for (const [index, panel] of wall.panels.entries()) {
    const { leftX, leftZ, rightX, rightZ } = panel.plan;
    if (leftX === rightX && leftZ === rightZ) throw new WallError(`panels.${index}.plan: has no length`);
    const laid = new Set(wall.units.filter((unit) => unit.panel === panel.id).map(({ course }) => course));
    for (let course = 1; course <= panel.courses; course++) {
      if (!laid.has(course))
        throw new WallError(`panels.${index}.courses: course ${course} of ${panel.id} has no unit`);
    }
    const off = (x: number) => x < -OUTSIDE || x > panel.length + OUTSIDE;
    const tie = wall.ties.findIndex((each) => each.panel === panel.id && off(each.x));
    if (tie >= 0) throw new WallError(`ties.${tie}.x: lies outside panel ${panel.id}`);
    for (const [at, opening] of wall.openings.entries()) {
      if (opening.panel !== panel.id) continue;
      if (off(opening.x) || off(opening.x + opening.width)) {
        throw new WallError(`openings.${at}: lies outside panel ${panel.id}`);
      }
      const unit = wall.units.find((each) => each.panel === panel.id && isInside(each, opening));
      if (unit !== undefined) throw new WallError(`openings.${at}: unit ${unit.id} stands in it`);
    }
  }
  const bare = wall.masonry === 'adhered' ? wall.units.findIndex(({ back }) => back === undefined) : -1;
  if (bare >= 0) throw new WallError(`units.${bare}.back: an adhered unit says how its back is covered`);
}

/** A unit that stands in an opening by more than scatter can carry it. */
function isInside(unit: Unit, opening: Opening): boolean {
  const across = Math.min(unit.x + unit.length, opening.x + opening.width) - Math.max(unit.x, opening.x);
  const up = Math.min(unit.y + unit.height, opening.y + opening.height) - Math.max(unit.y, opening.y);
  return across > OUTSIDE && up > OUTSIDE;
}

function refuseNames(wall: Wall): void {
  const groups = {
    panels: wall.panels,
    units: wall.units,
    openings: wall.openings,
    supports: wall.supports,
    ties: wall.ties,
    batches: wall.batches,
  } as const;
  const taken = new Set<string>();
  const panels = new Set(wall.panels.map(({ id }) => id));
  for (const [group, parts] of Object.entries(groups)) {
    for (const [index, part] of parts.entries()) {
      if (taken.has(part.id)) throw new WallError(`${group}.${index}.id: ${part.id} is named twice`);
      taken.add(part.id);
      if ('panel' in part && !panels.has(part.panel)) {
        throw new WallError(`${group}.${index}.panel: there is no panel ${part.panel}`);
      }
    }
  }
  for (const [index, { fromX, toX, opening }] of wall.supports.entries()) {
    if (fromX >= toX) throw new WallError(`supports.${index}: ends before it begins`);
    if (opening !== undefined && !taken.has(opening)) {
      throw new WallError(`supports.${index}.opening: there is no opening ${opening}`);
    }
  }
  for (const [index, { fromCourse, toCourse }] of wall.batches.entries()) {
    if (fromCourse > toCourse) throw new WallError(`batches.${index}: ends before it begins`);
  }
  for (const [index, { panel }] of wall.flashings.entries()) {
    if (!panels.has(panel)) throw new WallError(`flashings.${index}.panel: there is no panel ${panel}`);
  }
  refuseJoints(wall, taken);
}

function refuseJoints(wall: Wall, taken: ReadonlySet<string>): void {
  for (const [index, { joint }] of wall.heads.entries()) {
    const name = parsePartId(joint);
    const units =
      name?.kind === 'head'
        ? [name.position, name.right].map((place) => unitId(name.panel, name.course, place))
        : [joint];
    if (!units.every((unit) => taken.has(unit))) {
      throw new WallError(`heads.${index}.joint: there is no head joint ${joint}`);
    }
  }
  for (const [index, { units }] of wall.projections.entries()) {
    const unknown = units.find((unit) => !taken.has(unit));
    if (unknown !== undefined) throw new WallError(`projections.${index}.units: there is no unit ${unknown}`);
  }
}

function refuseOverlaps(wall: Wall): void {
  refuseStandingThrough(wall);
  for (const { courses } of surveyOf(wall).panels) {
    for (const course of courses) {
      for (const [index, placed] of course.entries()) {
        const { unit, below, bed } = placed;
        if (unit.cut !== undefined) refuseCut(placed, unit.cut);
        const next = course[index + 1]?.unit;
        if (next !== undefined && headWidth(unit, next) < 0) {
          throw new WallError(`units: ${unit.id} overlaps ${next.id}`);
        }
        for (const lower of below) refuseSinking(unit, lower.unit);
        if (bed !== null && Math.min(bed.left, bed.right) < 0) {
          throw new WallError(`units: ${bedId(unit.id)} is less than nothing`);
        }
      }
    }
  }
}

/** Nothing is laid where a tall unit stands through from a course below. */
function refuseStandingThrough({ units }: Wall): void {
  for (const tall of units.filter(isTall)) {
    const inside = units.find(
      ({ panel, course, x, length }) =>
        panel === tall.panel &&
        course > tall.course &&
        course <= topCourseOf(tall) &&
        x < tall.x + tall.length &&
        tall.x < x + length,
    );
    if (inside !== undefined) throw new WallError(`units: ${inside.id} overlaps ${tall.id}`);
  }
}

/** A cut leaves something of the unit, and slopes away from where a neighbour would be. */
function refuseCut({ unit, left, right }: Placed, cut: Cut): void {
  if (cut.left + cut.right > unit.length)
    throw new WallError(`units: the cuts of ${unit.id} meet under its top`);
  if ((cut.left > 0 && left !== null) || (cut.right > 0 && right !== null))
    throw new WallError(`units: ${unit.id} is cut at an end with a unit beside it`);
}

/** A unit must not sink into one below, at either end of what they share. */
function refuseSinking(upper: Unit, lower: Unit): void {
  const from = Math.max(upper.x, topLeft(lower));
  const to = Math.min(upper.x + upper.length, topRight(lower));
  for (const x of [from, to]) {
    if (undersideAt(upper, x) < undersideAt(lower, x) + lower.height) {
      throw new WallError(`units: ${upper.id} overlaps ${lower.id} below it`);
    }
  }
}
