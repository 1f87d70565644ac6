import { byName } from './by-name';
import type { Store } from './database';
import { forgetTries } from './throttle';

export interface JoinGroup {
  readonly id: string;
  readonly name: string;
}

export interface LearnerRow {
  readonly id: string;
  readonly name: string;
  /** Null until the learner has chosen a PIN, and again after an instructor has reset it. */
  readonly pinHash: string | null;
}

/** The open group with this code; a closed one takes nobody in. */
export async function groupByCode(db: Store['db'], joinCode: string): Promise<JoinGroup | undefined> {
  return db
    .selectFrom('learning_group')
    .select(['id', 'name'])
    .where('join_code', '=', joinCode)
    .where('closed_at', 'is', null)
    .executeTakeFirst();
}

/** Until the transaction ends nobody else adds to this roster: of two who type one name at once, the second sees the first. */
export async function holdRoster(trx: Store['db'], groupId: string): Promise<void> {
  // SQLite has one writer and no `for update`; a change that changes nothing holds the row on both.
  await trx
    .updateTable('learning_group')
    .set((e) => ({ name: e.ref('name') }))
    .where('id', '=', groupId)
    .execute();
}

/** Those on the roster, by name. */
export async function rosterOf(db: Store['db'], groupId: string): Promise<readonly LearnerRow[]> {
  const rows = await db
    .selectFrom('learner')
    .select(['id', 'name', 'pin_hash as pinHash'])
    .where('group_id', '=', groupId)
    .where('removed_at', 'is', null)
    .execute();
  return rows.sort(byName);
}

/** A learner as this group's code lets them be asked for; undefined when they are of another group or off the roster. */
export async function learnerIn(
  db: Store['db'],
  groupId: string,
  learnerId: string,
): Promise<LearnerRow | undefined> {
  return db
    .selectFrom('learner')
    .select(['id', 'name', 'pin_hash as pinHash'])
    .where('id', '=', learnerId)
    .where('group_id', '=', groupId)
    .where('removed_at', 'is', null)
    .executeTakeFirst();
}

export async function addLearner(
  db: Store['db'],
  learner: { readonly id: string; readonly groupId: string; readonly name: string; readonly at: number },
): Promise<void> {
  await db
    .insertInto('learner')
    .values({
      id: learner.id,
      group_id: learner.groupId,
      name: learner.name,
      pin_hash: null,
      time_factor: 100,
      created_at: learner.at,
      removed_at: null,
    })
    .execute();
}

/** Gives a learner their first PIN. False when they have one already: of two who choose at once, one wins. */
export async function setFirstPin(db: Store['db'], learnerId: string, pinHash: string): Promise<boolean> {
  const { numUpdatedRows } = await db
    .updateTable('learner')
    .set({ pin_hash: pinHash })
    .where('id', '=', learnerId)
    .where('pin_hash', 'is', null)
    .executeTakeFirst();
  return numUpdatedRows === 1n;
}

/** So that the learner can choose a new one. */
export async function clearPin(db: Store['db'], learnerId: string): Promise<void> {
  await db.updateTable('learner').set({ pin_hash: null }).where('id', '=', learnerId).execute();
}

/** A learner and all their work, gone. What is left of them in the audit trail is an id that leads nowhere. */
export async function eraseLearner(db: Store['db'], learnerId: string): Promise<void> {
  // Sessions, attempts, walls, results, overrides and comments go with it: the tables say so (`on delete cascade`).
  await db.deleteFrom('learner').where('id', '=', learnerId).execute();
  await forgetTries(db, ['pin', 'pinDay', 'refused', 'told'], learnerId);
}
