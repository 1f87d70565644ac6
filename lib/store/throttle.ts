import { sql } from 'kysely';
import type { Store } from './database';

/** At most `most` tries within `windowMs`, counted from the first of them. */
export interface TryLimit {
  readonly most: number;
  readonly windowMs: number;
}

const MINUTE = 60_000;

/** Tries evaluated, not tries sent: what comes beyond is refused unread, and does not make the wait longer. */
export const TRY_LIMITS = {
  /** A password, by account. */
  account: { most: 10, windowMs: 15 * MINUTE },
  /** A PIN, by learner: few digits, hence also a limit for a day. */
  pin: { most: 10, windowMs: 15 * MINUTE },
  pinDay: { most: 20, windowMs: 24 * 60 * MINUTE },
  /** A code of the second step, by account: six digits, hence also a limit for a day. */
  code: { most: 10, windowMs: 15 * MINUTE },
  codeDay: { most: 50, windowMs: 24 * 60 * MINUTE },
  /** One code of the second step, by its hash: it is looked at once, for as long as it could be right. */
  sameCode: { most: 1, windowMs: 2 * MINUTE },
  /** The start code, for the whole site: nobody types it often. */
  startCode: { most: 20, windowMs: 15 * MINUTE },
  /** Wrong group codes, by network: of browsers that have been in the group before nobody is refused. */
  network: { most: 300, windowMs: 5 * MINUTE },
  /** Refused tries since somebody last signed in, and those from before that: counted to be told, never to refuse. */
  refused: { most: Number.MAX_SAFE_INTEGER, windowMs: 30 * 24 * 60 * MINUTE },
  told: { most: Number.MAX_SAFE_INTEGER, windowMs: 30 * 24 * 60 * MINUTE },
} as const satisfies Readonly<Record<string, TryLimit>>;

export type TryKind = keyof typeof TRY_LIMITS;

/** Counts one try, and says whether it may be evaluated. One statement, so that tries at the same time are each counted. */
export async function countTry(db: Store['db'], kind: TryKind, of: string, at: number): Promise<boolean> {
  const { most, windowMs } = TRY_LIMITS[kind];
  const over = sql<boolean>`throttle.since <= ${at - windowMs}`;
  const { count } = await db
    .insertInto('throttle')
    .values({ key: `${kind}:${of}`, count: 1, since: at, last: at })
    .onConflict((conflict) =>
      conflict.column('key').doUpdateSet({
        count: sql<number>`case when ${over} then 1 else throttle.count + 1 end`,
        since: sql<number>`case when ${over} then cast(${at} as bigint) else throttle.since end`,
        last: at,
      }),
    )
    .returning('count')
    .executeTakeFirstOrThrow();
  return count <= most;
}

/** Whether the tries counted so far leave room for another; counts nothing. */
export async function mayTry(db: Store['db'], kind: TryKind, of: string, at: number): Promise<boolean> {
  const counted = await db
    .selectFrom('throttle')
    .select('count')
    .where('key', '=', `${kind}:${of}`)
    .where('since', '>', at - TRY_LIMITS[kind].windowMs)
    .executeTakeFirst();
  return (counted?.count ?? 0) < TRY_LIMITS[kind].most;
}

/** Whom the tries counted so far keep out, and until when, ms. */
export async function locksOf(
  db: Store['db'],
  kinds: readonly TryKind[],
  at: number,
): Promise<ReadonlyMap<string, number>> {
  const locks = new Map<string, number>();
  for (const kind of kinds) {
    const { most, windowMs } = TRY_LIMITS[kind];
    const rows = await db
      .selectFrom('throttle')
      .select(['key', 'since'])
      .where('key', 'like', `${kind}:%`)
      .where('count', '>=', most)
      .where('since', '>', at - windowMs)
      .execute();
    for (const { key, since } of rows) {
      const of = key.slice(kind.length + 1);
      locks.set(of, Math.max(locks.get(of) ?? 0, since + windowMs));
    }
  }
  return locks;
}

export interface RefusedTries {
  readonly count: number;
  readonly last: number;
}

/** Tries refused since the sign-in before the last one; undefined when there was none. */
export async function refusedTries(db: Store['db'], of: string): Promise<RefusedTries | undefined> {
  const rows = await db
    .selectFrom('throttle')
    .select(['count', 'last'])
    .where('key', 'in', [`refused:${of}`, `told:${of}`])
    .execute();
  return rows.reduce<RefusedTries | undefined>(
    (sum, { count, last }) => ({
      count: count + (sum?.count ?? 0),
      last: Math.max(last, sum?.last ?? 0),
    }),
    undefined,
  );
}

/** Somebody signs in: what was refused up to now is told until they next do. */
export async function tellRefusedTries(db: Store['db'], of: string): Promise<void> {
  await forgetTries(db, ['told'], of);
  await db
    .updateTable('throttle')
    .set({ key: `told:${of}` })
    .where('key', '=', `refused:${of}`)
    .execute();
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
    .where((e) =>
      e.or([
        e('since', '<=', at - TRY_LIMITS.refused.windowMs),
        e.and([
          e('since', '<=', at - TRY_LIMITS.pinDay.windowMs),
          e('key', 'not like', 'refused:%'),
          e('key', 'not like', 'told:%'),
        ]),
      ]),
    )
    .execute();
}
