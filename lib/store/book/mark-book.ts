import type { SetWorkSpec } from '../../classes/set-work';
import type { Store } from '../database';
import type { AttemptTable, SetWorkTable } from '../schema';

export interface BookWork {
  readonly id: string;
  readonly title: string;
  readonly state: SetWorkTable['state'];
  readonly walls: number;
  readonly sameForAll: boolean;
  /** Pass mark, 0 to 1; null where there is none. */
  readonly passShare: number | null;
  readonly dueAt: number | null;
  readonly graceMs: number;
  readonly release: SetWorkTable['release'];
  readonly releasedAt: number | null;
}

/** One hand-in of a learner. */
export interface BookCell {
  readonly attempt: string;
  /** Which try, from 1. */
  readonly number: number;
  readonly state: AttemptTable['state'];
  readonly late: boolean;
  readonly handedInAt: number | null;
  /** 0 to 1; null while it is not marked. An instructor's mark goes before the marking. */
  readonly score: number | null;
  readonly overridden: boolean;
  /** Over 1: it was marked again. */
  readonly version: number;
}

export interface BookRow {
  readonly learner: string;
  readonly name: string;
  /** By work, the latest hand-in; a work with nothing handed in has none. */
  readonly cells: ReadonlyMap<string, BookCell>;
}

/** Where a page of learners starts, in the order of their names. */
export type From = { readonly offset: number } | { readonly afterName: string };

/** Learners in memory at once while a file goes out. Of 200, with 40 works each, three times as much waits to be cleared away. */
const STREAM_PAGE = 50;

/** The set works of a group that learners can see or could, the oldest first. */
export async function bookWorks(db: Store['db'], group: string): Promise<readonly BookWork[]> {
  const rows = await db
    .selectFrom('set_work')
    .select(['id', 'title', 'state', 'spec', 'due_at', 'grace_ms', 'release', 'released_at'])
    .where('group_id', '=', group)
    .where('state', '!=', 'draft')
    .orderBy('created_at')
    .orderBy('id')
    .execute();
  return rows.map(bookWorkOf);
}

export function bookWorkOf(
  row: Pick<SetWorkTable, 'title' | 'state' | 'spec' | 'due_at' | 'grace_ms' | 'release' | 'released_at'> & {
    readonly id: string;
  },
): BookWork {
  const { walls, sameForAll, passMark } = JSON.parse(row.spec) as SetWorkSpec;
  return {
    id: row.id,
    title: row.title,
    state: row.state,
    walls,
    sameForAll,
    passShare: passMark?.share ?? null,
    dueAt: row.due_at,
    graceMs: row.grace_ms,
    release: row.release,
    releasedAt: row.released_at,
  };
}

/** How many learners the group has, those removed left out. */
export async function countLearners(db: Store['db'], group: string): Promise<number> {
  const { count } = await db
    .selectFrom('learner')
    .select((e) => e.fn.countAll<number | string>().as('count'))
    .where('group_id', '=', group)
    .where('removed_at', 'is', null)
    .executeTakeFirstOrThrow();
  return Number(count);
}

/** One page of the mark book: learners by name, with the latest hand-in of each work. */
export async function bookRows(
  db: Store['db'],
  group: string,
  from: From,
  limit: number,
): Promise<readonly BookRow[]> {
  const start = db
    .selectFrom('learner')
    .select(['id', 'name'])
    .where('group_id', '=', group)
    .where('removed_at', 'is', null)
    .orderBy('name')
    .limit(limit);
  const learners = await ('offset' in from
    ? start.offset(from.offset)
    : start.where('name', '>', from.afterName)
  ).execute();
  if (learners.length === 0) return [];
  const cells = await cellsOf(
    db,
    learners.map(({ id }) => id),
  );
  return learners.map(({ id, name }) => ({ learner: id, name, cells: cells.get(id) ?? new Map() }));
}

/** All rows of a group's mark book, a few dozen in memory at a time. */
export async function* allBookRows(db: Store['db'], group: string): AsyncGenerator<readonly BookRow[]> {
  let from: From = { offset: 0 };
  for (;;) {
    const rows: readonly BookRow[] = await bookRows(db, group, from, STREAM_PAGE);
    if (rows.length > 0) yield rows;
    const last = rows[rows.length - 1];
    if (last === undefined || rows.length < STREAM_PAGE) return;
    from = { afterName: last.name };
  }
}

async function cellsOf(
  db: Store['db'],
  learners: readonly string[],
): Promise<ReadonlyMap<string, ReadonlyMap<string, BookCell>>> {
  const byLearner = new Map<string, Map<string, BookCell>>();
  // In the order of the tries: the last one stays.
  for (const { learner, work, ...cell } of await handInsOf(db, learners)) {
    const cells = byLearner.get(learner) ?? new Map<string, BookCell>();
    byLearner.set(learner, cells.set(work, cell));
  }
  return byLearner;
}

/** All hand-ins of some learners, in the order of the tries. */
export async function handInsOf(
  db: Store['db'],
  learners: readonly string[],
): Promise<readonly (BookCell & { readonly learner: string; readonly work: string })[]> {
  const attempts = await db
    .selectFrom('attempt as a')
    .leftJoin('result_version as r', (join) =>
      join.onRef('r.attempt_id', '=', 'a.id').on((e) =>
        e(
          'r.version',
          '=',
          e
            .selectFrom('result_version as newest')
            .select((n) => n.fn.max('newest.version').as('version'))
            .whereRef('newest.attempt_id', '=', 'a.id'),
        ),
      ),
    )
    .select([
      'a.id',
      'a.set_work_id',
      'a.learner_id',
      'a.number',
      'a.state',
      'a.late',
      'a.handed_in_at',
      'r.score',
      'r.version',
    ])
    .where('a.learner_id', 'in', learners)
    .where('a.state', '!=', 'open')
    .orderBy('a.number')
    .execute();
  const overrides = await db
    .selectFrom('override_mark as o')
    .innerJoin('attempt as a', 'a.id', 'o.attempt_id')
    .select(['o.attempt_id', 'o.score'])
    .where('a.learner_id', 'in', learners)
    .orderBy('o.made_at')
    .orderBy('o.id')
    .execute();
  const overridden = new Map(overrides.map(({ attempt_id, score }) => [attempt_id, score]));
  return attempts.map((row) => ({
    learner: row.learner_id,
    work: row.set_work_id,
    attempt: row.id,
    number: row.number,
    state: row.state,
    late: row.late === 1,
    handedInAt: row.handed_in_at,
    score: overridden.get(row.id) ?? row.score,
    overridden: overridden.has(row.id),
    version: row.version ?? 0,
  }));
}
