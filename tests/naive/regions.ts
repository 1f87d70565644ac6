import type { Region } from '../../lib/inspect/finding';
import type { Unit, Wall } from '../../lib/wall/model';
import { bedUnder, courseOf, type Head, headsOfCourse, rightOf, standsThrough, unitsOf } from './geometry';

/** Where a fault is shown, worked out from the parts that it names; the checks that need more say it themselves. */
export function regionOfParts(wall: Wall, parts: readonly string[], check: string): Region {
  const units = parts.flatMap((id) => wall.units.filter((unit) => unit.id === id));
  const heads = parts.filter((id) => id.includes('/'));
  switch (check) {
    case 'open-head':
    case 'blocked-weep':
      return round(heads.map((id) => headBox(wall, id)));
    case 'thick-joint':
    case 'thin-joint':
      return heads.length > 0
        ? round(heads.map((id) => headBox(wall, id)))
        : round(units.map((unit) => bedBox(wall, unit)));
    case 'tapering-bed':
      return round([...units.map((unit) => bedBox(wall, unit)), faces(units)]);
    case 'raked-thin-veneer':
    case 'gauge-drift':
    case 'out-of-plumb':
      return panelBox(wall, parts[0] ?? '');
    case 'course-off-level':
      return faces(parts.flatMap((course) => unitsOfCourse(wall, course)));
    case 'corner-not-square':
      return returnEnd(wall, parts[0] ?? '');
    case 'short-lintel-bearing':
    case 'weak-angle':
      return lintelStrip(wall, parts);
    case 'shallow-tie':
    case 'thin-tie':
    case 'tie-near-face':
      return round(
        wall.ties
          .filter(({ id }) => parts.includes(id))
          .map(({ panel, x, y }) => ({ panel, x: x - 40, y: y - 40, width: 80, height: 80 })),
      );
    case 'stale-mortar':
    case 'lean-mortar':
      return faces(
        parts
          .filter((course) => course.startsWith(firstPanel(wall)))
          .flatMap((course) => unitsOfCourse(wall, course)),
      );
    default:
      return faces(units);
  }
}

/** The smallest box round some units, ends at their own heights. */
export function faces(units: readonly Unit[]): Region {
  return round(
    units.map((unit) => {
      const low = Math.min(unit.y, unit.y - unit.fall);
      const high = Math.max(unit.y, unit.y - unit.fall) + unit.height;
      return { panel: unit.panel, x: unit.x, y: low, width: unit.length, height: high - low };
    }),
  );
}

export function round(boxes: readonly Region[]): Region {
  const x = Math.min(...boxes.map((box) => box.x));
  const y = Math.min(...boxes.map((box) => box.y));
  const right = Math.max(...boxes.map((box) => box.x + box.width));
  const top = Math.max(...boxes.map((box) => box.y + box.height));
  return { panel: boxes[0]?.panel ?? '', x, y, width: right - x, height: top - y };
}

function headBox(wall: Wall, id: string): Region {
  const left = wall.units.find((unit) => id.startsWith(`${unit.id}/`));
  const head = left && headsOfCourse(wall, left.panel, left.course).find((each) => each.id === id);
  if (head === undefined) throw new Error(`no such head: ${id}`);
  return boxOfHead(head);
}

export function boxOfHead({ left, right, width }: Head): Region {
  const atLeft = left.y - left.fall;
  const bottom = Math.min(atLeft, right.y);
  const tops = [atLeft + left.height, right.y + right.height];
  const isEven = standsThrough(left) === standsThrough(right);
  const top = isEven ? Math.max(...tops) : Math.min(...tops);
  return { panel: left.panel, x: rightOf(left), y: bottom, width: Math.max(0, width), height: top - bottom };
}

function bedBox(wall: Wall, unit: Unit): Region {
  const bed = bedUnder(wall, unit);
  const atRight = unit.y - unit.fall;
  const top = Math.max(unit.y, atRight);
  const bottom = Math.min(unit.y - (bed?.left ?? 0), atRight - (bed?.right ?? 0));
  return { panel: unit.panel, x: unit.x, y: bottom, width: unit.length, height: top - bottom };
}

function panelBox(wall: Wall, id: string): Region {
  const { y, height } = faces(unitsOf(wall, id));
  return { panel: id, x: 0, y, width: wall.panels.find((panel) => panel.id === id)?.length ?? 0, height };
}

/** 'A12' of panel A, course 12. */
function unitsOfCourse(wall: Wall, course: string): readonly Unit[] {
  return wall.units.filter((unit) => `${unit.panel}${unit.course}` === course);
}

/** Shown at the corner, on the panel that comes later by name. */
function returnEnd(wall: Wall, corner: string): Region {
  const [left = '', right = ''] = corner.split('-');
  const later = [left, right].sort().at(-1) ?? '';
  const courses = [...new Set(unitsOf(wall, later).map(({ course }) => course))];
  return faces(
    courses.flatMap((course) => {
      const row = courseOf(wall, later, course);
      return (later === right ? row[0] : row.at(-1)) ?? [];
    }),
  );
}

/** A gauge high, half of it under the lintel, from end to end. */
function lintelStrip(wall: Wall, parts: readonly string[]): Region {
  return round(
    wall.supports
      .filter(({ id }) => parts.includes(id))
      .map(({ panel, fromX, toX, y }) => ({
        panel,
        x: fromX,
        y: y - wall.gauge / 2,
        width: toX - fromX,
        height: wall.gauge,
      })),
  );
}

function firstPanel(wall: Wall): string {
  return [...wall.panels.map(({ id }) => id)].sort()[0] ?? '';
}
