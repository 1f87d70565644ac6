import type { Mm } from '../units';
import { type BackContact, measureBack } from './back-contact';
import { topLeft, topRight } from './cut';
import {
  isTall,
  type Opening,
  type Panel,
  type Support,
  type Tie,
  topCourseOf,
  type Unit,
  type Wall,
} from './model';

/** A unit with its neighbours, and the bed it lies on. */
export interface Placed {
  readonly unit: Unit;
  /** Neighbour in the course with a head joint between; null at an end, at an opening, and beside what stands through from a course below. */
  left: Placed | null;
  right: Placed | null;
  readonly below: Placed[];
  readonly above: Placed[];
  /** Support it rests on, if any. */
  support: Support | null;
  /** Thickness of the bed at the left and right end of the unit, mm; null where there is nothing below an end. */
  bed: Bed | null;
  /** Mortar contact on the back; adhered units only. */
  readonly back: BackContact | null;
  /** How far the face stands off the drawing: set, less what the drawing wants proud. */
  readonly proud: Mm;
}

export interface Bed {
  readonly left: Mm;
  readonly right: Mm;
}

export interface PanelSurvey {
  readonly panel: Panel;
  /** Courses from the bottom; each from the left. */
  readonly courses: readonly (readonly Placed[])[];
  readonly placed: readonly Placed[];
  readonly openings: readonly Opening[];
  readonly supports: readonly Support[];
  readonly ties: readonly Tie[];
}

/** The wall with everything that is measured between its units worked out once. */
export interface Survey {
  readonly wall: Wall;
  readonly panels: readonly PanelSurvey[];
}

export function surveyOf(wall: Wall): Survey {
  const drawn = new Map<string, Mm>();
  for (const { units, by } of wall.projections) for (const id of units) drawn.set(id, by);
  return { wall, panels: wall.panels.map((panel) => surveyPanel(wall, panel, drawn)) };
}

function surveyPanel(wall: Wall, panel: Panel, drawn: ReadonlyMap<string, Mm>): PanelSurvey {
  const courses: Placed[][] = Array.from({ length: panel.courses }, () => []);
  const placed: Placed[] = [];
  for (const unit of wall.units) {
    if (unit.panel !== panel.id) continue;
    const each: Placed = {
      unit,
      left: null,
      right: null,
      below: [],
      above: [],
      support: null,
      bed: null,
      back: unit.back ? measureBack(unit) : null,
      proud: unit.set - (drawn.get(unit.id) ?? 0),
    };
    courses[unit.course - 1]?.push(each);
    placed.push(each);
  }
  const supports = wall.supports.filter((support) => support.panel === panel.id);
  const tops = topsOf(placed, panel.courses);
  for (const [index, course] of courses.entries()) {
    linkCourse(course, wall.family.length / 2);
    linkCourses(tops[index - 1] ?? [], course);
    for (const each of course) {
      each.support = supportOf(each, supports, wall.gauge);
      each.bed = bedOf(each);
    }
  }
  return {
    panel,
    courses,
    placed,
    openings: wall.openings.filter((opening) => opening.panel === panel.id),
    supports,
    ties: wall.ties.filter((tie) => tie.panel === panel.id),
  };
}

/** Underside of a unit at x, mm. */
export function undersideAt(unit: Unit, x: Mm): Mm {
  return unit.y - (unit.fall * (x - unit.x)) / unit.length;
}

/** Clear width of the head joint between two neighbours. */
export function headWidth(left: Unit, right: Unit): Mm {
  return right.x - (left.x + left.length);
}

function linkCourse(course: readonly Placed[], widest: Mm): void {
  for (let index = 1; index < course.length; index++) {
    const left = course[index - 1];
    const right = course[index];
    if (left && right && headWidth(left.unit, right.unit) < widest) {
      left.right = right;
      right.left = left;
    }
  }
}

/** For each course, the units that end with it, from the left: its own that are no higher, and those that stand through from below. */
function topsOf(placed: readonly Placed[], courses: number): readonly (readonly Placed[])[] {
  const tops: Placed[][] = Array.from({ length: courses }, () => []);
  let anyTall = false;
  for (const each of placed) {
    tops[topCourseOf(each.unit) - 1]?.push(each);
    anyTall ||= isTall(each.unit);
  }
  if (anyTall) for (const row of tops) row.sort((a, b) => a.unit.x - b.unit.x);
  return tops;
}

function linkCourses(under: readonly Placed[], over: readonly Placed[]): void {
  let first = 0;
  for (const upper of over) {
    const from = upper.unit.x;
    const to = from + upper.unit.length;
    while (first < under.length) {
      const lower = under[first];
      if (lower === undefined || topRight(lower.unit) > from) break;
      first += 1;
    }
    for (let index = first; index < under.length; index++) {
      const lower = under[index];
      if (lower === undefined || topLeft(lower.unit) >= to) break;
      upper.below.push(lower);
      lower.above.push(upper);
    }
  }
}

/** Course 1 rests on the ledge; a unit with its underside just above a lintel rests on that. */
function supportOf(each: Placed, supports: readonly Support[], gauge: Mm): Support | null {
  const { unit } = each;
  for (const support of supports) {
    const over = Math.min(unit.x + unit.length, support.toX) - Math.max(unit.x, support.fromX);
    const gap = unit.y - support.y;
    if (over <= 0 || gap <= 0) continue;
    if (support.kind === 'ledge' ? unit.course === 1 : gap < gauge / 2) return support;
  }
  return null;
}

function bedOf(each: Placed): Bed | null {
  const { unit } = each;
  const end = unit.x + unit.length;
  const underLeft = topUnder(each, unit.x);
  const underRight = topUnder(each, end);
  if (underLeft === null || underRight === null) return null;
  return { left: unit.y - underLeft, right: unit.y - unit.fall - underRight };
}

/** Top of what lies under a unit at x: the unit below that x falls on, else the support, else the nearest unit below. */
function topUnder({ below, support }: Placed, x: Mm): Mm | null {
  let nearest: Placed | null = null;
  let nearestAway = 0;
  for (const lower of below) {
    const away = Math.max(topLeft(lower.unit) - x, x - topRight(lower.unit), 0);
    if (nearest === null || away < nearestAway) {
      nearest = lower;
      nearestAway = away;
    }
  }
  if (support !== null && (nearest === null || nearestAway > 0) && support.fromX <= x && x <= support.toX) {
    return support.y;
  }
  return nearest === null ? null : undersideAt(nearest.unit, x) + nearest.unit.height;
}
