import type { HeadFill, Panel, Tie, Unit, Wall } from './model';

/** The wall seen in a mirror: left and right change places, names follow their new places. */
export function mirrored(wall: Wall): Wall {
  const length = new Map(wall.panels.map((panel) => [panel.id, panel.length]));
  const over = (panel: string) => length.get(panel) ?? 0;
  const count = new Map<string, number>();
  for (const unit of wall.units) {
    const course = courseName(unit.id);
    count.set(course, Math.max(count.get(course) ?? 0, unit.position));
  }
  const renamed = (id: string) => {
    const course = courseName(id);
    return `${course}.${(count.get(course) ?? 0) + 1 - Number(id.slice(course.length + 1))}`;
  };
  const flip = <T extends { readonly panel: string; readonly fromX: number; readonly toX: number }>(
    part: T,
  ): T => ({
    ...part,
    fromX: over(part.panel) - part.toX,
    toX: over(part.panel) - part.fromX,
  });
  return {
    ...wall,
    panels: [...wall.panels].reverse().map(mirroredPanel),
    units: byCourse(wall.units.map((unit) => mirroredUnit(unit, over(unit.panel), renamed(unit.id)))),
    heads: wall.heads.map((head) => mirroredHead(head, count)),
    openings: wall.openings.map((each) => ({ ...each, x: over(each.panel) - each.x - each.width })),
    supports: wall.supports.map(flip),
    ties: mirroredTies(wall.ties, over),
    flashings: wall.flashings.map(flip),
    projections: wall.projections.map((each) => ({ ...each, units: each.units.map(renamed) })),
  };
}

function courseName(id: string): string {
  return id.slice(0, id.indexOf('.'));
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

function mirroredUnit(unit: Unit, over: number, id: string): Unit {
  return {
    ...unit,
    id,
    position: Number(id.slice(id.indexOf('.') + 1)),
    x: over - unit.x - unit.length,
    y: unit.y - unit.fall,
    fall: 0 - unit.fall,
    twist: 0 - unit.twist,
    ...(unit.back ? { back: unit.back.map((pat) => ({ ...pat, x: unit.length - pat.x - pat.width })) } : {}),
  };
}

/** `A12.4/5` of a course of nine -> `A12.5/6`. */
function mirroredHead(head: HeadFill, count: ReadonlyMap<string, number>): HeadFill {
  const course = courseName(head.joint);
  const right = Number(head.joint.slice(head.joint.indexOf('/') + 1));
  const last = count.get(course) ?? 0;
  return { ...head, joint: `${course}.${last + 1 - right}/${last + 2 - right}` };
}

function mirroredTies(ties: readonly Tie[], over: (panel: string) => number): readonly Tie[] {
  const rows = new Map<string, Tie[]>();
  for (const tie of ties) {
    const row = `${tie.panel}-tie${tie.course}`;
    rows.set(row, [...(rows.get(row) ?? []), { ...tie, x: over(tie.panel) - tie.x }]);
  }
  return [...rows].flatMap(([row, group]) =>
    group.sort((a, b) => a.x - b.x).map((tie, index) => ({ ...tie, id: `${row}.${index + 1}` })),
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
