import { randomUUID } from 'node:crypto';
import { sql, type Updateable } from 'kysely';
import { audited, type By } from '../audit';
import type { Store } from '../database';
import type { LearningGroupTable } from '../schema';

export interface GroupRow {
  readonly id: string;
  readonly name: string;
  readonly joinCode: string;
  readonly closedAt: number | null;
  /** Whether the code lets in names that are not on the roster. */
  readonly takesNew: boolean;
  readonly learners: number;
}

export interface DeletedWork {
  readonly id: string;
  /** The learner's. */
  readonly name: string;
  /** The work's. */
  readonly title: string;
  readonly handedInAt: number;
  readonly deletedAt: number;
}

/** The groups an instructor is in, open ones first; all groups when `userId` is null (the owner of the site). */
export async function groupsFor({ db }: Store, userId: string | null): Promise<readonly GroupRow[]> {
  let query = db
    .selectFrom('learning_group')
    .select((e) => [
      'id',
      'name',
      'join_code as joinCode',
      'closed_at as closedAt',
      'takes_new as takesNew',
      e
        .selectFrom('learner')
        .whereRef('learner.group_id', '=', 'learning_group.id')
        .where('removed_at', 'is', null)
        .select((count) => count.fn.countAll().as('n'))
        .as('learners'),
    ])
    .orderBy(sql`case when closed_at is null then 0 else 1 end`)
    .orderBy(sql`lower(name)`);
  if (userId !== null) {
    query = query.where((e) =>
      e.exists(
        e
          .selectFrom('group_instructor')
          .select('user_id')
          .whereRef('group_instructor.group_id', '=', 'learning_group.id')
          .where('user_id', '=', userId),
      ),
    );
  }
  const rows = await query.execute();
  return rows.map((row) => ({ ...row, takesNew: row.takesNew === 1, learners: Number(row.learners) }));
}

export async function groupOf({ db }: Store, group: string): Promise<Omit<GroupRow, 'learners'>> {
  const row = await db
    .selectFrom('learning_group')
    .select(['id', 'name', 'join_code as joinCode', 'closed_at as closedAt', 'takes_new as takesNew'])
    .where('id', '=', group)
    .executeTakeFirstOrThrow();
  return { ...row, takesNew: row.takesNew === 1 };
}

/** Makes a group with its first instructor. Gives its id. */
export async function createGroup(
  store: Store,
  made: { readonly name: string; readonly joinCode: string; readonly userId: string },
  at: number,
): Promise<string> {
  const id = randomUUID();
  await audited(store, { actor: `user ${made.userId}`, at }, async (trx, note) => {
    await trx
      .insertInto('learning_group')
      .values({ id, name: made.name, join_code: made.joinCode, closed_at: null, created_at: at })
      .execute();
    await trx
      .insertInto('group_instructor')
      .values({ group_id: id, user_id: made.userId, part: 'lead' })
      .execute();
    await note('made a group', `group ${id}`);
  });
  return id;
}

/** Closes a group: nobody joins, and its work takes no new attempts. What was handed in stays. */
export async function closeGroup(store: Store, group: string, by: By): Promise<void> {
  await changeGroup(store, group, by, 'closed a group', { closed_at: by.at });
}

export async function reopenGroup(store: Store, group: string, by: By): Promise<void> {
  await changeGroup(store, group, by, 'opened a group again', { closed_at: null });
}

/** Whether the group's code lets in names that are not on the roster. */
export async function setTakesNew(store: Store, group: string, takesNew: boolean, by: By): Promise<void> {
  const action = takesNew ? 'let new names join' : 'let no new names join';
  await changeGroup(store, group, by, action, { takes_new: takesNew ? 1 : 0 });
}

/** From now on the old code opens nothing. */
export async function changeJoinCode(store: Store, group: string, joinCode: string, by: By): Promise<void> {
  await changeGroup(store, group, by, 'changed the join code', { join_code: joinCode });
}

async function changeGroup(
  store: Store,
  group: string,
  by: By,
  action: string,
  change: Updateable<LearningGroupTable>,
): Promise<void> {
  await audited(store, by, async (trx, note) => {
    await trx.updateTable('learning_group').set(change).where('id', '=', group).execute();
    await note(action, `group ${group}`);
  });
}

/** Work of this group that was handed in by learners who then deleted all their data, the latest deleted first. */
export async function deletedWorks({ db }: Store, group: string): Promise<readonly DeletedWork[]> {
  return db
    .selectFrom('deleted_work')
    .innerJoin('set_work', 'set_work.id', 'deleted_work.set_work_id')
    .select([
      'deleted_work.id',
      'learner_name as name',
      'title',
      'handed_in_at as handedInAt',
      'deleted_at as deletedAt',
    ])
    .where('group_id', '=', group)
    .orderBy('deleted_at', 'desc')
    .execute();
}
