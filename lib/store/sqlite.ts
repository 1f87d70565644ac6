import { chmodSync, closeSync, existsSync, openSync } from 'node:fs';
import type { SqliteDatabase } from 'kysely';

/** How long a write waits for another program's write before it is refused, ms. The site stands still that long. */
const BUSY_MS = 2_000;

/** What we use of Node's own `node:sqlite`, which Node 20 lacks. */
interface BuiltIn {
  readonly DatabaseSync: new (file: string, options: { readonly readOnly: boolean }) => BuiltInDatabase;
}

interface BuiltInDatabase {
  exec(sql: string): void;
  close(): void;
  prepare(sql: string): BuiltInStatement;
}

interface BuiltInStatement {
  columns(): readonly unknown[];
  all(...values: readonly unknown[]): unknown[];
  run(...values: readonly unknown[]): { changes: number | bigint; lastInsertRowid: number | bigint };
  iterate(...values: readonly unknown[]): IterableIterator<unknown>;
}

/** Opens a SQLite file with Node's own SQLite where there is one, else with better-sqlite3. Safe against a power cut. */
export async function openSqlite(file: string): Promise<SqliteDatabase> {
  keepPrivate(file);
  const raw = await openFile(file, false);
  for (const pragma of [
    `busy_timeout = ${BUSY_MS}`,
    'journal_mode = WAL',
    'synchronous = FULL',
    'foreign_keys = ON',
  ]) {
    const statement = raw.prepare(`pragma ${pragma}`);
    if (statement.reader) statement.all([]);
    else statement.run([]);
  }
  return withHonestTransactions(raw);
}

/**
 * Makes the file where there is none, and lets nobody but this user read it or what SQLite lays beside it. A file of another
 * user is left to them.
 */
export function keepPrivate(file: string): void {
  if (!existsSync(file)) closeSync(openSync(file, 'a', 0o600));
  for (const each of [file, `${file}-wal`, `${file}-shm`]) {
    try {
      chmodSync(each, 0o600);
    } catch {}
  }
}

/** Opens a file to look into it; nothing of it changes. */
export async function openSqliteToRead(file: string): Promise<SqliteDatabase> {
  return openFile(file, true);
}

async function openFile(file: string, readOnly: boolean): Promise<SqliteDatabase> {
  return (await openBuiltIn(file, readOnly)) ?? (await openPackage(file, readOnly));
}

async function openBuiltIn(file: string, readOnly: boolean): Promise<SqliteDatabase | undefined> {
  const builtIn = process.getBuiltinModule('node:sqlite' as 'node:fs') as unknown as BuiltIn | undefined;
  if (builtIn === undefined) return undefined;
  const database = new builtIn.DatabaseSync(file, { readOnly });
  return {
    close: () => database.close(),
    prepare: (sql) => {
      const statement = database.prepare(sql);
      return {
        reader: statement.columns().length > 0,
        all: (values) => statement.all(...values),
        run: (values) => statement.run(...values),
        iterate: (values) => statement.iterate(...values),
      };
    },
  };
}

async function openPackage(file: string, readOnly: boolean): Promise<SqliteDatabase> {
  const { default: Database } = await import('better-sqlite3');
  // The package knows its own types of what may be bound; the query builder hands on what we gave it.
  return new Database(file, { readonly: readOnly }) as unknown as SqliteDatabase;
}

/**
 * A transaction takes the right to write at its beginning: two that read first and write later could both be refused at
 * the end. And SQLite ends a transaction by itself when the disk is full: the roll-back that follows then has nothing to
 * do, and its complaint must not hide why.
 */
function withHonestTransactions(raw: SqliteDatabase): SqliteDatabase {
  return {
    close: () => raw.close(),
    prepare: (sql) => {
      const statement = raw.prepare(sql === 'begin' ? 'begin immediate' : sql);
      if (sql !== 'rollback') return statement;
      return {
        reader: false,
        all: () => [],
        iterate: () => [].values(),
        run: () => {
          try {
            return statement.run([]);
          } catch (error) {
            if (!/no transaction is active/.test(String(error))) throw error;
            return { changes: 0, lastInsertRowid: 0 };
          }
        },
      };
    },
  };
}
