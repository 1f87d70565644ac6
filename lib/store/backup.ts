import { closeSync, copyFileSync, existsSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { Kysely, SqliteDialect, sql } from 'kysely';
import { lastEntry, verifyAudit } from './audit';
import { type Store, sqliteFileIn } from './database';
import { migrationsDone, SCHEMA_NUMBER } from './migrate';
import type { Tables } from './schema';
import { keepPrivate, openSqlite, openSqliteToRead } from './sqlite';
import { asStoreProblem, StoreProblem } from './store-problem';

/** What a copy holds, so that two can be compared. */
export interface Contents {
  readonly handIns: number;
  readonly auditEntries: number;
  /** Hash of the newest audit entry: written down elsewhere, it shows whether the trail was ever shortened. */
  readonly auditHash: string;
}

/** A backup that cannot be made or used: the message says why. Nothing was changed. */
export class BackupError extends Error {
  override name = 'BackupError';
}

/** Copies a SQLite database while the site runs, and checks the copy before it gets its name. @throws BackupError. */
export async function backUp({ db, kind }: Store, file: string): Promise<Contents> {
  if (kind === 'postgres') {
    throw new BackupError(
      'This site keeps its data in PostgreSQL. Back it up with: pg_dump --format=custom --file=FILE "$DATABASE_URL"',
    );
  }
  if (existsSync(file)) throw new BackupError(`${file} is there already. Choose another name.`);
  if (!existsSync(dirname(file)))
    throw new BackupError(`${file} cannot be written: there is no folder ${dirname(file)}.`);
  const part = `${file}.part`;
  rmSync(part, { force: true });
  try {
    keepPrivate(part);
    await sql`vacuum into ${part}`.execute(db);
    const contents = await contentsOf(part);
    settle(part);
    renameSync(part, file);
    settle(dirname(file));
    return contents;
  } catch (error) {
    rmSync(part, { force: true });
    const problem = asStoreProblem(error);
    throw problem instanceof StoreProblem
      ? new BackupError(`${file} cannot be written: ${problem.message}.`)
      : problem;
  }
}

/** Reads a backup through: its pages, its references, its audit trail. @throws BackupError that says what is wrong with it. */
export async function contentsOf(file: string): Promise<Contents> {
  if (!existsSync(file)) throw new BackupError(`There is no file ${file}.`);
  let db: Kysely<Tables> | undefined;
  try {
    db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: await openSqliteToRead(file) }) });
    return await readThrough(db, file);
  } catch (error) {
    if (error instanceof BackupError) throw error;
    throw new BackupError(`${file} is no backup of this site, or it is damaged.`, { cause: error });
  } finally {
    await db?.destroy();
  }
}

async function readThrough(db: Kysely<Tables>, file: string): Promise<Contents> {
  const { rows: pages } = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(db);
  if (pages.length !== 1 || pages[0]?.integrity_check !== 'ok') throw new BackupError(`${file} is damaged.`);
  const { rows: loose } = await sql`pragma foreign_key_check`.execute(db);
  if (loose.length > 0) throw new BackupError(`${file} has ${loose.length} records that belong to nothing.`);
  const migrations = await migrationsDone(db);
  if (migrations > SCHEMA_NUMBER)
    throw new BackupError(`${file} is from a newer version of the site (migration ${migrations}).`);
  const trail = await verifyAudit(db);
  if (!trail.ok) throw new BackupError(`${file}: its audit trail was changed at entry ${trail.seq}.`);
  const { handIns } = await db
    .selectFrom('attempt')
    .select((e) => e.fn.countAll<number>().as('handIns'))
    .where('state', '!=', 'open')
    .executeTakeFirstOrThrow();
  const { seq, hash } = await lastEntry(db);
  return { handIns, auditEntries: seq, auditHash: hash };
}

/**
 * Puts a checked backup in the place of the database of a stopped site. The one that was there is kept beside it; `kept` is its
 * name, null when there was none. @throws BackupError, also while the site runs.
 */
export async function restore(
  file: string,
  dataDir: string,
  at: number,
): Promise<{ readonly contents: Contents; readonly kept: string | null }> {
  const contents = await contentsOf(file);
  const target = sqliteFileIn(dataDir);
  const part = `${target}.part`;
  copyFileSync(file, part);
  keepPrivate(part);
  settle(part);
  const kept = existsSync(target) ? `${target}.before-${at}` : null;
  if (kept !== null) {
    await refuseWhileOpen(target);
    renameSync(target, kept);
  }
  renameSync(part, target);
  settle(dataDir);
  return { contents, kept };
}

/** Leaving write-ahead logging needs the file alone, so it shows whether anybody else has it open; and it empties the log. */
async function refuseWhileOpen(file: string): Promise<void> {
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: await openSqlite(file) }) });
  try {
    const { rows } = await sql<{ journal_mode: string }>`pragma journal_mode = delete`.execute(db);
    if (rows[0]?.journal_mode !== 'delete') throw new StoreProblem('busy');
  } catch (error) {
    throw new BackupError('The site is running. Stop it first, then restore.', { cause: error });
  } finally {
    await db.destroy();
  }
}

/** Waits until a file or a folder is on disk. */
function settle(path: string): void {
  const handle = openSync(path, 'r');
  fsyncSync(handle);
  closeSync(handle);
}
