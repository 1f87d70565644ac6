import type { Unit, Wall } from '../../lib/wall/model';

/** A quarter of a unit, centre to centre: NZS 4210 1.3 and IRC R606.3.7.1. Rounding to eighths may take this much of it, mm. */
const LEAST_LAP = 0.25;
const ROUNDING = 0.25;
/** Courses that one joint may run straight through: a quoin's three. Common practice. */
const MOST_IN_LINE = 3;
/** Within this a piece at a corner is what it is meant to be, and two joints are in line, mm. */
const SAME = 3;

/** What a mason would not sign, measured from the faces alone: bond at the corner and in the field, the height of a door, ties on steel. */
export function badWork(wall: Wall): readonly string[] {
  return [...corners(wall), ...laps(wall), ...doors(wall), ...tiesOnSteel(wall)];
}

/** In each course one face shows a whole unit and the other the end of one, and they take turns; two quoins are long and short in turn. */
function corners(wall: Wall): readonly string[] {
  const [left, right] = wall.panels;
  if (left === undefined || right === undefined) return [];
  const { length, depth } = wall.family;
  // A slip is cut round the corner of a whole brick, which is half as wide as it is long, less half a joint.
  const end = wall.masonry === 'adhered' ? (length - wall.joint) / 2 : depth;
  const bad: string[] = [];
  let before = 0;
  for (let course = 1; course <= left.courses; course++) {
    const one = wall.units.filter((unit) => unit.panel === left.id && unit.course === course).at(-1);
    const other = wall.units.find((unit) => unit.panel === right.id && unit.course === course);
    if (one === undefined || other === undefined) continue;
    const atCorner = one.x + one.length > left.length - SAME && other.x < SAME;
    if (!atCorner) {
      // Beside a quoin that stands through from below.
      if (wall.units.some(({ kind }) => kind === 'quoin')) continue;
      bad.push(`course ${course} does not reach the corner`);
      continue;
    }
    const sizes = one.kind === 'quoin' ? [1.5 * (length + wall.joint) - wall.joint, length] : [length, end];
    const is = (unit: Unit, size = 0) => Math.abs(unit.length - size) <= SAME;
    const turn =
      is(one, sizes[0]) && is(other, sizes[1]) ? 1 : is(other, sizes[0]) && is(one, sizes[1]) ? -1 : 0;
    if (turn === 0 || turn === before)
      bad.push(`corner of course ${course}: ${one.length} and ${other.length}`);
    before = turn;
  }
  return bad;
}

/** Head joints of neighbouring courses lie a quarter of a unit apart, and none runs on through more than three courses. */
function laps(wall: Wall): readonly string[] {
  const least = wall.family.length * LEAST_LAP - ROUNDING;
  const bad: string[] = [];
  for (const panel of wall.panels) {
    const lines = Array.from({ length: panel.courses + 1 }, (_, course) => jointsOf(wall, panel.id, course));
    for (const [course, joints] of lines.entries()) {
      for (const joint of joints) {
        const near = (lines[course + 1] ?? []).find(({ x, ofQuoin }) => {
          return !(joint.ofQuoin && ofQuoin) && Math.abs(x - joint.x) < least;
        });
        if (near !== undefined) bad.push(`${panel.id}${course}: ${joint.x} and ${near.x} over it`);
        let high = course;
        while (lines[high + 1]?.some(({ x }) => Math.abs(x - joint.x) <= SAME)) high += 1;
        if (high - course >= MOST_IN_LINE)
          bad.push(`${panel.id}: straight joint from course ${course} to ${high}`);
      }
    }
  }
  return bad;
}

/** Middles of the head joints of a course, quoins that stand through it among its units; none beside a soldier, which has no bond. */
function jointsOf(wall: Wall, panel: string, course: number): readonly { x: number; ofQuoin: boolean }[] {
  const row = wall.units
    .filter((unit) => {
      const high = unit.kind === 'quoin' || unit.kind === 'soldier' ? unit.course + 2 : unit.course;
      return unit.panel === panel && unit.course <= course && course <= high;
    })
    .sort((a, b) => a.x - b.x);
  return row.flatMap((left, index) => {
    const right = row[index + 1];
    if (right === undefined || left.kind === 'soldier' || right.kind === 'soldier') return [];
    const from = left.x + left.length;
    if (right.x - from > wall.family.length / 2) return [];
    return [{ x: (from + right.x) / 2, ofQuoin: left.kind === 'quoin' || right.kind === 'quoin' }];
  });
}

/** 2.0 to 2.1 m is common practice; a thick bed on the ledge adds 5 mm. */
function doors(wall: Wall): readonly string[] {
  return wall.openings.flatMap(({ id, kind, height }) =>
    kind === 'door' && (height < 2000 || height > 2105) ? [`${id} is ${height} high`] : [],
  );
}

/** A tie lies between two units, never on a lintel. */
function tiesOnSteel(wall: Wall): readonly string[] {
  return wall.ties.flatMap((tie) =>
    wall.supports.some(
      ({ kind, panel, fromX, toX, y }) =>
        kind === 'lintel' &&
        panel === tie.panel &&
        fromX <= tie.x &&
        tie.x <= toX &&
        Math.abs(tie.y - y) < wall.gauge / 2,
    )
      ? [`${tie.id} lies on the lintel`]
      : [],
  );
}
