import type { FailingWall, Move } from '../../../lib/failing/state/model';
import type { Unit } from '../../../lib/wall/model';

// Cracks anew, from the definitions at the heads of lib/failing/state: every broken joint as a piece of line, pieces joined by looking at every pair.

export interface Piece {
  readonly kind: 'bed' | 'head' | 'unit';
  readonly panel: string;
  /** Of a bed: the course over it. */
  readonly course: number;
  readonly ends: readonly [readonly [number, number], readonly [number, number]];
  readonly widths: readonly [number, number];
  readonly u: number;
  readonly v: number;
}

const STILL: Move = { u: 0, v: 0, w: 0, turn: 0, lean: 0 };

export function naiveCracks({ survey: { wall }, state }: FailingWall): readonly (readonly Piece[])[] {
  const units = new Map(wall.units.map((unit) => [unit.id as string, unit]));
  const moveAt = (unit: Unit, x: number): Move => {
    const split = state.splits.get(unit.id);
    if (split !== undefined && x > split.x) return split.right;
    return state.moves.get(unit.id) ?? STILL;
  };
  const gone = (unit: Unit, x: number, y: number) => {
    const { u, v, turn } = moveAt(unit, x);
    const dx = x - (unit.x + unit.length / 2);
    const dy = y - (unit.y + unit.height / 2);
    return { u: u - (turn * dy) / 1000, v: v + (turn * dx) / 1000 };
  };
  const foot = (unit: Unit, x: number) => unit.y - (unit.fall / unit.length) * (x - unit.x);
  const pieces: (Piece & { readonly out: number })[] = [];

  for (const { kind, unit: id, other, state: how } of state.contacts) {
    const one = units.get(id);
    if (one === undefined || how === 'bonded' || state.missing.has(one.id)) continue;
    const two = units.get(other);
    if (two !== undefined && state.missing.has(two.id)) continue;
    const base = { panel: one.panel, course: one.course };
    if (kind === 'head' && two !== undefined) {
      const x = (one.x + one.length + two.x) / 2;
      const low = Math.max(one.y - one.fall, two.y);
      const high = Math.min(one.y - one.fall + one.height, two.y + two.height);
      const gap = (y: number) => gone(two, two.x, y).u - gone(one, one.x + one.length, y).u;
      const middle = (low + high) / 2;
      pieces.push({
        ...base,
        kind,
        ends: [
          [x, low],
          [x, high],
        ],
        widths: [gap(low), gap(high)],
        u: gap(middle),
        v: gone(two, two.x, middle).v - gone(one, x, middle).v,
        out: moveAt(two, two.x).w - moveAt(one, one.x + one.length).w,
      });
    }
    if (kind === 'bed' && two !== undefined) {
      const from = Math.max(one.x, two.x + (two.cut?.left ?? 0));
      const to = Math.min(one.x + one.length, two.x + two.length - (two.cut?.right ?? 0));
      const cuts = [one, two]
        .flatMap((unit) => state.splits.get(unit.id)?.x ?? [])
        .filter((x) => x > from && x < to);
      const ends = [from, ...cuts.sort((a, b) => a - b), to];
      for (let index = 1; index < ends.length; index++) {
        const [a, b] = [ends[index - 1] ?? 0, ends[index] ?? 0];
        const x = (a + b) / 2;
        const y = (foot(one, x) + foot(two, x) + two.height) / 2;
        const opens = (at: number) =>
          gone(one, at, one.y).v -
          gone(two, at, one.y).v +
          (Math.max(0, moveAt(two, at).lean - moveAt(one, at).lean) / 1000) * Math.min(one.depth, two.depth);
        const inside = Math.min(1, (b - a) / 4);
        pieces.push({
          ...base,
          kind,
          ends: [
            [a, y],
            [b, y],
          ],
          widths: [opens(a + inside), opens(b - inside)],
          u: gone(one, x, foot(one, x)).u - gone(two, x, foot(one, x)).u,
          v: opens(x),
          out: moveAt(one, x).w - moveAt(two, x).w,
        });
      }
    }
    if (kind === 'bearing') {
      const support = wall.supports.find((each) => each.id === other);
      if (support === undefined) continue;
      const [a, b] = [Math.max(one.x, support.fromX), Math.min(one.x + one.length, support.toX)];
      if (b <= a) continue;
      const moved = state.supports.get(support.id) ?? { left: 0, middle: 0, right: 0 };
      const half = (support.toX - support.fromX) / 2;
      const rises = (x: number) => {
        const along = (x - support.fromX) / half;
        const under =
          along < 1
            ? moved.left * (1 - along) + moved.middle * along
            : moved.middle * (2 - along) + moved.right * (along - 1);
        return gone(one, x, one.y).v - under;
      };
      const y = (one.y + support.y) / 2;
      pieces.push({
        ...base,
        kind: 'bed',
        ends: [
          [a, y],
          [b, y],
        ],
        widths: [rises(a), rises(b)],
        u: gone(one, (a + b) / 2, one.y).u,
        v: rises((a + b) / 2),
        out: moveAt(one, (a + b) / 2).w,
      });
    }
  }
  for (const [id, { x, right }] of state.splits) {
    const unit = units.get(id);
    if (unit === undefined || state.missing.has(unit.id)) continue;
    const left = state.moves.get(unit.id) ?? STILL;
    const gap = (up: number) => right.u - left.u - ((right.turn - left.turn) / 1000) * (up - unit.height / 2);
    pieces.push({
      kind: 'unit',
      panel: unit.panel,
      course: unit.course,
      ends: [
        [x, foot(unit, x)],
        [x, foot(unit, x) + unit.height],
      ],
      widths: [gap(0), gap(unit.height)],
      u: gap(unit.height / 2),
      v: right.v - left.v,
      out: right.w - left.w,
    });
  }
  const seen = pieces.filter(
    ({ widths, u, v, out }) => Math.max(...widths, Math.abs(u), Math.abs(v), Math.abs(out)) >= 0.1,
  );
  return joined(seen).filter((pieces) => pieces.some(({ widths }) => Math.max(...widths) >= 0.1));
}

/** Pieces of one panel with ends within 25 mm of each other, gathered till no two groups touch. */
function joined(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const group = pieces.map((_, index) => index);
  const rootOf = (index: number): number => {
    let root = index;
    while (group[root] !== root) root = group[root] ?? root;
    return root;
  };
  for (const [i, one] of pieces.entries()) {
    for (let j = i + 1; j < pieces.length; j++) {
      const two = pieces[j];
      if (two === undefined || one.panel !== two.panel) continue;
      const touches = one.ends.some(([ax, ay]) =>
        two.ends.some(([bx, by]) => (ax - bx) * (ax - bx) + (ay - by) * (ay - by) <= 625),
      );
      if (touches) group[rootOf(j)] = rootOf(i);
    }
  }
  const groups = new Map<number, Piece[]>();
  for (const [index, piece] of pieces.entries()) {
    const root = rootOf(index);
    groups.set(root, [...(groups.get(root) ?? []), piece]);
  }
  return [...groups.values()];
}
