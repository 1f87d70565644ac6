import type { Mm } from '../units';
import {
  isTall,
  type Opening,
  type Panel,
  type Support,
  TALL_COURSES,
  type Unit,
  type Wall,
} from '../wall/model';

/** A course is told to lie where it does to the nearest of such steps, mm: near enough to point at it, too rough to measure by. */
const UP: Mm = 20;
/** The same along the wall, mm. */
const ALONG: Mm = 5;
/** A lintel is told to reach so far past its opening on either side, whatever it does, mm. */
const PAST: Mm = 150;
/** A ledge past the ends of its panel, mm. */
const LEDGE_PAST: Mm = 20;

/**
 * What a device is given of a wall that the site draws: the parts one points at and about where they are, each like every other of its
 * kind. It comes from the same wall laid without its faults, so that no part is there or wanting because of a fault; of the wall itself
 * only how high its courses lie, to 20 mm.
 */
export function bareWall(wall: Wall, withoutFaults: Wall): Wall {
  const { panels, supports, openings, ties, batches, family, gauge } = withoutFaults;
  const rises = risesOf(wall);
  const bed = gauge - family.height;
  const level = (panel: string, course: number): Mm =>
    bed + (course - 1) * gauge + (rises.get(`${panel}${course}`) ?? 0);
  return {
    ...withoutFaults,
    panels: panels.map(squared),
    units: bareUnits(withoutFaults, bed, level),
    heads: [],
    supports: panels.flatMap((panel) => {
      const own = supports.filter((each) => each.panel === panel.id);
      const ledge = own.find(({ kind }) => kind === 'ledge');
      return [
        ...(ledge ? [bareLedge(ledge, panel, family.depth)] : []),
        ...own.flatMap((each) => bareLintel(each, openings)),
      ];
    }),
    ties: ties.map((tie) => ({
      ...tie,
      x: about(tie.x),
      y: level(tie.panel, tie.course) + family.height + bed / 2,
      thickness: 1,
      width: 22,
      embedment: 50,
    })),
    flashings: [],
    droppings: [],
    batches: batches.map((batch) => ({ ...batch, portland: 1, lime: 0, sand: 1, air: 0, minutes: 0 })),
    projections: [],
  };
}

/** How far each course lies over where the gauge puts it, mm, by panel and course. */
function risesOf({ units, gauge, family }: Wall): ReadonlyMap<string, Mm> {
  const overs = new Map<string, Mm[]>();
  for (const { panel, course, y, fall } of units) {
    const key = `${panel}${course}`;
    const over = y - fall / 2 - (course * gauge - family.height);
    overs.set(key, [...(overs.get(key) ?? []), over]);
  }
  const mean = (each: readonly Mm[]): Mm => each.reduce((sum, over) => sum + over, 0) / each.length;
  return new Map([...overs].map(([key, each]) => [key, Math.round(mean(each) / UP) * UP]));
}

function about(x: Mm): Mm {
  return Math.round(x / ALONG) * ALONG;
}

function bareUnits(
  { units, joint, family, gauge }: Wall,
  bed: Mm,
  level: (panel: string, course: number) => Mm,
): readonly Unit[] {
  return units.map((unit, index): Unit => {
    const { id, panel, course, position, x, length, depth } = unit;
    const next = units[index + 1];
    const isBeside =
      next !== undefined &&
      next.panel === panel &&
      next.course === course &&
      next.x - x - length < family.length / 2;
    const from = about(x);
    const to = isBeside ? about(next.x) : about(x + length + joint);
    return {
      ...{ id, panel, course, position, depth },
      kind: isTall(unit) ? unit.kind : 'stretcher',
      x: from,
      y: level(panel, course),
      length: to - joint - from,
      height: isTall(unit) ? TALL_COURSES * gauge - bed : family.height,
      ...{ fall: 0, twist: 0, lean: 0, set: 0, texture: 'smooth', condition: 'sound', shade: 0 },
    };
  });
}

function squared(panel: Panel): Panel {
  const { leftX, leftZ, rightZ } = panel.plan;
  const plan = leftZ === rightZ ? panel.plan : { leftX, leftZ, rightX: leftX, rightZ: leftZ - panel.length };
  return { ...panel, plan, recess: 0 };
}

function bareLedge(ledge: Support, { length }: Panel, depth: Mm): Support {
  return { ...ledge, fromX: 0 - LEDGE_PAST, toX: length + LEDGE_PAST, y: 0, back: -2 * depth, front: 0 };
}

function bareLintel(lintel: Support, openings: readonly Opening[]): readonly Support[] {
  const over = openings.find(({ id }) => id === lintel.opening);
  if (lintel.kind !== 'lintel' || over === undefined) return [];
  const { id, panel, kind, material, opening } = lintel;
  const place = { fromX: over.x - PAST, toX: over.x + over.width + PAST, y: over.y + over.height };
  return [
    { ...{ id, panel, kind, material }, ...place, back: -100, front: -10, ...(opening && { opening }) },
  ];
}
