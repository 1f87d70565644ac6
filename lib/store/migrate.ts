import { type Kysely, sql } from 'kysely';
import type { Store } from './database';
import { guardAppendOnly } from './migrations/append-only';
import { makeDrawnForms } from './migrations/drawn-forms';
import { makeFirstTables } from './migrations/first-tables';
import { guardAttempts } from './migrations/forward-only';
import { makeInstrumentUses } from './migrations/instrument-uses';
import { indexScores } from './migrations/mark-book';
import { makeNamesSafe } from './migrations/safe-names';
import { makeSecondStep } from './migrations/second-step';

interface Migration {
  readonly name: string;
  readonly run: (db: Kysely<never>, kind: Store['kind']) => Promise<void>;
}

/** In order, numbered from 1. Only ever added to: what a released number does is in people's databases. */
const MIGRATIONS: readonly Migration[] = [
  { name: 'first tables', run: makeFirstTables },
  { name: 'append only', run: guardAppendOnly },
  { name: 'scores by the page', run: indexScores },
  { name: 'attempts only move forward', run: guardAttempts },
  { name: 'second step of signing in', run: makeSecondStep },
  { name: 'forms drawn ahead', run: makeDrawnForms },
  { name: 'names that are safe', run: makeNamesSafe },
  { name: 'uses of instruments', run: makeInstrumentUses },
];

export const SCHEMA_NUMBER = MIGRATIONS.length;

/** Any number, the same in every process: PostgreSQL's name for "who migrates". */
const MIGRATION_LOCK = 7_255_101;

/** The database belongs to a newer version of the site; nothing was touched. */
export class MigrationError extends Error {
  override name = 'MigrationError';
}

/**
 * Brings the tables up to date, all in one transaction, one process at a time: the others wait and then find nothing to do.
 * Gives how many migrations ran. @throws MigrationError when the database is newer than this program.
 */
export async function migrate({ db, kind }: Store, at: number): Promise<number> {
  return db.transaction().execute(async (trx) => {
    if (kind === 'postgres') await sql`select pg_advisory_xact_lock(${MIGRATION_LOCK})`.execute(trx);
    await trx.schema
      .createTable('migration')
      .ifNotExists()
      .addColumn('number', 'integer', (c) => c.primaryKey().notNull())
      .addColumn('name', 'text', (c) => c.notNull())
      .addColumn('applied_at', 'bigint', (c) => c.notNull())
      .execute();
    const done = await migrationsDone(trx);
    if (done > MIGRATIONS.length) {
      throw new MigrationError(
        `The database has migration ${done}; this version of the site knows ${MIGRATIONS.length}. Start a newer version, or restore an older backup.`,
      );
    }
    for (const [index, { name, run }] of MIGRATIONS.slice(done).entries()) {
      await run(trx as unknown as Kysely<never>, kind);
      await trx
        .insertInto('migration')
        .values({ number: done + index + 1, name, applied_at: at })
        .execute();
    }
    return MIGRATIONS.length - done;
  });
}

/** The greatest number applied; 0 in an empty database. */
export async function migrationsDone(db: Store['db']): Promise<number> {
  const { last } = await db
    .selectFrom('migration')
    .select((e) => e.fn.max('number').as('last'))
    .executeTakeFirstOrThrow();
  return last ?? 0;
}
