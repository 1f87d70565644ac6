import { type GivenWall, wallsOf } from './attempts';
import type { Store } from './database';
import type { WorkRow } from './set-work';
import { readStored } from './stored-json';

/** Learners of the work's group who have neither a form nor an attempt yet. */
export async function learnersWithoutForm(
  { db }: Store,
  { id, groupId }: Pick<WorkRow, 'id' | 'groupId'>,
): Promise<readonly string[]> {
  const rows = await db
    .selectFrom('learner')
    .select('id')
    .where('group_id', '=', groupId)
    .where('removed_at', 'is', null)
    .where('id', 'not in', (e) =>
      e.selectFrom('drawn_form').select('learner_id').where('set_work_id', '=', id),
    )
    .where('id', 'not in', (e) => e.selectFrom('attempt').select('learner_id').where('set_work_id', '=', id))
    .orderBy('name')
    .execute();
  return rows.map((row) => row.id);
}

/** Keeps the form of a learner's first attempt. One that is there already stays. */
export async function keepForm(
  { db }: Store,
  work: string,
  learner: string,
  walls: readonly GivenWall[],
): Promise<void> {
  await db
    .insertInto('drawn_form')
    .values({ set_work_id: work, learner_id: learner, walls: JSON.stringify(walls) })
    .onConflict((conflict) => conflict.doNothing())
    .execute();
}

/**
 * The form of a learner's first attempt (null: of everyone): what the attempt was given, or what was drawn ahead; null without
 * either. Of one wall for all, that of anybody will do.
 */
export async function keptForm(
  store: Store,
  { id, spec }: Pick<WorkRow, 'id' | 'spec'>,
  learner: string | null,
): Promise<readonly GivenWall[] | null> {
  if (learner === null && !spec.sameForAll) return null;
  const attempt = await store.db
    .selectFrom('attempt')
    .select('id')
    .where('set_work_id', '=', id)
    .where('number', '=', 1)
    .$if(!spec.sameForAll, (query) => query.where('learner_id', '=', learner))
    .limit(1)
    .executeTakeFirst();
  if (attempt) {
    const walls = await wallsOf(store, attempt.id);
    // Of another learner's attempt too, where all have the same walls: what they answered stays theirs.
    return walls.map(({ place, code, fingerprint }) => ({ place, code, fingerprint }));
  }
  const row = await store.db
    .selectFrom('drawn_form')
    .select('walls')
    .where('set_work_id', '=', id)
    .$if(!spec.sameForAll, (query) => query.where('learner_id', '=', learner))
    .limit(1)
    .executeTakeFirst();
  return row ? readStored('walls', row.walls) : null;
}
