import { join } from 'node:path';
import { Kysely, PostgresDialect, SqliteDialect } from 'kysely';
import pg from 'pg';
import type { Tables } from './schema';
import { openSqlite } from './sqlite';

export interface StoreSettings {
  /** The folder of the SQLite file; it has to be there. */
  readonly dataDir: string;
  /** A PostgreSQL to use instead, or null. */
  readonly databaseUrl: string | null;
}

export interface Store {
  readonly db: Kysely<Tables>;
  readonly kind: 'sqlite' | 'postgres';
  readonly close: () => Promise<void>;
}

/** What we use of a connection's socket, which the driver's types leave out. */
interface Stream {
  readonly setTimeout: (ms: number, silent: () => void) => void;
  readonly destroy: () => void;
}

/** PostgreSQL's number for its type bigint. */
const BIGINT = 20;
/** A statement that takes longer is given up, and the asker told that the database is busy, ms. */
const PATIENCE_MS = 10_000;
/**
 * A server that is there has answered by then, ms: a connection on which nothing has come is given up. Where a machine has gone without
 * a word, the system would hold on to it for a quarter of an hour.
 */
const SILENCE_MS = PATIENCE_MS + 2_000;

export function sqliteFileIn(dataDir: string): string {
  return join(dataDir, 'read-the-wall.sqlite');
}

/** Opens the database; `migrate` then brings its tables up to date. */
export async function openDatabase(settings: StoreSettings): Promise<Store> {
  return settings.databaseUrl === null ? openFile(settings.dataDir) : openServer(settings.databaseUrl);
}

async function openFile(dataDir: string): Promise<Store> {
  const database = await openSqlite(sqliteFileIn(dataDir));
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database }) });
  return { db, kind: 'sqlite', close: () => db.destroy() };
}

function openServer(databaseUrl: string): Store {
  const pool = new pg.Pool({
    connectionString: databaseUrl,
    max: 10,
    connectionTimeoutMillis: PATIENCE_MS,
    statement_timeout: PATIENCE_MS,
    lock_timeout: PATIENCE_MS,
    // Times and counts come as text otherwise. All of ours are exact below 2^53.
    types: {
      getTypeParser: (type: number, format?: 'text' | 'binary') =>
        type === BIGINT && format !== 'binary' ? Number : pg.types.getTypeParser(type, format as 'text'),
    },
  });
  // A connection that breaks is replaced at the next query; unheard it would end the process, idle or between two queries.
  pool.on('error', () => undefined);
  pool.on('connect', (client) => {
    client.on('error', () => undefined);
    const { stream } = (client as unknown as { readonly connection: { readonly stream: Stream } }).connection;
    stream.setTimeout(SILENCE_MS, () => stream.destroy());
  });
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  return { db, kind: 'postgres', close: () => db.destroy() };
}
