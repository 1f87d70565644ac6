import { sql } from 'kysely';
import type { Store } from './database';

/** At most `most` tries within `windowMs`, counted from the first of them. */
export interface TryLimit {
  readonly most: number;
  readonly windowMs: number;
}

const MINUTE = 60_000;

/**
 * Tries evaluated, not tries sent: what comes beyond is refused unread, and does not make the wait longer. An address is counted
 * only when a try was wrong, so that a classroom behind one address signs in freely.
 */
export const TRY_LIMITS = {
  /** A password, by account. */
  account: { most: 10, windowMs: 15 * MINUTE },
  /** A PIN, by learner: few digits, hence also a limit for a day. */
  pin: { most: 10, windowMs: 15 * MINUTE },
  pinDay: { most: 20, windowMs: 24 * 60 * MINUTE },
  /** The start code, for the whole site: nobody types it often. */
  startCode: { most: 20, windowMs: 15 * MINUTE },
  /** Wrong passwords, PINs, group codes and links, by address. */
  address: { most: 300, windowMs: 5 * MINUTE },
} as const satisfies Readonly<Record<string, TryLimit>>;

export type TryKind = keyof typeof TRY_LIMITS;

/** Counts one try, and says whether it may be evaluated. One statement, so that tries at the same time are each counted. */
export async function countTry(db: Store['db'], kind: TryKind, of: string, at: number): Promise<boolean> {
  const { most, windowMs } = TRY_LIMITS[kind];
  const over = sql<boolean>`throttle.since <= ${at - windowMs}`;
  const { count } = await db
    .insertInto('throttle')
    .values({ key: `${kind}:${of}`, count: 1, since: at })
    .onConflict((conflict) =>
      conflict.column('key').doUpdateSet({
        count: sql<number>`case when ${over} then 1 else throttle.count + 1 end`,
        since: sql<number>`case when ${over} then cast(${at} as bigint) else throttle.since end`,
      }),
    )
    .returning('count')
    .executeTakeFirstOrThrow();
  return count <= most;
}

/** Whether the tries counted so far leave room for another; counts nothing. */
export async function mayTry(db: Store['db'], kind: TryKind, of: string, at: number): Promise<boolean> {
  const { most, windowMs } = TRY_LIMITS[kind];
  const row = await db
    .selectFrom('throttle')
    .select('count')
    .where('key', '=', `${kind}:${of}`)
    .where('since', '>', at - windowMs)
    .executeTakeFirst();
  return (row?.count ?? 0) < most;
}

/** A right try ends the count. */
export async function forgetTries(db: Store['db'], kinds: readonly TryKind[], of: string): Promise<void> {
  await db
    .deleteFrom('throttle')
    .where(
      'key',
      'in',
      kinds.map((kind) => `${kind}:${of}`),
    )
    .execute();
}

/** Counts whose window is long over say nothing; kept they would be a list of who signed in from where. */
export async function sweepTries(db: Store['db'], at: number): Promise<void> {
  await db
    .deleteFrom('throttle')
    .where('since', '<=', at - TRY_LIMITS.pinDay.windowMs)
    .execute();
}
