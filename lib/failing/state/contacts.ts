import { type Box, clipped } from '../../geometry/box';
import { meanLength, topLeft, topRight } from '../../wall/cut';
import type { Tie, Unit } from '../../wall/model';
import { headId } from '../../wall/part-id';
import type { Placed, Survey } from '../../wall/survey';
import type { Contact } from './model';

/** Every contact of a wall on the day it was laid: all bonded over what its mortar covers. Units course by course from the bottom, each from the left. */
export function laidContacts({ wall, panels }: Survey): readonly Contact[] {
  const filled = new Map(wall.heads.map(({ joint, filled: share }) => [joint, share / 100]));
  const contacts: Contact[] = [];
  for (const { courses, ties } of panels) {
    const tiesOn = new Map<number, Tie[]>();
    for (const tie of ties) tiesOn.set(tie.course, [...(tiesOn.get(tie.course) ?? []), tie]);
    for (const [index, course] of courses.entries()) {
      const toTie = tiesOn.get(index + 1) ?? [];
      for (const placed of course) {
        contacts.push(...underneath(placed));
        const { unit, right } = placed;
        if (right !== null) {
          const share = filled.get(headId(unit.id, right.unit.position)) ?? 1;
          const area = Math.min(unit.height, right.unit.height) * Math.min(unit.depth, right.unit.depth);
          contacts.push(bonded('head', placed, right.unit.id, area * share));
        }
        if (placed.back !== null) contacts.push(behind(placed, placed.back.covered));
        for (const tie of toTie) {
          if (tie.x >= unit.x && tie.x < unit.x + unit.length)
            contacts.push(bonded('tie', placed, tie.id, tie.width * tie.embedment));
        }
      }
    }
  }
  return contacts;
}

function underneath(placed: Placed): readonly Contact[] {
  const { unit, below, support } = placed;
  const beds = below.map((lower) =>
    bonded(
      'bed',
      placed,
      lower.unit.id,
      shared(placed, topLeft(lower.unit), topRight(lower.unit)) * Math.min(unit.depth, lower.unit.depth),
    ),
  );
  if (support === null) return beds;
  const deep = Math.min(unit.set, support.front) - Math.max(unit.set - unit.depth, support.back);
  const area = shared(placed, support.fromX, support.toX) * Math.max(0, deep);
  return [...beds, bonded('bearing', placed, support.id, area)];
}

/** How much of a unit's length lies over a stretch, mm. */
export function shared({ unit }: Placed, fromX: number, toX: number): number {
  return Math.max(0, Math.min(unit.x + unit.length, toX) - Math.max(unit.x, fromX));
}

/** The mortar on a back as it was laid; of a unit with sloping ends, on the box that is as long as the unit halfway up. */
export function laidPats(unit: Unit): readonly Box[] {
  const face = { x: (unit.cut?.left ?? 0) / 2, y: 0, width: meanLength(unit), height: unit.height };
  return (unit.back ?? [])
    .map((pat) => clipped(pat, face))
    .filter(({ width, height }) => width > 0 && height > 0);
}

function behind(placed: Placed, covered: number): Contact {
  const { unit } = placed;
  return { ...bonded('back', placed, unit.id, covered), held: laidPats(unit) };
}

function bonded(kind: Contact['kind'], { unit }: Placed, other: Contact['other'], area: number): Contact {
  return { kind, unit: unit.id, other, area, state: 'bonded', sound: 1 };
}
