import { GRAVITY } from '../../trade/gravity';
import type { Mm } from '../../units';
import { meanLength, topLeft, topRight } from '../../wall/cut';
import type { Unit } from '../../wall/model';
import type { SupportId, UnitId } from '../../wall/part-id';
import { shared } from '../state/contacts';
import type { FailingWall } from '../state/model';
import { DENSITY } from './strengths';

const MM3_PER_M3 = 1e9;

/** Area of its face, mm². */
export function faceOf(unit: Unit): number {
  return meanLength(unit) * unit.height;
}

/** kg. */
export function massOf(unit: Unit): number {
  return (faceOf(unit) * unit.depth * DENSITY) / MM3_PER_M3;
}

/** N. */
export function weightOf(unit: Unit): number {
  return massOf(unit) * GRAVITY;
}

/** What of a unit’s weight and load goes down to one of those below, or to what carries the wall, N; `x` is the middle of where they touch. */
export interface LoadPath {
  readonly from: UnitId;
  readonly to: UnitId | SupportId;
  readonly x: Mm;
  readonly force: number;
}

/**
 * What lies on each unit, N: the weight of every unit above it that has not come away, and what lies on that, shared out by the lengths over
 * which a unit rests on those below. Nothing arches. What has nothing left under it hangs, and presses on nothing. Adhered units carry nothing.
 * `tell` hears of each path on the way.
 */
export function loadsOn(
  { survey, state }: FailingWall,
  tell: (path: LoadPath) => void = () => undefined,
): ReadonlyMap<UnitId, number> {
  const loads = new Map<UnitId, number>();
  if (survey.wall.masonry === 'adhered') return loads;
  for (const { courses } of survey.panels) {
    for (const course of [...courses].reverse()) {
      for (const placed of course) {
        const { unit, below } = placed;
        if (state.missing.has(unit.id)) continue;
        const under = below.filter((lower) => !state.missing.has(lower.unit.id));
        const lengths = under.map((lower) => shared(placed, topLeft(lower.unit), topRight(lower.unit)));
        const support = placed.support;
        const onSupport = support === null ? 0 : shared(placed, support.fromX, support.toX);
        const total = lengths.reduce((sum, length) => sum + length, onSupport);
        const load = (loads.get(unit.id) ?? 0) + weightOf(unit);
        for (const [index, lower] of under.entries()) {
          const id = lower.unit.id;
          const force = (load * (lengths[index] ?? 0)) / total;
          loads.set(id, (loads.get(id) ?? 0) + force);
          if (force > 0)
            tell({
              from: unit.id,
              to: id,
              x: middleOf(unit, topLeft(lower.unit), topRight(lower.unit)),
              force,
            });
        }
        if (support !== null && onSupport > 0) {
          const x = middleOf(unit, support.fromX, support.toX);
          tell({ from: unit.id, to: support.id, x, force: (load * onSupport) / total });
        }
      }
    }
  }
  return loads;
}

/** The middle of what a unit and a stretch have in common. */
function middleOf({ x, length }: Unit, fromX: Mm, toX: Mm): Mm {
  return (Math.max(x, fromX) + Math.min(x + length, toX)) / 2;
}
