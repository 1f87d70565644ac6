import { createHash } from 'node:crypto';
import { setTimeout as wait } from 'node:timers/promises';
import { type Kysely, sql, type Transaction } from 'kysely';
import type { Store } from './database';
import type { Tables } from './schema';
import { isBusyFile } from './store-problem';

export interface AuditEntry {
  readonly at: number;
  /** Who did it: 'user ID', 'learner ID' or 'server'. Never a name. */
  readonly actor: string;
  readonly action: string;
  /** What it was done to: 'attempt ID', 'group ID' … */
  readonly subject: string;
  /** Kept as JSON. No names and no secrets. */
  readonly detail: unknown;
}

export interface AuditRow {
  readonly seq: number;
  readonly at: number;
  readonly actor: string;
  readonly action: string;
  readonly subject: string;
  readonly detail: string;
  readonly previous: string;
  readonly hash: string;
}

/** What the first entry follows on. */
export const FIRST_PREVIOUS = '0'.repeat(64);

/** Any number, the same in every process: PostgreSQL's name for "who writes the next entry". */
const AUDIT_LOCK = 7_255_102;
/** Entries read at once while the chain is followed. */
const PAGE = 1_000;

/**
 * Adds an entry whose hash holds the hash of the one before, so that none can be changed, dropped or put between. Call it
 * last in a transaction: from here to its end no other process can add one.
 */
export async function appendAudit(
  trx: Transaction<Tables>,
  kind: Store['kind'],
  entry: AuditEntry,
): Promise<AuditRow> {
  if (kind === 'postgres') await sql`select pg_advisory_xact_lock(${AUDIT_LOCK})`.execute(trx);
  const last = await lastEntry(trx);
  const row = { ...entry, seq: last.seq + 1, detail: JSON.stringify(entry.detail), previous: last.hash };
  const whole = { ...row, hash: hashOf(row) };
  await trx.insertInto('audit').values(whole).execute();
  return whole;
}

/** Who changes something, and when. */
export type By = Pick<AuditEntry, 'actor' | 'at'>;

/** Changes something and then calls `note`. */
export type Change<T> = (
  trx: Transaction<Tables>,
  note: (action: string, subject: string, detail?: unknown) => Promise<AuditRow>,
) => Promise<T>;

/** How often a change is tried where another process writes, and ms between two tries. */
const MOST_TRIES = 4;
const BETWEEN_TRIES_MS = 20;

/** A change and its entry in the trail, in one transaction. */
export async function audited<T>(store: Store, by: By, change: Change<T>, tries = 1): Promise<T> {
  try {
    return await store.db
      .transaction()
      .execute((trx) =>
        change(trx, (action, subject, detail = {}) =>
          appendAudit(trx, store.kind, { ...by, action, subject, detail }),
        ),
      );
  } catch (error) {
    // SQLite keeps no line: of several processes one can find another writing each time it looks.
    if (tries === MOST_TRIES || !isBusyFile(error)) throw error;
    await wait(BETWEEN_TRIES_MS);
    return audited(store, by, change, tries + 1);
  }
}

/** The newest entry; write its hash down elsewhere, and nobody can shorten the trail unseen. */
export async function lastEntry(db: Kysely<Tables>): Promise<Pick<AuditRow, 'seq' | 'hash'>> {
  const last = await db
    .selectFrom('audit')
    .select(['seq', 'hash'])
    .orderBy('seq', 'desc')
    .limit(1)
    .executeTakeFirst();
  return last ?? { seq: 0, hash: FIRST_PREVIOUS };
}

/** Follows the whole chain. `seq` is the first entry that does not fit: changed, or after one that is gone. */
export async function verifyAudit(
  db: Kysely<Tables>,
): Promise<{ readonly ok: true } | { readonly ok: false; readonly seq: number }> {
  let before: Pick<AuditRow, 'seq' | 'hash'> = { seq: 0, hash: FIRST_PREVIOUS };
  for (;;) {
    const rows = await db
      .selectFrom('audit')
      .selectAll()
      .where('seq', '>', before.seq)
      .orderBy('seq')
      .limit(PAGE)
      .execute();
    for (const row of rows) {
      const fits = row.seq === before.seq + 1 && row.previous === before.hash && row.hash === hashOf(row);
      if (!fits) return { ok: false, seq: row.seq };
      before = row;
    }
    if (rows.length < PAGE) return { ok: true };
  }
}

function hashOf({ seq, at, actor, action, subject, detail, previous }: Omit<AuditRow, 'hash'>): string {
  return createHash('sha256')
    .update(JSON.stringify([seq, at, actor, action, subject, detail, previous]))
    .digest('hex');
}
