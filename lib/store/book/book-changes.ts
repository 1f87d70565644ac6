import { mayMove } from '../../classes/attempt-state';
import type { Graded } from '../../exercise/result';
import { formatResults, parseResults } from '../../exercise/stored-results';
import { audited, type By } from '../audit';
import type { Store } from '../database';
import { RefusedChange } from '../store-problem';

/** Sets an instructor's own mark in the place of the marking, which stays beside it. @throws RefusedChange before hand-in. */
export async function overrideMark(
  store: Store,
  { id, attempt, score, reason }: Readonly<Record<'id' | 'attempt' | 'reason', string>> & { score: number },
  by: By,
): Promise<void> {
  await audited(store, by, async (trx, note) => {
    await requireHandedIn(trx, attempt);
    await trx
      .insertInto('override_mark')
      .values({ id, attempt_id: attempt, score, reason, made_by: by.actor, made_at: by.at })
      .execute();
    await note('mark overridden', `attempt ${attempt}`, { override: id, score });
  });
}

/** Adds a comment for the learner. @throws RefusedChange before hand-in. */
export async function addComment(
  store: Store,
  { id, attempt, text }: Readonly<Record<'id' | 'attempt' | 'text', string>>,
  by: By,
): Promise<void> {
  await audited(store, by, async (trx, note) => {
    await requireHandedIn(trx, attempt);
    await trx
      .insertInto('comment')
      .values({ id, attempt_id: attempt, text, made_by: by.actor, made_at: by.at })
      .execute();
    await note('comment added', `attempt ${attempt}`, { comment: id });
  });
}

/** Shows results to the learners. Gives how many attempts were released now; a second time none is. */
export async function releaseWork(store: Store, work: string, by: By): Promise<number> {
  return audited(store, by, async (trx, note) => {
    await trx
      .updateTable('set_work')
      .set({ released_at: by.at })
      .where('id', '=', work)
      .where('released_at', 'is', null)
      .execute();
    const released = await trx
      .updateTable('attempt')
      .set({ state: 'released' })
      .where('set_work_id', '=', work)
      .where('state', '=', 'marked')
      .executeTakeFirst();
    const attempts = Number(released.numUpdatedRows);
    await note('results released', `work ${work}`, { attempts });
    return attempts;
  });
}

/**
 * Puts a new marking beside the old ones, as the next version. Nothing is added when it reads the same.
 * Gives whether it was added.
 */
export async function addMarking(
  store: Store,
  { attempt, graded, reason }: { readonly attempt: string; readonly graded: Graded; readonly reason: string },
  by: By,
): Promise<boolean> {
  return audited(store, by, async (trx, note) => {
    const state = await requireHandedIn(trx, attempt);
    const last = await trx
      .selectFrom('result_version')
      .select(['version', 'results', 'score'])
      .where('attempt_id', '=', attempt)
      .orderBy('version', 'desc')
      .limit(1)
      .executeTakeFirst();
    const results = formatResults(graded.results);
    // As they read, whatever form the earlier one was stored in.
    const isSame = last && formatResults(parseResults(last.results)) === formatResults(parseResults(results));
    if (isSame && last.score === graded.score) return false;
    const version = (last?.version ?? 0) + 1;
    await trx
      .insertInto('result_version')
      .values({
        attempt_id: attempt,
        version,
        engine: graded.engine,
        results,
        score: graded.score,
        reason,
        made_by: by.actor,
        made_at: by.at,
      })
      .execute();
    if (mayMove(state, 'marked')) {
      await trx.updateTable('attempt').set({ state: 'marked' }).where('id', '=', attempt).execute();
    }
    await note('marked again', `attempt ${attempt}`, {
      version,
      before: last?.score ?? null,
      score: graded.score,
    });
    return true;
  });
}

async function requireHandedIn(db: Store['db'], attempt: string) {
  const row = await db.selectFrom('attempt').select('state').where('id', '=', attempt).executeTakeFirst();
  if (row === undefined) throw new RefusedChange('There is no such hand-in any more.');
  if (row.state === 'open')
    throw new RefusedChange('This work is not handed in yet. Wait until it is, then try again.');
  return row.state;
}
