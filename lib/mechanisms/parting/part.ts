import type { Mm } from '../../units';
import { topCourseOf } from '../../wall/model';
import type { UnitId } from '../../wall/part-id';
import type { PanelSurvey, Placed } from '../../wall/survey';
import { crackWhere, type Draft, shift } from '../draft';
import type { Field } from './field';
import type { Parting } from './weakest-path';

/** A bed is torn where a crack runs along it over more than a joint, mm. */
const OVER: Mm = 15;

/** Cracks every bed and head between units of different sides. */
export function crackBetween(draft: Draft, sides: ReadonlyMap<UnitId, number>): void {
  crackWhere(draft, ({ kind, unit, other }) => {
    if (kind !== 'bed' && kind !== 'head') return false;
    const one = sides.get(unit);
    const two = sides.get(other as UnitId);
    return one !== undefined && two !== undefined && one !== two;
  });
}

export function moveWith(draft: Draft, { unit }: Placed, field: Field): void {
  const { u, v } = field.at(unit.x + unit.length / 2, unit.y - unit.fall / 2 + unit.height / 2);
  shift(draft, unit.id, { u, v, turn: field.turn });
}

/** Moves the two sides of a parting, cracks what lies between them, and splits the units it goes through. */
export function tearApart(
  draft: Draft,
  { placed }: PanelSurvey,
  { passes }: Parting,
  left: Field,
  right: Field,
): void {
  const sides = new Map<UnitId, number>();
  for (const each of placed) {
    const { unit } = each;
    const pass = passes[unit.course - 1];
    if (pass === null || pass === undefined) continue;
    const middle = unit.x + unit.length / 2;
    const isCut = pass.through && pass.x > unit.x && pass.x < unit.x + unit.length;
    const isLeft = isCut || middle < pass.x;
    moveWith(draft, each, isLeft ? left : right);
    if (isCut) {
      const gone = right.at(middle, unit.y - unit.fall / 2 + unit.height / 2);
      draft.splits.set(unit.id, { x: pass.x, right: { ...gone, w: 0, turn: right.turn, lean: 0 } });
    }
    sides.set(unit.id, isLeft ? 0 : 1);
  }
  crackTorn(draft, placed, passes, sides);
}

/** Heads between the two sides are torn, and beds that the crack runs along. */
function crackTorn(
  draft: Draft,
  placed: readonly Placed[],
  passes: Parting['passes'],
  sides: ReadonlyMap<UnitId, number>,
): void {
  const byId = new Map(placed.map((each) => [each.unit.id, each.unit]));
  crackWhere(draft, ({ kind, unit: id, other }) => {
    const one = byId.get(id);
    const two = byId.get(other as UnitId);
    if (one === undefined || two === undefined) return false;
    if (kind === 'head') return sides.get(id) !== sides.get(two.id) && !draft.splits.has(id);
    if (kind !== 'bed') return false;
    const upper = passes[one.course - 1];
    const lower = passes[topCourseOf(two) - 1];
    if (upper === null || upper === undefined || lower === null || lower === undefined) return false;
    const from = Math.max(one.x, two.x, Math.min(upper.x, lower.x));
    const to = Math.min(one.x + one.length, two.x + two.length, Math.max(upper.x, lower.x));
    return to - from > OVER;
  });
}
