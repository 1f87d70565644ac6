import type { FailingWall } from '../../../lib/failing/state/model';
import type { Unit } from '../../../lib/wall/model';
import { naiveCracks, type Piece } from './cracks';

// K anew: what each cause needs and what bars it, as lib/failing/causes says in words, from cracks and moves measured a second time.

interface Line {
  readonly pieces: readonly Piece[];
  readonly panel: string;
  readonly low: number;
  readonly high: number;
  readonly left: number;
  readonly right: number;
  readonly isLevel: boolean;
}

const average = (values: readonly number[]) =>
  values.length === 0 ? 0 : values.reduce((sum, each) => sum + each, 0) / values.length;

/** The causes that the wall allows, in the order of the table of causes. */
export function naiveAllowed(failing: FailingWall): readonly string[] {
  const { survey, state } = failing;
  const { wall } = survey;
  const lines = naiveCracks(failing).map((pieces) => lineOf(pieces, wall.family.height));
  const move = (unit: Unit) => state.moves.get(unit.id) ?? { u: 0, v: 0, w: 0, turn: 0, lean: 0 };

  // Ends and middle of the panel that has moved most.
  let ends = { left: 0, middle: 0, right: 0 };
  for (const panel of wall.panels) {
    const row = wall.units.filter((unit) => unit.panel === panel.id && unit.course === 1);
    const middle = nearestTo(row, panel.length / 2);
    const [first, last] = [row[0], row[row.length - 1]];
    if (first === undefined || last === undefined || middle === undefined) continue;
    const here = { left: move(first).v, middle: move(middle).v, right: move(last).v };
    const most = (all: typeof ends) => Math.max(...Object.values(all).map(Math.abs));
    if (most(here) > most(ends)) ends = here;
  }
  const leftDown = ends.left < ends.middle - 1;
  const rightDown = ends.right < ends.middle - 1;
  const isLevel = Math.max(...Object.values(ends)) - Math.min(...Object.values(ends)) <= 1;
  const middleDown = ends.middle < ends.left - 1 && ends.middle < ends.right - 1;

  const isOver = (line: Line) =>
    wall.openings.some(({ id, panel, x, y, width, height }) => {
      const head = y + height;
      const up = average(line.pieces.filter(({ kind }) => kind === 'bed').map(({ v }) => v));
      const along = average(line.pieces.filter(({ kind }) => kind !== 'bed').map(({ u }) => u));
      return (
        wall.supports.some((each) => each.opening === id && state.supports.has(each.id)) &&
        panel === line.panel &&
        line.low > head - wall.gauge / 2 &&
        line.low < head + 3.5 * wall.gauge &&
        line.left > x - 2 * wall.gauge &&
        line.right < x + width + 2 * wall.gauge &&
        up > 2 * Math.abs(along)
      );
    });

  // The tallest tear.
  let tear: (Omit<Line, 'pieces' | 'isLevel'> & { foot: number; head: number }) | null = null;
  for (const panel of wall.panels) {
    const own = lines.filter((line) => line.panel === panel.id && !line.isLevel && !isOver(line));
    const pieces = own.flatMap((line) => line.pieces);
    const upright = pieces.filter(({ kind }) => kind !== 'bed');
    if (own.length === 0 || upright.length < 2) continue;
    const low = Math.min(...own.map((line) => line.low));
    const high = Math.max(...own.map((line) => line.high));
    if (high - low < 3 * wall.gauge || (tear !== null && high - low <= tear.high - tear.low)) continue;
    const line = leastSquares(upright.map(({ ends: [a, b], u }) => [(a[1] + b[1]) / 2, u]));
    const left = Math.min(...own.map((each) => each.left));
    const right = Math.max(...own.map((each) => each.right));
    tear = { panel: panel.id, low, high, left, right, foot: line(low), head: line(high) };
  }
  const wideHead = tear !== null && tear.head > 1.5 * tear.foot + 0.1;
  const wideFoot = tear !== null && tear.foot > 1.5 * tear.head + 0.1;
  const even = tear !== null && !wideHead && !wideFoot;

  let step = 0;
  const torn = wall.panels.find(({ id }) => id === tear?.panel);
  if (tear !== null && torn !== undefined) {
    const reach = 2.5 * wall.family.length;
    const atRight = torn.rightEnd === 'corner' && tear.left > torn.length - reach;
    const atLeft = torn.leftEnd === 'corner' && tear.right < reach;
    for (const unit of wall.units) {
      if (unit.panel !== torn.id) continue;
      const beyond = atRight ? unit.x >= tear.left : atLeft && unit.x + unit.length <= tear.right;
      if (beyond) step = Math.max(step, move(unit).w);
    }
  }
  const outAtCorner = step > 0.1 * 3;

  const lintel = wall.panels
    .flatMap(({ id }) => wall.supports.filter(({ panel, kind }) => panel === id && kind === 'lintel'))
    .find(({ id }) => state.supports.has(id));
  const moved = lintel === undefined ? undefined : state.supports.get(lintel.id);
  const lowInMiddle = moved !== undefined && moved.middle < Math.min(moved.left, moved.right) - 1;
  const endDown = moved !== undefined && Math.abs(moved.left - moved.right) > 1;
  const lintelUp = moved !== undefined && Math.min(moved.left, moved.right) > 0.1;
  const cracksOver =
    moved !== undefined && lines.some((line) => line.panel === lintel?.panel && isOver(line));

  const beds = lines.flatMap(({ pieces }) => pieces.filter(({ kind }) => kind === 'bed'));
  const overBearing = beds.some(({ panel, ends: [a, b], v }) =>
    wall.supports.some(
      (support) =>
        support.kind === 'lintel' &&
        support.panel === panel &&
        Math.abs(a[1] - support.y) <= wall.gauge &&
        (b[0] <= support.fromX + 2 * wall.gauge || a[0] >= support.toX - 2 * wall.gauge) &&
        v >= 0.1,
    ),
  );
  const rust = state.zones.filter(({ kind }) => kind === 'rust').map(({ box }) => box);
  const rustAtLintel = wall.supports.some(
    ({ kind, y }) => kind === 'lintel' && rust.some((box) => box.y <= y && y <= box.y + box.height),
  );

  let open = 0;
  let openAtTies = 0;
  for (const { id, length, courses } of wall.panels) {
    for (let under = 1; under < courses; under++) {
      const long = beds
        .filter(({ panel, course }) => panel === id && course === under + 1)
        .reduce((sum, { ends: [a, b] }) => sum + b[0] - a[0], 0);
      if (long < length / 2) continue;
      open += 1;
      if (wall.ties.some(({ panel, course }) => panel === id && course === under)) openAtTies += 1;
    }
  }
  const allBeds = Math.max(...wall.panels.map(({ courses }) => courses - 1));
  const openEverywhere = open > 0.6 * allBeds;
  const openAtTiesAlone = open >= 2 && open === openAtTies;

  let belly = 0;
  let bellyAt = { x: 0, y: 0, panel: '' };
  let lean = 0;
  let bow = Number.NEGATIVE_INFINITY;
  for (const { id, courses, length } of wall.panels) {
    const row = (course: number) => wall.units.filter((unit) => unit.panel === id && unit.course === course);
    const meanOut = (course: number) => average(row(course).map((unit) => move(unit).w));
    const [foot, head] = [meanOut(1), meanOut(courses)];
    if (Math.abs(head - foot) > Math.abs(lean)) lean = head - foot;
    for (const unit of wall.units) {
      if (unit.panel !== id) continue;
      const plane = courses === 1 ? foot : foot + ((head - foot) * (unit.course - 1)) / (courses - 1);
      if (move(unit).w - plane > belly) {
        belly = move(unit).w - plane;
        bellyAt = { x: unit.x + unit.length / 2, y: unit.y, panel: id };
      }
    }
    const top = row(courses);
    const middle = nearestTo(top, length / 2);
    const [first, last] = [top[0], top[top.length - 1]];
    if (first === undefined || last === undefined || middle === undefined) bow = Math.max(bow, 0);
    else bow = Math.max(bow, move(middle).w - (move(first).w + move(last).w) / 2);
  }
  const near = 2 * wall.gauge;
  const openAtBelly = beds.some(
    ({ panel, ends: [a, b], v }) =>
      panel === bellyAt.panel &&
      Math.abs(a[1] - bellyAt.y) < near &&
      a[0] - near < bellyAt.x &&
      bellyAt.x < b[0] + near &&
      v >= 0.1,
  );
  const bellies = belly > 3 && belly > Math.abs(lean);
  const leans = lean > 3 && lean > 3 * belly;
  const bows = bow > 3;

  const flaked = [...new Set(state.damage.filter(({ kind }) => kind === 'spall').map(({ unit }) => unit))]
    .map((id) => wall.units.find((unit) => unit.id === id))
    .filter((unit) => unit !== undefined);
  const mostIn = (kind: string) => {
    const zones = state.zones.filter((zone) => zone.kind === kind);
    const inside = flaked.filter((unit) =>
      zones.some(
        ({ panel, box }) =>
          panel === unit.panel &&
          unit.x >= box.x - 1 &&
          unit.y >= box.y - 1 &&
          unit.x + unit.length <= box.x + box.width + 1 &&
          unit.y + unit.height <= box.y + box.height + 1,
      ),
    );
    return flaked.length > 0 && inside.length / flaked.length > 0.9;
  };
  const fromTop = Math.max(
    0,
    ...flaked.map(
      (unit) => (wall.panels.find(({ id }) => id === unit.panel)?.courses ?? 0) - unit.course + 1,
    ),
  );
  const flakes = flaked.length > 0;
  const [wet, bloom, patched] = [mostIn('wet'), mostIn('bloom'), mostIn('patched')];
  const damaged = (kind: string) => state.damage.some((each) => each.kind === kind);
  const [soft, white, crushed] = [damaged('soft-joint'), damaged('white-mortar'), damaged('crushed')];
  const lime = state.zones.some(({ kind }) => kind === 'lime-streak');
  const drivenIn = [...state.moves.values()].some(({ w }) => w < -3);
  const clay = state.stuff === 'clay';
  const hollow =
    state.missing.size > 0 ||
    state.contacts.some(({ kind, unit, held }) => {
      const laid = wall.units.find(({ id }) => id === unit);
      if (kind !== 'back' || laid === undefined) return false;
      // Sloping ends: the box that is as long as the unit halfway up.
      const [low, high] = [(laid.cut?.left ?? 0) / 2, laid.length - (laid.cut?.right ?? 0) / 2];
      const clip = (laid.back ?? [])
        .map((pat) => ({
          x: Math.max(low, pat.x),
          y: Math.max(0, pat.y),
          width: Math.min(high, pat.x + pat.width) - Math.max(low, pat.x),
          height: Math.min(laid.height, pat.y + pat.height) - Math.max(0, pat.y),
        }))
        .filter(({ width, height }) => width > 0 && height > 0);
      return coveredBy(held ?? []) < 0.8 * coveredBy(clip);
    });
  const oneDown = leftDown !== rightDown;
  const bothDown = leftDown && rightDown;

  const table: readonly (readonly [string, boolean])[] = [
    ['corner-settlement', oneDown && wideHead && !even && !bothDown && !outAtCorner],
    ['tree-drying', oneDown && wideHead && !even && !bothDown && !outAtCorner],
    ['sagging', middleDown && wideFoot && !isLevel],
    ['hogging', bothDown && wideHead && !isLevel],
    ['clay-expansion', clay && outAtCorner && !oneDown],
    ['drying-shrinkage', !clay && even && isLevel && !outAtCorner],
    ['sulphates', openEverywhere && white && !openAtTiesAlone],
    ['lintel-sags', lowInMiddle && cracksOver && !lintelUp && !endDown],
    ['lintel-short', endDown && cracksOver && !lintelUp],
    ['rusting-lintel', lintelUp && overBearing && rustAtLintel && !lowInMiddle],
    ['rusting-ties', openAtTiesAlone && !openEverywhere && !white],
    ['missing-ties', bellies && openAtBelly && !leans],
    ['leaning-out', leans && !bellies && !bows],
    ['frost', flakes && wet && !bloom && !patched],
    ['salts', flakes && bloom && !wet && !patched],
    ['water-at-cap', fromTop > 0 && fromTop <= 3 && wet && lime && !bloom],
    ['weak-mortar', soft && !flakes && !white],
    ['hard-repointing', flakes && patched && !wet && !bloom],
    ['peeling-back', hollow && !flakes],
    ['blow', crushed && drivenIn && !leans && !bellies],
    ['bowing', clay && bows],
  ];
  return table.filter(([, allowed]) => allowed).map(([cause]) => cause);
}

function lineOf(pieces: readonly Piece[], height: number): Line {
  const points = pieces.flatMap(({ ends }) => ends);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  return {
    pieces,
    panel: pieces[0]?.panel ?? '',
    low,
    high,
    left: Math.min(...xs),
    right: Math.max(...xs),
    isLevel: high - low < height,
  };
}

function nearestTo(units: readonly Unit[], x: number): Unit | undefined {
  return [...units].sort((a, b) => Math.abs(a.x + a.length / 2 - x) - Math.abs(b.x + b.length / 2 - x))[0];
}

function leastSquares(points: readonly (readonly [number, number])[]): (z: number) => number {
  const n = points.length;
  let [sz, sw, szz, szw] = [0, 0, 0, 0];
  for (const [z, w] of points) {
    sz += z;
    sw += w;
    szz += z * z;
    szw += z * w;
  }
  const spread = n * szz - sz * sz;
  // All at one height: no slope. Sums of squares lose the last digits.
  const slope = spread > 1e-6 ? (n * szw - sz * sw) / spread : 0;
  return (z) => (sw - slope * sz) / n + slope * z;
}

function coveredBy(boxes: readonly { x: number; y: number; width: number; height: number }[]): number {
  const xs = [...new Set(boxes.flatMap(({ x, width }) => [x, x + width]))].sort((a, b) => a - b);
  const ys = [...new Set(boxes.flatMap(({ y, height }) => [y, y + height]))].sort((a, b) => a - b);
  let area = 0;
  for (let i = 1; i < xs.length; i++) {
    for (let j = 1; j < ys.length; j++) {
      const [x, y] = [xs[i - 1] ?? 0, ys[j - 1] ?? 0];
      if (boxes.some((box) => box.x <= x && x < box.x + box.width && box.y <= y && y < box.y + box.height))
        area += ((xs[i] ?? 0) - x) * ((ys[j] ?? 0) - y);
    }
  }
  return area;
}
