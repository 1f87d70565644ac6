import type { SetWorkSpec } from '../../classes/set-work';
import type { Store } from '../database';
import { readStored } from '../stored-json';
import { type BookWork, bookWorkOf } from './mark-book';

/** The group's name; empty when there is no such group. */
export async function groupName(db: Store['db'], group: string): Promise<string> {
  const row = await db.selectFrom('learning_group').select('name').where('id', '=', group).executeTakeFirst();
  return row?.name ?? '';
}

/** The spec of the work a group was set last; null before the first. */
export async function lastSpecOf(db: Store['db'], group: string): Promise<SetWorkSpec | null> {
  const row = await db
    .selectFrom('set_work')
    .select('spec')
    .where('group_id', '=', group)
    .where('state', '!=', 'draft')
    .orderBy('created_at', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row ? readStored('spec', row.spec) : null;
}

export interface WorkHead extends BookWork {
  readonly group: string;
  readonly groupName: string;
}

/** A set work and its group. @throws when there is none: the caller has been let in to it. */
export async function workHead(db: Store['db'], work: string): Promise<WorkHead> {
  const row = await db
    .selectFrom('set_work as w')
    .innerJoin('learning_group as g', 'g.id', 'w.group_id')
    .select([
      'w.id',
      'w.title',
      'w.state',
      'w.spec',
      'w.due_at',
      'w.grace_ms',
      'w.release',
      'w.released_at',
      'g.id as group',
      'g.name',
    ])
    .where('w.id', '=', work)
    .executeTakeFirstOrThrow();
  return { ...bookWorkOf(row), group: row.group, groupName: row.name };
}

/** Names of a group's learners, or of those who opened a set work, by id. */
export async function learnerNames(
  db: Store['db'],
  whose: { readonly group: string } | { readonly work: string },
): Promise<ReadonlyMap<string, string>> {
  const all = db.selectFrom('learner as l').select(['l.id', 'l.name']).where('l.removed_at', 'is', null);
  const rows = await ('group' in whose
    ? all.where('l.group_id', '=', whose.group)
    : all.where('l.id', 'in', (e) =>
        e.selectFrom('attempt').select('learner_id').where('set_work_id', '=', whose.work),
      )
  ).execute();
  return new Map(rows.map(({ id, name }) => [id, name]));
}

export interface LearnerHead {
  readonly name: string;
  readonly group: string;
  readonly groupName: string;
}

/** A learner and their group. @throws when there is none: the caller has been let in. */
export async function learnerHead(db: Store['db'], learner: string): Promise<LearnerHead> {
  return db
    .selectFrom('learner as l')
    .innerJoin('learning_group as g', 'g.id', 'l.group_id')
    .select(['l.name', 'g.id as group', 'g.name as groupName'])
    .where('l.id', '=', learner)
    .executeTakeFirstOrThrow();
}
