import { type Crack, cracksOf } from '../failing/state/cracks';
import { type Damage, type FailingWall, type Move, STILL } from '../failing/state/model';
import type { Mm } from '../units';
import type { UnitId } from '../wall/part-id';
import { besideOf } from './beside';
import type { Risk } from './risk';

/** What can be wrong with a unit or the joints round it, as one marks it. */
export const CONDITIONS = ['missing', 'loose', 'cracked', 'moved', 'flaked', 'mortar gone'] as const;
export type Condition = (typeof CONDITIONS)[number];

/** One thing that is wrong, on all the units that show it: a mark on any of them finds it. */
export interface Shown {
  readonly condition: Condition;
  readonly parts: readonly UnitId[];
  /** How wide, how far or how deep at most, mm; null where it is there or not. */
  readonly most: Mm | null;
}

/** From here on a face is called out of place, mm: common practice, as the causes have it. */
const OUT_OF_PLACE: Mm = 3;
const WORN: readonly Damage['kind'][] = ['soft-joint', 'white-mortar'];

/** All that is wrong with a wall, measured from its state: the cracks of a panel by the way they run, and what lies side by side together. */
export function shownOn(failing: FailingWall, { loose }: Risk): readonly Shown[] {
  const { state } = failing;
  const worn = (kinds: (kind: Damage['kind']) => boolean) =>
    state.damage.filter(({ kind, unit }) => kinds(kind) && !state.missing.has(unit));
  const flaked = worn((kind) => !WORN.includes(kind));
  const soft = worn((kind) => WORN.includes(kind));
  const moved = [...state.moves].filter(
    ([unit, move]) => farthest(move) >= OUT_OF_PLACE && !state.missing.has(unit),
  );
  const all: readonly Shown[] = [
    ...together(failing, [...state.missing.keys()]).map(
      (parts): Shown => ({ condition: 'missing', parts, most: null }),
    ),
    ...together(failing, [...loose]).map((parts): Shown => ({ condition: 'loose', parts, most: null })),
    ...cracked(failing),
    ...together(
      failing,
      moved.map(([unit]) => unit),
    ).map(
      (parts): Shown => ({
        condition: 'moved',
        parts,
        most: Math.max(...parts.map((part) => farthest(state.moves.get(part) ?? STILL))),
      }),
    ),
    ...worse('flaked', flaked),
    ...worse('mortar gone', soft),
  ];
  return all.filter(({ parts }) => parts.length > 0);
}

/** How far a unit has gone, the most of along, up or down, and out or in, mm. */
export function farthest({ u, v, w }: Move): Mm {
  return Math.max(Math.abs(u), Math.abs(v), Math.abs(w));
}

/** The cracks of each panel that run one way, the widest way first. */
function cracked(failing: FailingWall): readonly Shown[] {
  const ways = new Map<string, Crack[]>();
  for (const crack of cracksOf(failing)) {
    const way = `${crack.panel} ${crack.way}`;
    ways.set(way, [...(ways.get(way) ?? []), crack]);
  }
  return [...ways.values()].map((cracks) => ({
    condition: 'cracked',
    parts: [...new Set(cracks.flatMap(({ steps }) => steps.flatMap((step) => besideOf(failing, step))))],
    most: Math.max(...cracks.map(({ width }) => width)),
  }));
}

function worse(condition: Condition, damage: readonly Damage[]): readonly Shown[] {
  if (damage.length === 0) return [];
  const parts = [...new Set(damage.map(({ unit }) => unit))];
  const deepest = Math.max(...damage.map(({ depth }) => depth));
  return [{ condition, parts, most: deepest > 0 ? deepest : null }];
}

/** Units in groups that touch each other, in the order in which they come. */
function together({ survey }: FailingWall, wanted: readonly UnitId[]): readonly (readonly UnitId[])[] {
  const left = new Set(wanted);
  const beside = new Map<UnitId, UnitId[]>();
  const touch = (one: UnitId, other: UnitId) => {
    for (const [from, to] of [
      [one, other],
      [other, one],
    ] as const) {
      const known = beside.get(from);
      if (known) known.push(to);
      else beside.set(from, [to]);
    }
  };
  for (const { placed } of survey.panels)
    for (const { unit, right, below } of placed) {
      if (right !== null) touch(unit.id, right.unit.id);
      for (const lower of below) touch(unit.id, lower.unit.id);
    }
  return wanted.flatMap((first) => {
    if (!left.delete(first)) return [];
    const group = [first];
    for (const each of group)
      for (const next of beside.get(each) ?? []) if (left.delete(next)) group.push(next);
    return [group];
  });
}
