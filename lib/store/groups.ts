import { randomUUID } from 'node:crypto';
import { sql, type Transaction } from 'kysely';
import { checkRoster, type RosterRow, sameName } from '../classes/roster';
import { audited, type By } from './audit';
import { byName } from './by-name';
import type { Store } from './database';
import { holdRoster } from './learners';
import type { Tables } from './schema';

export interface GroupRow {
  readonly id: string;
  readonly name: string;
  readonly joinCode: string;
  readonly closedAt: number | null;
  readonly learners: number;
}

export interface RosterLearner {
  readonly id: string;
  readonly name: string;
  readonly hasPin: boolean;
  /** Percent. */
  readonly timeFactor: number;
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
  return rows.map((row) => ({ ...row, learners: Number(row.learners) }));
}

export async function groupOf({ db }: Store, group: string): Promise<Omit<GroupRow, 'learners'>> {
  return db
    .selectFrom('learning_group')
    .select(['id', 'name', 'join_code as joinCode', 'closed_at as closedAt'])
    .where('id', '=', group)
    .executeTakeFirstOrThrow();
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
  await audited(store, by, async (trx, note) => {
    const closed = await trx
      .updateTable('learning_group')
      .set({ closed_at: by.at })
      .where('id', '=', group)
      .where('closed_at', 'is', null)
      .executeTakeFirst();
    if (closed.numUpdatedRows === 0n) return;
    await note('closed a group', `group ${group}`);
  });
}

export async function rosterWithPins({ db }: Store, group: string): Promise<readonly RosterLearner[]> {
  const rows = await db
    .selectFrom('learner')
    .select(['id', 'name', 'pin_hash', 'time_factor as timeFactor'])
    .where('group_id', '=', group)
    .where('removed_at', 'is', null)
    .execute();
  return rows.sort(byName).map(({ pin_hash, ...row }) => ({ ...row, hasPin: pin_hash !== null }));
}

/** The roster cannot be written: somebody was added meanwhile. Nothing was written. */
export class RosterError extends Error {
  override name = 'RosterError';
}

/** Adds all rows or none. One who was taken off the roster comes back with the work they had. @throws RosterError */
export async function addToRoster(
  store: Store,
  group: string,
  rows: readonly RosterRow[],
  by: By,
): Promise<void> {
  await audited(store, by, async (trx, note) => {
    await holdRoster(trx, group);
    const known = await trx
      .selectFrom('learner')
      .select(['id', 'name', 'removed_at'])
      .where('group_id', '=', group)
      .execute();
    const present = known.filter(({ removed_at }) => removed_at === null).map(({ name }) => name);
    const lines = rows.map((row) => ({ ...row, time: String(row.timeFactor) }));
    const [problem] = checkRoster(lines, present).problems;
    if (problem) throw new RosterError(`Line ${problem.line}: ${problem.message}`);
    for (const row of rows) {
      const back = known.find(({ name }) => sameName(name) === sameName(row.name));
      if (back) await comeBack(trx, back.id, row.timeFactor);
      else
        await trx
          .insertInto('learner')
          .values(newLearner(group, row, by.at))
          .execute();
    }
    await note('added to the roster', `group ${group}`, { learners: rows.length });
  });
}

function newLearner(group: string, { name, timeFactor }: RosterRow, at: number) {
  return {
    id: randomUUID(),
    group_id: group,
    name,
    pin_hash: null,
    time_factor: timeFactor,
    created_at: at,
    removed_at: null,
  };
}

async function comeBack(trx: Transaction<Tables>, learner: string, timeFactor: number): Promise<void> {
  await trx
    .updateTable('learner')
    .set({ removed_at: null, time_factor: timeFactor })
    .where('id', '=', learner)
    .execute();
}

/** Percent of the time others get. */
export async function setTimeFactor(
  store: Store,
  learner: string,
  timeFactor: number,
  by: By,
): Promise<void> {
  await audited(store, by, async (trx, note) => {
    await trx.updateTable('learner').set({ time_factor: timeFactor }).where('id', '=', learner).execute();
    await note('set a time factor', `learner ${learner}`, { timeFactor });
  });
}

/**
 * Takes off the roster whoever joined by the group's code since then with a name that was not on it. Gives how many. Their work
 * stays, as with one who is taken off alone.
 */
export async function removeJoined(store: Store, group: string, since: number, by: By): Promise<number> {
  return audited(store, by, async (trx, note) => {
    const joined = await trx
      .selectFrom('audit')
      .innerJoin('learner', (on) => on.on(sql<boolean>`audit.actor = 'learner ' || learner.id`))
      .select('learner.id')
      .where('audit.subject', '=', `group ${group}`)
      .where('audit.action', '=', 'joined')
      .where('audit.at', '>=', since)
      .where('learner.removed_at', 'is', null)
      .execute();
    if (joined.length === 0) return 0;
    const ids = joined.map(({ id }) => id);
    await trx.updateTable('learner').set({ removed_at: by.at }).where('id', 'in', ids).execute();
    await trx.deleteFrom('learner_session').where('learner_id', 'in', ids).execute();
    await note('took off who had joined', `group ${group}`, { learners: ids.length });
    return ids.length;
  });
}

/** Takes a learner off the roster and signs them out. Their work stays, and so does their name. */
export async function removeFromRoster(store: Store, learner: string, by: By): Promise<void> {
  await audited(store, by, async (trx, note) => {
    await trx.updateTable('learner').set({ removed_at: by.at }).where('id', '=', learner).execute();
    await trx.deleteFrom('learner_session').where('learner_id', '=', learner).execute();
    await note('took a learner off the roster', `learner ${learner}`);
  });
}
