import type { Store } from '../database';
import { byLastName, byName } from '../groups/by-name';
import type { NamedLearner } from '../groups/roster';
import type { AttemptTable, SetWorkTable } from '../schema';
import { readStored } from '../stored-json';

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
  const { walls, sameForAll, passMark } = readStored('spec: walls', row.spec);
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

/** Which learners a page of the mark book shows, and in which order. */
export interface BookOrder {
  /** By the whole name or by its last word. */
  readonly by: 'name' | 'last name';
  /** Only names with this in them; '' for all. */
  readonly find: string;
  /** Only those who have not handed this work in; '' for all. */
  readonly without: string;
}

/** The learners of a group, those removed left out, chosen and ordered. */
export async function bookLearners(
  db: Store['db'],
  group: string,
  { by, find, without }: BookOrder,
): Promise<readonly NamedLearner[]> {
  const all = db.selectFrom('learner').select(['id', 'name']).where('group_id', '=', group);
  const rows = await (without === ''
    ? all
    : all.where('id', 'not in', (e) =>
        e
          .selectFrom('attempt')
          .select('learner_id')
          .where('set_work_id', '=', without)
          .where('state', '!=', 'open'),
      )
  )
    .where('removed_at', 'is', null)
    .execute();
  return rows
    .filter(({ name }) => plainOf(name).includes(plainOf(find)))
    .sort(by === 'name' ? byName : byLastName);
}

/** Without case and accents: who looks for 'eluard' finds Éluard. */
function plainOf(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase().trim();
}

/** Rows of the mark book for these learners, with the latest hand-in of each work. */
export async function bookRows(
  db: Store['db'],
  learners: readonly NamedLearner[],
): Promise<readonly BookRow[]> {
  if (learners.length === 0) return [];
  const cells = await cellsOf(
    db,
    learners.map(({ id }) => id),
  );
  return learners.map(({ id, name }) => ({ learner: id, name, cells: cells.get(id) ?? new Map() }));
}

/** All rows of a group's mark book, a few dozen in memory at a time. */
export async function* allBookRows(db: Store['db'], group: string): AsyncGenerator<readonly BookRow[]> {
  const learners = await bookLearners(db, group, { by: 'name', find: '', without: '' });
  for (let from = 0; from < learners.length; from += STREAM_PAGE) {
    yield await bookRows(db, learners.slice(from, from + STREAM_PAGE));
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
