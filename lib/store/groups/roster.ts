import { randomUUID } from 'node:crypto';
import { sql, type Transaction } from 'kysely';
import { checkRoster, MOST_LEARNERS, type RosterRow, sameName } from '../../classes/roster';
import { audited, type By } from '../audit';
import type { Store } from '../database';
import { holdRoster, rosterOf } from '../learners';
import type { Tables } from '../schema';
import { RefusedChange } from '../store-problem';
import { locksOf } from '../throttle';
import { byName } from './by-name';

export interface RosterLearner {
  readonly id: string;
  readonly name: string;
  readonly hasPin: boolean;
  /** A one-time word was given out and not used yet. */
  readonly hasWord: boolean;
  /** Wrong tries keep everybody but this learner's own devices out until then, ms; null when nothing does. */
  readonly lockedUntil: number | null;
  /** Devices on which this learner is signed in. */
  readonly devices: number;
  /** Percent. */
  readonly timeFactor: number;
}

export type NamedLearner = Pick<RosterLearner, 'id' | 'name'>;

export async function rosterWithPins(
  { db }: Store,
  group: string,
  at: number,
): Promise<readonly RosterLearner[]> {
  const rows = await db
    .selectFrom('learner')
    .select((e) => [
      'id',
      'name',
      'pin_hash',
      'word_hash',
      'time_factor as timeFactor',
      e
        .selectFrom('learner_session')
        .whereRef('learner_id', '=', 'learner.id')
        .where('expires_at', '>', at)
        .select((count) => count.fn.countAll().as('n'))
        .as('devices'),
    ])
    .where('group_id', '=', group)
    .where('removed_at', 'is', null)
    .execute();
  const locks = await locksOf(db, ['pin', 'pinDay'], at);
  return rows.sort(byName).map(({ pin_hash, word_hash, ...row }) => ({
    ...row,
    hasPin: pin_hash !== null,
    hasWord: word_hash !== null,
    devices: Number(row.devices),
    lockedUntil: locks.get(row.id) ?? null,
  }));
}

/** Who was taken off the roster and can be put back. */
export async function takenOff({ db }: Store, group: string): Promise<readonly NamedLearner[]> {
  const rows = await db
    .selectFrom('learner')
    .select(['id', 'name'])
    .where('group_id', '=', group)
    .where('removed_at', 'is not', null)
    .execute();
  return rows.sort(byName);
}

/** Adds all rows or none. One who was taken off the roster comes back with the work they had. @throws RefusedChange */
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
    if (problem) throw new RefusedChange(`Line ${problem.line}: ${problem.message}`);
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

/** Puts a learner back on the roster, with PIN, time and work as they were. @throws RefusedChange when the group is full. */
export async function putBack(store: Store, learner: string, by: By): Promise<void> {
  await audited(store, by, async (trx, note) => {
    const { group_id: group } = await trx
      .selectFrom('learner')
      .select('group_id')
      .where('id', '=', learner)
      .executeTakeFirstOrThrow();
    await holdRoster(trx, group);
    if ((await rosterOf(trx, group)).length >= MOST_LEARNERS) {
      throw new RefusedChange(`A group holds at most ${MOST_LEARNERS} learners.`);
    }
    await trx.updateTable('learner').set({ removed_at: null }).where('id', '=', learner).execute();
    await note('put a learner back', `learner ${learner}`);
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
