import type { Flashing } from './flashing';
import type { HeadFill, Panel, Tie, Unit, Wall } from './model';
import {
  type CourseId,
  courseId,
  headId,
  type PanelId,
  parsePartId,
  tieId,
  type UnitId,
  unitId,
} from './part-id';

/** The wall seen in a mirror: left and right change places, names follow their new places. */
export function mirrored(wall: Wall): Wall {
  const length = new Map(wall.panels.map((panel) => [panel.id, panel.length]));
  const over = (panel: PanelId) => length.get(panel) ?? 0;
  const count = new Map<CourseId, number>();
  for (const unit of wall.units) {
    const course = courseId(unit.panel, unit.course);
    count.set(course, Math.max(count.get(course) ?? 0, unit.position));
  }
  const renamed = (id: UnitId) => {
    const name = parsePartId(id);
    if (name?.kind !== 'unit') return id;
    const { panel, course, position } = name;
    return unitId(panel, course, (count.get(courseId(panel, course)) ?? 0) + 1 - position);
  };
  const flip = <T extends { readonly panel: PanelId; readonly fromX: number; readonly toX: number }>(
    part: T,
  ): T => ({
    ...part,
    fromX: over(part.panel) - part.toX,
    toX: over(part.panel) - part.fromX,
  });
  return {
    ...wall,
    panels: [...wall.panels].reverse().map(mirroredPanel),
    units: byCourse(
      wall.units.map((unit) =>
        mirroredUnit(
          unit,
          over(unit.panel),
          (count.get(courseId(unit.panel, unit.course)) ?? 0) + 1 - unit.position,
        ),
      ),
    ),
    heads: wall.heads.map((head) => mirroredHead(head, count)),
    openings: wall.openings.map((each) => ({ ...each, x: over(each.panel) - each.x - each.width })),
    supports: wall.supports.map(flip),
    ties: mirroredTies(wall.ties, over),
    flashings: wall.flashings.map(flip).map(endsTurned),
    ...(wall.droppings ? { droppings: wall.droppings.map(flip) } : {}),
    projections: wall.projections.map((each) => ({ ...each, units: each.units.map(renamed) })),
  };
}

function mirroredPanel(panel: Panel): Panel {
  const { leftX, leftZ, rightX, rightZ } = panel.plan;
  return {
    ...panel,
    plan: { leftX: 0 - rightX, leftZ: rightZ, rightX: 0 - leftX, rightZ: leftZ },
    leftEnd: panel.rightEnd,
    rightEnd: panel.leftEnd,
    studs: panel.studs.map((stud) => panel.length - stud).reverse(),
  };
}

function endsTurned(flashing: Flashing): Flashing {
  const { shape } = flashing;
  return shape
    ? { ...flashing, shape: { ...shape, leftDam: shape.rightDam, rightDam: shape.leftDam } }
    : flashing;
}

function mirroredUnit(unit: Unit, over: number, position: number): Unit {
  return {
    ...unit,
    id: unitId(unit.panel, unit.course, position),
    position,
    x: over - unit.x - unit.length,
    y: unit.y - unit.fall,
    fall: 0 - unit.fall,
    twist: 0 - unit.twist,
    ...(unit.cut ? { cut: { left: unit.cut.right, right: unit.cut.left } } : {}),
    ...(unit.back ? { back: unit.back.map((pat) => ({ ...pat, x: unit.length - pat.x - pat.width })) } : {}),
  };
}

/** `A12.4/5` of a course of nine -> `A12.5/6`. */
function mirroredHead(head: HeadFill, count: ReadonlyMap<CourseId, number>): HeadFill {
  const name = parsePartId(head.joint);
  if (name?.kind !== 'head') return head;
  const { panel, course, right } = name;
  const left = (count.get(courseId(panel, course)) ?? 0) + 1 - right;
  return { ...head, joint: headId(unitId(panel, course, left), left + 1) };
}

function mirroredTies(ties: readonly Tie[], over: (panel: PanelId) => number): readonly Tie[] {
  const rows = new Map<CourseId, Tie[]>();
  for (const tie of ties) {
    const row = courseId(tie.panel, tie.course);
    rows.set(row, [...(rows.get(row) ?? []), { ...tie, x: over(tie.panel) - tie.x }]);
  }
  return [...rows.values()].flatMap((group) =>
    group
      .sort((a, b) => a.x - b.x)
      .map((tie, index) => ({ ...tie, id: tieId(tie.panel, tie.course, index + 1) })),
  );
}

/** Keeps courses in their order and turns each round, so that units still run left to right. */
function byCourse(units: readonly Unit[]): readonly Unit[] {
  const turned: Unit[] = [];
  let from = 0;
  for (let to = 1; to <= units.length; to++) {
    const here = units[from];
    const next = units[to];
    if (here && next && next.panel === here.panel && next.course === here.course) continue;
    turned.push(...units.slice(from, to).reverse());
    from = to;
  }
  return turned;
}
