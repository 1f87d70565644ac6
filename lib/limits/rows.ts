import type { Bound, Limit, Step } from './limit';

type Unit = Limit['unit'];
/** What one row of a rule set says for itself. */
type Row = Pick<Limit, 'id' | 'quantity' | 'unit' | 'end' | 'bound'> &
  Partial<Pick<Limit, 'note' | 'howSure'>>;
/** What rows of one clause have in common. */
type Shared = Omit<Limit, 'id' | 'quantity' | 'unit' | 'end' | 'bound'>;
/** What only some rows need to add. */
type More = Partial<Pick<Limit, 'note' | 'howSure'>>;

/** Rows that stand under one clause of one source. A row's own note or how-sure goes before the shared one. */
export function under(shared: Shared, ...rows: readonly Row[]): readonly Limit[] {
  return rows.map((row) => ({ ...row, ...shared, ...row }));
}

/** A most: the bound itself still passes. A plain number is in `unit`. */
export function atMost(
  id: Limit['id'],
  quantity: string,
  bound: number | Bound,
  unit: Unit = 'mm',
  more: More = {},
): Row {
  return { id, quantity, unit, end: 'at most', bound: boundOf(bound), ...more };
}

/** A least: the bound itself still passes. A plain number is in `unit`. */
export function atLeast(
  id: Limit['id'],
  quantity: string,
  bound: number | Bound,
  unit: Unit = 'mm',
  more: More = {},
): Row {
  return { id, quantity, unit, end: 'at least', bound: boundOf(bound), ...more };
}

/** A size to work to, or a thing that has to be there. */
export function exactly(
  id: Limit['id'],
  quantity: string,
  bound: number | Bound,
  unit: Unit = 'mm',
  more: More = {},
): Row {
  return { id, quantity, unit, end: 'is', bound: boundOf(bound), ...more };
}

export const PRESENT: Bound = { form: 'present' };

/** A share of the bed depth of the unit (or of the thickness of the wall, where the row says so). */
export function shareOfDepth(share: number): Bound {
  return { form: 'share-of-depth', share };
}

/** Steps in rising order: each holds up to and including its own size, the last for all that is greater. */
export function stepped(
  by: Extract<Bound, { form: 'stepped' }>['by'],
  steps: readonly (readonly [upTo: number, value: number])[],
): Bound {
  return { form: 'stepped', by, steps: steps.map(([upTo, value]): Step => ({ upTo, value })) };
}

function boundOf(bound: number | Bound): Bound {
  return typeof bound === 'number' ? { form: 'number', value: bound } : bound;
}
