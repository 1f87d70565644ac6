import { randomUUID } from 'node:crypto';
import type { Selectable } from 'kysely';
import { isShown } from '../classes/release';
import { audited, type By } from './audit';
import type { Store } from './database';
import type { Release, SetWorkTable, WorkState } from './schema';
import { RefusedChange } from './store-problem';
import { type KeptSpec, readStored } from './stored-json';

export interface WorkTimes {
  readonly opensAt: number | null;
  readonly dueAt: number | null;
  readonly graceMs: number;
  readonly release: Release;
}

/** What an instructor makes or changes. */
export interface WorkDraft extends WorkTimes {
  readonly title: string;
  readonly spec: KeptSpec;
}

export interface WorkRow extends WorkDraft {
  readonly id: string;
  readonly groupId: string;
  /** Never leaves the server. */
  readonly secret: string;
  readonly state: WorkState;
  readonly releasedAt: number | null;
}

/** Keeps a new draft. Gives its id. */
export async function createWork(
  store: Store,
  group: string,
  secret: string,
  draft: WorkDraft,
  by: By,
): Promise<string> {
  const id = randomUUID();
  await audited(store, by, async (trx, note) => {
    await trx
      .insertInto('set_work')
      .values({
        ...columnsOf(draft),
        id,
        group_id: group,
        secret_seed: secret,
        state: 'draft',
        released_at: null,
        created_by: by.actor,
        created_at: by.at,
      })
      .execute();
    await note('made set work', `work ${id}`);
  });
  return id;
}

/** Changes a draft. @throws RefusedChange once it is set: learners may have begun. */
export async function changeDraft(store: Store, work: string, draft: WorkDraft, by: By): Promise<void> {
  await audited(store, by, async (trx, note) => {
    const changed = await trx
      .updateTable('set_work')
      .set(columnsOf(draft))
      .where('id', '=', work)
      .where('state', '=', 'draft')
      .executeTakeFirst();
    if (changed.numUpdatedRows !== 1n) {
      throw new RefusedChange('This work is set already, so its walls stay as they are. Make a new one.');
    }
    await note('changed a draft', `work ${work}`);
  });
}

/** Deletes a draft. @throws RefusedChange once it is published: learners may have begun. */
export async function deleteDraft(store: Store, work: string, by: By): Promise<void> {
  await audited(store, by, async (trx, note) => {
    const deleted = await trx
      .deleteFrom('set_work')
      .where('id', '=', work)
      .where('state', '=', 'draft')
      .executeTakeFirst();
    if (deleted.numDeletedRows !== 1n)
      throw new RefusedChange('This work is published. Only a draft can be deleted.');
    await note('deleted a draft', `work ${work}`);
  });
}

const BEFORE = { set: ['draft', 'closed'], closed: ['set'] } as const;

/** Sets a draft, closes work that is set, or opens it again. A second time nothing happens. */
export async function moveWork(store: Store, work: string, to: keyof typeof BEFORE, by: By): Promise<void> {
  await audited(store, by, async (trx, note) => {
    const moved = await trx
      .updateTable('set_work')
      .set({ state: to })
      .where('id', '=', work)
      .where('state', 'in', BEFORE[to])
      .executeTakeFirst();
    if (moved.numUpdatedRows === 0n) return;
    await note(`work ${to}`, `work ${work}`);
  });
}

/**
 * Gives work that is set another due date. What came late before stays flagged.
 * @throws RefusedChange when it is not set, when the date is past or before it opens, or when results show already: the key is out.
 */
export async function moveDue(store: Store, work: string, dueAt: number, by: By): Promise<void> {
  await audited(store, by, async (trx, note) => {
    const row = rowOf(
      await trx.selectFrom('set_work').selectAll().where('id', '=', work).executeTakeFirstOrThrow(),
    );
    const problem = moveProblem(row, dueAt, by.at);
    if (problem !== null) throw new RefusedChange(problem);
    await trx.updateTable('set_work').set({ due_at: dueAt }).where('id', '=', work).execute();
    const detail = { from: row.dueAt, to: dueAt };
    await note('moved the due date', `work ${work}`, detail);
  });
}

function moveProblem(row: WorkRow, dueAt: number, at: number): string | null {
  if (row.state !== 'set') return 'Only work that is set has its date moved.';
  if (row.release !== 'at once' && isShown(row, at))
    return 'Learners see the results already, and the key with them. Set new work instead.';
  if (dueAt <= at) return 'Choose a day and a time that are still to come.';
  return row.opensAt !== null && dueAt <= row.opensAt ? 'It would be due before it opens.' : null;
}

export async function workOf({ db }: Store, work: string): Promise<WorkRow> {
  return rowOf(await db.selectFrom('set_work').selectAll().where('id', '=', work).executeTakeFirstOrThrow());
}

export interface WorkInGroup extends WorkRow {
  /** Learners on the roster who have handed in at least once. */
  readonly handedIn: number;
  /** Handed in and marked, not shown by hand yet. */
  readonly waiting: number;
}

/** The set works of a group, the latest made first. */
export async function worksOf({ db }: Store, group: string): Promise<readonly WorkInGroup[]> {
  const rows = await db
    .selectFrom('set_work')
    .selectAll()
    .where('group_id', '=', group)
    .orderBy('created_at', 'desc')
    .execute();
  const counts = await db
    .selectFrom('attempt')
    .innerJoin('set_work', 'set_work.id', 'attempt.set_work_id')
    .innerJoin('learner', 'learner.id', 'attempt.learner_id')
    .select((e) => [
      'set_work_id',
      e.fn.count('learner_id').distinct().as('learners'),
      e.fn.sum(e.case().when('attempt.state', '=', 'released').then(0).else(1).end()).as('waiting'),
    ])
    .where('set_work.group_id', '=', group)
    .where('attempt.state', '!=', 'open')
    .where('learner.removed_at', 'is', null)
    .groupBy('set_work_id')
    .execute();
  const byWork = new Map(counts.map((each) => [each.set_work_id, each]));
  return rows.map((row) => {
    const count = byWork.get(row.id);
    return { ...rowOf(row), handedIn: Number(count?.learners ?? 0), waiting: Number(count?.waiting ?? 0) };
  });
}

function columnsOf({ title, spec, opensAt, dueAt, graceMs, release }: WorkDraft) {
  return { title, spec: JSON.stringify(spec), opens_at: opensAt, due_at: dueAt, grace_ms: graceMs, release };
}

function rowOf(row: Selectable<SetWorkTable>): WorkRow {
  return {
    id: row.id,
    groupId: row.group_id,
    title: row.title,
    spec: readStored('spec', row.spec),
    secret: row.secret_seed,
    state: row.state,
    opensAt: row.opens_at,
    dueAt: row.due_at,
    graceMs: row.grace_ms,
    release: row.release,
    releasedAt: row.released_at,
  };
}
