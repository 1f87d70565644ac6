import { gapBetween } from '../geometry/box';
import { type Aim, awayFrom } from '../views/pointing/pick';
import { topCourseOf, type Wall } from '../wall/model';
import { type PanelId, type PartKind, parsePartId } from '../wall/part-id';
import { partName } from '../wall/part-names';
import type { Part } from '../wall/parts';
import type { SurveyedWall } from '../wall/surveyed';

/** A part of the wall with the name a reader sees. */
export interface NamedPart {
  readonly id: string;
  readonly kind: PartKind;
  readonly name: string;
}

export interface PickedPart extends NamedPart {
  /** What else can be marked from this place, nearest first: its joints, its course, its panel, what carries it. */
  readonly nearby: readonly NamedPart[];
}

/** Parts small enough that what lies beside them is near. */
const SMALL: readonly PartKind[] = ['unit', 'bed', 'head', 'tie'];
/** Parts of which a panel has few: each is worth naming from anywhere on it. */
const FEW: readonly PartKind[] = ['support', 'opening', 'edge', 'corner'];
/** Ties worth naming near a place. */
const NEAR_TIES = 3;
/** What lies no farther off than this is beside a part, mm: over a joint and a half. */
const BESIDE = 20;

/** A part that was pointed to, with what else a fault there may be marked on; null for no part of this wall. */
export function pickedPart({ wall, parts }: SurveyedWall, id: string, aim: Aim | null): PickedPart | null {
  const part = parts.get(id);
  if (!part) return null;
  const named = (each: Part) => ({ id: each.id, kind: each.kind, name: partName(each, wall) });
  return { ...named(part), nearby: nearbyParts(part, aim, wall, parts).map(named) };
}

/**
 * What else can be marked from a part, nearest first to the place pointed at (to the middle of the part where nobody pointed): the units
 * and joints beside it, ties, supports, openings and ends, its course, its panel, its mixing. What lies beside a part as large as an
 * opening is told only by the place pointed at.
 */
export function nearbyParts(
  part: Part,
  aim: Aim | null,
  wall: Wall,
  parts: ReadonlyMap<string, Part>,
): readonly Part[] {
  const { x, y, reach } = aim ?? { x: part.x + part.width / 2, y: part.y + part.height / 2, reach: 0 };
  const place = SMALL.includes(part.kind) ? part : aim && { x, y, width: 0, height: 0 };
  const onPanel = [...parts.values()].filter((each) => each.id !== part.id && isOn(part.panel, each));
  const here = onPanel
    .map((each) => ({ each, away: awayFrom(each, x, y, reach) }))
    .sort((a, b) => a.away - b.away)
    .map(({ each }) => each);
  const beside = here.filter(
    (each) => SMALL.includes(each.kind) && place !== null && gapBetween(place, each) <= BESIDE + reach,
  );
  const ties = place === null ? [] : here.filter(({ kind }) => kind === 'tie').slice(0, NEAR_TIES);
  const courses = coursesOf(part, wall);
  return [
    ...new Set([
      ...beside,
      ...ties,
      ...here.filter(({ kind }) => FEW.includes(kind)),
      ...onPanel.filter(
        ({ kind, course }) => kind === 'course' && course !== null && courses.includes(course),
      ),
      ...here.filter(({ kind }) => kind === 'panel'),
      ...mixingsOf(courses, wall, parts),
    ]),
  ];
}

/** Whether a part lies on a panel: a corner on both that it joins. */
function isOn(panel: PanelId, { id, panel: on }: Part): boolean {
  const name = parsePartId(id);
  return name?.kind === 'corner' ? name.panels.includes(panel) : on === panel;
}

/** The course of a part; of a unit every one that it stands through. */
function coursesOf({ id, course }: Part, { units }: Wall): readonly number[] {
  if (course === null) return [];
  const unit = units.find((each) => each.id === id);
  const top = unit ? topCourseOf(unit) : course;
  return Array.from({ length: top - course + 1 }, (_, index) => course + index);
}

/** The mixings that courses were laid with; of a part without a course, all. */
function mixingsOf(courses: readonly number[], { batches }: Wall, parts: ReadonlyMap<string, Part>) {
  return batches
    .filter(
      ({ fromCourse, toCourse }) =>
        courses.length === 0 || courses.some((course) => course >= fromCourse && course <= toCourse),
    )
    .flatMap(({ id }) => parts.get(id) ?? []);
}
