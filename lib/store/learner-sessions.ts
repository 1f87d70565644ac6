import type { Store } from './database';

/** How long a learner stays signed in on a device, ms: a term's work, and no log-out in the middle of an attempt. */
export const LEARNER_SESSION_MS = 90 * 24 * 60 * 60_000;

export interface SignedInLearner {
  readonly learnerId: string;
  readonly groupId: string;
  readonly name: string;
}

export async function startLearnerSession(
  db: Store['db'],
  session: {
    readonly tokenHash: string;
    readonly learnerId: string;
    readonly device: string;
    readonly at: number;
  },
): Promise<void> {
  await db
    .insertInto('learner_session')
    .values({
      token_hash: session.tokenHash,
      learner_id: session.learnerId,
      device: session.device,
      created_at: session.at,
      expires_at: session.at + LEARNER_SESSION_MS,
    })
    .execute();
}

/** Whose session this is; undefined when it ended, or when the learner was taken off the roster. */
export async function learnerOf(
  db: Store['db'],
  tokenHash: string,
  at: number,
): Promise<SignedInLearner | undefined> {
  return db
    .selectFrom('learner_session')
    .innerJoin('learner', 'learner.id', 'learner_session.learner_id')
    .select(['learner.id as learnerId', 'learner.group_id as groupId', 'learner.name as name'])
    .where('learner_session.token_hash', '=', tokenHash)
    .where('learner_session.expires_at', '>', at)
    .where('learner.removed_at', 'is', null)
    .executeTakeFirst();
}

export async function endLearnerSession(db: Store['db'], tokenHash: string): Promise<void> {
  await db.deleteFrom('learner_session').where('token_hash', '=', tokenHash).execute();
}

/** Where a learner is signed in, the newest first. */
export async function learnerSessions(
  db: Store['db'],
  learnerId: string,
  at: number,
): Promise<readonly { readonly tokenHash: string; readonly device: string; readonly begun: number }[]> {
  return db
    .selectFrom('learner_session')
    .select(['token_hash as tokenHash', 'device', 'created_at as begun'])
    .where('learner_id', '=', learnerId)
    .where('expires_at', '>', at)
    .orderBy('created_at', 'desc')
    .execute();
}

/** Ends all sessions of a learner but the one that is kept, and clears those of anybody that ran out. */
export async function endLearnerSessions(
  db: Store['db'],
  learnerId: string,
  at: number,
  keep = '',
): Promise<void> {
  await db
    .deleteFrom('learner_session')
    .where((e) =>
      e.or([
        e.and([e('learner_id', '=', learnerId), e('token_hash', '!=', keep)]),
        e('expires_at', '<=', at),
      ]),
    )
    .execute();
}
