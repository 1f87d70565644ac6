import { bedId, headId, topCourseOf, type Wall } from '../../lib/wall/model';
import type { Part } from '../../lib/wall/parts';
import type { Placed, Survey } from '../../lib/wall/survey';

/** Ties worth naming near a place. */
const NEAR_TIES = 3;

/** What else can be marked from a place: its joints, course and panel, what carries it, the nearest ties, its ends, its mixing. */
export function nearbyParts(part: Part, survey: Survey, parts: ReadonlyMap<string, Part>): readonly Part[] {
  const { wall } = survey;
  const panel = survey.panels.find((each) => each.panel.id === part.panel);
  const placed = panel?.placed.find(({ unit }) => isOf(part.id, unit.id)) ?? null;
  const ids = [
    ...(placed ? around(placed) : []),
    ...supportsNear(part, placed, wall),
    ...coursesOf(part, placed).map((course) => `${part.panel}${course}`),
    part.panel,
    ...wall.openings.filter((opening) => opening.panel === part.panel).map(({ id }) => id),
    ...tiesNear(part, wall),
    ...[...parts.values()]
      .filter(
        ({ kind, panel: on, id }) =>
          (kind === 'edge' && on === part.panel) || (kind === 'corner' && touches(id, part)),
      )
      .map(({ id }) => id),
    ...wall.batches
      .filter(
        ({ fromCourse, toCourse }) =>
          part.course === null || (part.course >= fromCourse && part.course <= toCourse),
      )
      .map(({ id }) => id),
  ];
  return [...new Set(ids)].flatMap((id) => (id === part.id ? [] : (parts.get(id) ?? [])));
}

/** The course of a part; of a unit all that it stands through. */
function coursesOf({ kind, course }: Part, placed: Placed | null): readonly number[] {
  if (course === null) return [];
  const top = kind === 'unit' && placed ? topCourseOf(placed.unit) : course;
  return Array.from({ length: top - course + 1 }, (_, index) => course + index);
}

/** 'A12.5' itself, its bed 'A12.5-bed' and the head on its right 'A12.5/6'. */
function isOf(id: string, unit: string): boolean {
  return id === unit || id === `${unit}-bed` || id.startsWith(`${unit}/`);
}

function around({ unit, left, right, above }: Placed): readonly string[] {
  return [
    unit.id,
    bedId(unit.id),
    ...above.map((each) => bedId(each.unit.id)),
    ...(left ? [headId(left.unit.id, unit.position)] : []),
    ...(right ? [headId(unit.id, right.unit.position)] : []),
  ];
}

/** What carries the unit comes first, then the other supports of the panel. */
function supportsNear(part: Part, placed: Placed | null, wall: Wall): readonly string[] {
  const under = placed?.support?.id;
  const others = wall.supports.filter(({ panel }) => panel === part.panel).map(({ id }) => id);
  return under ? [under, ...others] : others;
}

function tiesNear(part: Part, wall: Wall): readonly string[] {
  const x = part.x + part.width / 2;
  const y = part.y + part.height / 2;
  const distanceSq = (tie: { x: number; y: number }) => (tie.x - x) * (tie.x - x) + (tie.y - y) * (tie.y - y);
  return wall.ties
    .filter(({ panel }) => panel === part.panel)
    .sort((a, b) => distanceSq(a) - distanceSq(b))
    .slice(0, NEAR_TIES)
    .map(({ id }) => id);
}

/** 'A-B-corner' touches the panels A and B. */
function touches(corner: string, { panel }: Part): boolean {
  return corner.split('-').includes(panel);
}
