import type { Contact, FailingWall } from '../../../lib/failing/state/model';
import type { Support, Unit, Wall } from '../../../lib/wall/model';

// Margins anew, from the definitions at the heads of lib/failing/margins and figures typed from the sources: by looking at every pair of units.

const FLEXURE = 0.57;
const TENSION = 0.57 / 2.06;
const SHEAR = 0.57 * 1.34;
const STUCK = 0.345;
const RUB = 0.75;
const WIND = 0.001186;
const GRAVITY = 9.80665;

export interface NaiveMargin {
  readonly margin: number;
  readonly mode: string;
}

/** A sloping end takes half of its run off the face. */
const face = ({ length, height, cut }: Unit) =>
  (length - ((cut?.left ?? 0) + (cut?.right ?? 0)) / 2) * height;
const topFrom = ({ x, cut }: Unit) => x + (cut?.left ?? 0);
const topTo = ({ x, length, cut }: Unit) => x + length - (cut?.right ?? 0);
const weight = (unit: Unit) => face(unit) * unit.depth * 1900e-9 * GRAVITY;
const topCourse = ({ kind, course }: Unit) => (kind === 'soldier' || kind === 'quoin' ? course + 2 : course);
const overlap = (unit: { x: number; length: number }, from: number, to: number) =>
  Math.max(0, Math.min(unit.x + unit.length, to) - Math.max(unit.x, from));

export function naiveMargins({ survey: { wall }, state }: FailingWall): ReadonlyMap<string, NaiveMargin> {
  const contacts = new Map(state.contacts.map((each) => [`${each.kind} ${each.unit} ${each.other}`, each]));
  const standing = wall.units.filter(({ id }) => !state.missing.has(id));
  const courses = new Map<string, Unit[]>();
  for (const unit of standing) {
    const name = `${unit.panel}${topCourse(unit)}`;
    courses.set(name, [...(courses.get(name) ?? []), unit]);
  }
  const below = new Map(
    standing.map((unit) => [
      unit.id,
      (courses.get(`${unit.panel}${unit.course - 1}`) ?? []).filter(
        (lower) => overlap(unit, topFrom(lower), topTo(lower)) > 0,
      ),
    ]),
  );
  const margins = new Map<string, NaiveMargin>();
  const loads = loadsOf(wall, standing, below);
  for (const unit of standing) {
    const ways =
      wall.masonry === 'adhered'
        ? stuck(unit, contacts.get(`back ${unit.id} ${unit.id}`))
        : laid(unit, wall, { standing, below, contacts, load: loads.get(unit.id) ?? 0, state });
    ways.sort((a, b) => a.margin - b.margin);
    margins.set(unit.id, ways[0] as NaiveMargin);
  }
  return margins;
}

function supportUnder(unit: Unit, { supports, gauge }: Wall): Support | undefined {
  return supports.find(({ panel, kind, fromX, toX, y }) => {
    if (panel !== unit.panel || overlap(unit, fromX, toX) <= 0 || unit.y <= y) return false;
    return kind === 'ledge' ? unit.course === 1 : unit.y - y < gauge / 2;
  });
}

function loadsOf(wall: Wall, standing: readonly Unit[], below: ReadonlyMap<string, readonly Unit[]>) {
  const loads = new Map<string, number>();
  for (const unit of [...standing].sort((a, b) => b.course - a.course)) {
    const under = below.get(unit.id) ?? [];
    const support = supportUnder(unit, wall);
    let total = support === undefined ? 0 : overlap(unit, support.fromX, support.toX);
    for (const lower of under) total += overlap(unit, topFrom(lower), topTo(lower));
    for (const lower of under) {
      const share = overlap(unit, topFrom(lower), topTo(lower)) / total;
      loads.set(lower.id, (loads.get(lower.id) ?? 0) + share * (weight(unit) + (loads.get(unit.id) ?? 0)));
    }
  }
  return loads;
}

interface Around {
  readonly standing: readonly Unit[];
  readonly below: ReadonlyMap<string, readonly Unit[]>;
  readonly contacts: ReadonlyMap<string, Contact>;
  readonly load: number;
  readonly state: FailingWall['state'];
}

function laid(unit: Unit, wall: Wall, { standing, below, contacts, load, state }: Around): NaiveMargin[] {
  const bondOf = (name: string) => {
    const contact = contacts.get(name);
    return contact?.state === 'bonded' ? contact.sound : 0;
  };
  const out = (each: Unit) => state.moves.get(each.id)?.w ?? 0;
  const front = unit.set + out(unit);
  const back = front - unit.depth;
  const rests: { from: number; to: number; deep: number }[] = [];
  let bedBelow = 0;
  for (const lower of below.get(unit.id) ?? []) {
    const from = Math.max(unit.x, topFrom(lower));
    const to = Math.min(unit.x + unit.length, topTo(lower));
    bedBelow += (to - from) * Math.min(unit.depth, lower.depth) * bondOf(`bed ${unit.id} ${lower.id}`);
    rests.push({ from, to, deep: Math.min(front, lower.set + out(lower)) - back });
  }
  const support = supportUnder(unit, wall);
  if (support !== undefined) {
    const from = Math.max(unit.x, support.fromX);
    const to = Math.min(unit.x + unit.length, support.toX);
    const laidDeep = Math.min(unit.set, support.front) - Math.max(unit.set - unit.depth, support.back);
    bedBelow += (to - from) * Math.max(0, laidDeep) * bondOf(`bearing ${unit.id} ${support.id}`);
    rests.push({ from, to, deep: Math.min(front, support.front) - back });
  }
  const standsOn = rests.filter(({ from, to, deep }) => to > from && deep > 0);
  let bedAbove = 0;
  for (const upper of standing) {
    if (upper.panel !== unit.panel || upper.course !== topCourse(unit) + 1) continue;
    const wide = overlap(upper, topFrom(unit), topTo(unit));
    bedAbove += wide * Math.min(unit.depth, upper.depth) * bondOf(`bed ${upper.id} ${unit.id}`);
  }
  const heads = headsOf(unit, wall, state.missing, bondOf);
  const ties = wall.ties
    .filter(
      ({ panel, course, x }) =>
        panel === unit.panel && course === unit.course && x >= unit.x && x < unit.x + unit.length,
    )
    .reduce((sum, tie) => sum + tie.width * tie.embedment * bondOf(`tie ${unit.id} ${tie.id}`), 0);
  const own = weight(unit);
  const rub = standsOn.length > 0 ? RUB * (own + 2 * load) : 0;
  const draw = WIND * face(unit);
  const ways = [
    { mode: 'drawn out by suction', margin: (rub + SHEAR * (bedBelow + bedAbove + heads + ties)) / draw },
  ];
  const middle = unit.x + unit.length / 2;
  const carried = standsOn.some(({ from }) => from <= middle) && standsOn.some(({ to }) => to >= middle);
  if (!carried) {
    ways.push({ mode: 'hangs in its joints', margin: (SHEAR * heads + TENSION * bedAbove) / own });
    return ways;
  }
  const deep = Math.min(unit.depth, Math.max(...standsOn.map((rest) => rest.deep)));
  const leans = Math.max(0, ((state.moves.get(unit.id)?.lean ?? 0) / 1000) * (unit.height / 2));
  const lever = deep - unit.depth / 2 - leans;
  const resistance = (FLEXURE * bedBelow * deep) / 6 + (lever > 0 ? lever * (own + load) : 0);
  const demand = (draw * unit.height) / 2 + (lever < 0 ? -lever * (own + load) : 0);
  ways.push({ mode: 'tips off its bed', margin: resistance / demand });
  return ways;
}

/** Sound area of the joints at both ends of a unit. */
function headsOf(
  unit: Unit,
  { units, family, heads }: Wall,
  missing: FailingWall['state']['missing'],
  bondOf: (name: string) => number,
): number {
  const row = units.filter(({ panel, course }) => panel === unit.panel && course === unit.course);
  const at = row.findIndex(({ id }) => id === unit.id);
  let area = 0;
  for (const [left, right] of [
    [row[at - 1], unit],
    [unit, row[at + 1]],
  ] as const) {
    if (left === undefined || right === undefined || missing.has(left.id) || missing.has(right.id)) continue;
    if (right.x - left.x - left.length >= family.length / 2) continue;
    const joint = `${left.id}/${right.position}`;
    const filled = heads.find((head) => head.joint === joint)?.filled ?? 100;
    area +=
      ((Math.min(left.height, right.height) * Math.min(left.depth, right.depth) * filled) / 100) *
      bondOf(`head ${left.id} ${right.id}`);
  }
  return area;
}

function stuck(unit: Unit, back: Contact | undefined): NaiveMargin[] {
  const held = back?.state === 'bonded' ? (back.held ?? []) : [];
  const sound = back?.sound ?? 0;
  const xs = [...new Set(held.flatMap(({ x, width }) => [x, x + width]))].sort((a, b) => a - b);
  const ys = [...new Set(held.flatMap(({ y, height }) => [y, y + height]))].sort((a, b) => a - b);
  const cells: { y: number; wide: number; high: number }[] = [];
  for (let row = 1; row < ys.length; row++) {
    for (let column = 1; column < xs.length; column++) {
      const [x, y] = [xs[column - 1] ?? 0, ys[row - 1] ?? 0];
      const covered = held.some(
        (pat) => pat.x <= x && x < pat.x + pat.width && pat.y <= y && y < pat.y + pat.height,
      );
      if (covered) cells.push({ y, wide: (xs[column] ?? 0) - x, high: (ys[row] ?? 0) - y });
    }
  }
  const area = cells.reduce((sum, { wide, high }) => sum + wide * high, 0);
  const own = weight(unit);
  const ways = [
    { mode: 'shears down its back', margin: (STUCK * area * sound) / own },
    { mode: 'drawn off by suction', margin: (TENSION * area * sound) / (WIND * face(unit)) },
  ];
  let modulus = 0;
  if (area > 0) {
    const centre = cells.reduce((sum, { y, wide, high }) => sum + wide * high * (y + high / 2), 0) / area;
    // ∫(y − c)² over each cell, exactly.
    const cube = (value: number) => value * value * value;
    const second = cells.reduce(
      (sum, { y, wide, high }) => sum + (wide * (cube(y + high - centre) - cube(y - centre))) / 3,
      0,
    );
    const far = Math.max(
      ...cells.flatMap(({ y, high }) => [Math.abs(y - centre), Math.abs(y + high - centre)]),
    );
    modulus = second / far;
  }
  ways.push({
    mode: 'peels off its back',
    margin: (TENSION * sound * modulus) / (own * (unit.depth / 2 + 10)),
  });
  return ways;
}
