import type { Bound, Limit, Step } from './limit';

type Unit = Limit['unit'];
/** What one row of a rule set says for itself. */
type Row = Pick<Limit, 'id' | 'quantity' | 'unit' | 'end' | 'bound' | 'note'>;
/** What the rows of one source have in common. */
type Shared = Pick<Limit, 'rules' | 'kind' | 'source' | 'edition' | 'howSure' | 'note'>;

/** Rows of one topic of one source, by the clause they stand under. A row's own note goes before the shared one. */
export function byClause(
  shared: Shared,
  topic: Limit['topic'],
  clauses: Readonly<Record<Limit['clause'], Row | readonly Row[]>>,
): readonly Limit[] {
  return Object.entries(clauses).flatMap(([clause, rows]) =>
    [rows].flat().map((row) => ({ ...row, ...shared, topic, clause, ...row })),
  );
}

/** The same note for each of the rows. */
export function noted(note: string, ...rows: readonly Row[]): readonly Row[] {
  return rows.map((row) => ({ ...row, note }));
}

/** A most: the bound itself still passes. A plain number is in `unit`. */
export function atMost(id: Limit['id'], quantity: string, bound: number | Bound, unit: Unit = 'mm'): Row {
  return { id, quantity, unit, end: 'at most', bound: boundOf(bound) };
}

/** A least: the bound itself still passes. A plain number is in `unit`. */
export function atLeast(id: Limit['id'], quantity: string, bound: number | Bound, unit: Unit = 'mm'): Row {
  return { id, quantity, unit, end: 'at least', bound: boundOf(bound) };
}

/** A size to work to, or a thing that has to be there. */
export function exactly(id: Limit['id'], quantity: string, bound: number | Bound, unit: Unit = 'mm'): Row {
  return { id, quantity, unit, end: 'is', bound: boundOf(bound) };
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
