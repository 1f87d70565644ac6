import { chmodSync, closeSync, existsSync, openSync } from 'node:fs';
import type { SqliteDatabase } from 'kysely';
import { isRecord } from '../json/read-json';

/** How long a write waits for another program's write before it is refused, ms. The site stands still that long. */
const BUSY_MS = 2_000;

/** What we use of a driver. */
interface Driver<S extends Statement> {
  close(): unknown;
  prepare(sql: string): S;
}

interface Statement {
  all(...values: readonly unknown[]): unknown[];
  run(...values: readonly unknown[]): { changes: number | bigint; lastInsertRowid: number | bigint };
  iterate(...values: readonly unknown[]): IterableIterator<unknown>;
}

interface BuiltInStatement extends Statement {
  columns(): readonly unknown[];
}

/** Node's own `node:sqlite`, which Node 20 lacks. */
interface BuiltIn {
  readonly DatabaseSync: new (
    file: string,
    options: { readonly readOnly: boolean },
  ) => Driver<BuiltInStatement>;
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
  const builtIn: unknown = process.getBuiltinModule('node:sqlite' as 'node:fs');
  if (!isBuiltIn(builtIn)) return undefined;
  return forKysely(
    new builtIn.DatabaseSync(file, { readOnly }),
    (statement) => statement.columns().length > 0,
  );
}

function isBuiltIn(module: unknown): module is BuiltIn {
  return isRecord(module) && typeof module.DatabaseSync === 'function';
}

async function openPackage(file: string, readOnly: boolean): Promise<SqliteDatabase> {
  const { default: Database } = await import('better-sqlite3');
  return forKysely(new Database(file, { readonly: readOnly }), ({ reader }) => reader);
}

/** The site has some hundred statements; each is read by SQLite once, not at every use. The one that came first goes first. */
const MOST_PREPARED = 300;

function forKysely<S extends Statement>(driver: Driver<S>, reads: (statement: S) => boolean): SqliteDatabase {
  const prepared = new Map<string, ReturnType<SqliteDatabase['prepare']>>();
  const prepare = (sql: string) => {
    const statement = driver.prepare(sql);
    return {
      reader: reads(statement),
      all: (values: readonly unknown[]) => statement.all(...values),
      run: (values: readonly unknown[]) => statement.run(...values),
      // One that is gone through row by row is busy meanwhile.
      iterate: (values: readonly unknown[]) => driver.prepare(sql).iterate(...values),
    };
  };
  return {
    close: () => void driver.close(),
    prepare: (sql) => {
      const known = prepared.get(sql);
      if (known) return known;
      const [oldest] = prepared.keys();
      if (prepared.size >= MOST_PREPARED && oldest !== undefined) prepared.delete(oldest);
      const made = prepare(sql);
      prepared.set(sql, made);
      return made;
    },
  };
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
