import { randomUUID } from 'node:crypto';
import { sameName } from '../classes/roster';
import type { Store } from './database';
import { byName } from './groups/by-name';
import { forgetTries } from './throttle';

export interface JoinGroup {
  readonly id: string;
  readonly name: string;
  /** Whether a name that is not on the roster may join. */
  readonly takesNew: boolean;
}

export interface LearnerRow {
  readonly id: string;
  readonly name: string;
  /** Null until the learner has chosen a PIN, and again after an instructor has reset it. */
  readonly pinHash: string | null;
  /** Of the one-time word that choosing a PIN asks for; null where none was given out. */
  readonly wordHash: string | null;
}

const COLUMNS = ['id', 'name', 'pin_hash as pinHash', 'word_hash as wordHash'] as const;

/** The open group with this code; a closed one takes nobody in. */
export async function groupByCode(db: Store['db'], joinCode: string): Promise<JoinGroup | undefined> {
  const row = await db
    .selectFrom('learning_group')
    .select(['id', 'name', 'takes_new'])
    .where('join_code', '=', joinCode)
    .where('closed_at', 'is', null)
    .executeTakeFirst();
  return row && { id: row.id, name: row.name, takesNew: row.takes_new === 1 };
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
    .select(COLUMNS)
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
    .select(COLUMNS)
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
    .set({ pin_hash: pinHash, word_hash: null })
    .where('id', '=', learnerId)
    .where('pin_hash', 'is', null)
    .executeTakeFirst();
  return numUpdatedRows === 1n;
}

/** So that the learner can choose a new PIN, with the word that has this hash and with no other. */
export async function clearPin(db: Store['db'], learnerId: string, wordHash: string): Promise<void> {
  await db
    .updateTable('learner')
    .set({ pin_hash: null, word_hash: wordHash })
    .where('id', '=', learnerId)
    .execute();
}

/** Whether a name was in this group and has been taken off its roster. */
export async function wasTakenOff(db: Store['db'], groupId: string, name: string): Promise<boolean> {
  const gone = await db
    .selectFrom('learner')
    .select('name')
    .where('group_id', '=', groupId)
    .where('removed_at', 'is not', null)
    .execute();
  return gone.some((row) => sameName(row.name) === sameName(name));
}

/**
 * A learner and all their work, gone. Of what they had handed in a line is left for the instructor, with their name and no content;
 * in the audit trail, an id that leads nowhere.
 */
export async function eraseLearner(db: Store['db'], learnerId: string, at: number): Promise<void> {
  const handedIn = await db
    .selectFrom('attempt')
    .innerJoin('learner', 'learner.id', 'attempt.learner_id')
    .select(['attempt.set_work_id', 'attempt.handed_in_at', 'learner.name'])
    .where('learner_id', '=', learnerId)
    .where('handed_in_at', 'is not', null)
    .execute();
  for (const { set_work_id, handed_in_at, name } of handedIn) {
    await db
      .insertInto('deleted_work')
      .values({
        id: randomUUID(),
        set_work_id,
        learner_name: name,
        handed_in_at: handed_in_at ?? at,
        deleted_at: at,
      })
      .execute();
  }
  // Sessions, attempts, walls, results, overrides and comments go with it: the tables say so (`on delete cascade`).
  await db.deleteFrom('learner').where('id', '=', learnerId).execute();
  await forgetTries(db, ['pin', 'pinDay', 'refused', 'told'], learnerId);
}
