import { Kysely, type SqliteDatabase, SqliteDialect, sql } from 'kysely';
import { describe, expect, inject, onTestFinished, test } from 'vitest';
import type { Store } from '../../lib/store/database';
import { openDatabase, sqliteFileIn } from '../../lib/store/database';
import type { Tables } from '../../lib/store/schema';
import { openSqlite } from '../../lib/store/sqlite';
import { StoreProblem } from '../../lib/store/store-problem';
import { startPostgres } from '../commands/postgres.mjs';
import { openFloatingAddress } from '../kills/addresses';
import { ask } from '../kills/ask';
import { startStandby } from '../kills/standby';
import { ownDatabase, readyStore } from './databases';
import { HALF, recordHandIn, sampleAttempt, sampleHandIn } from './samples/sample-attempt';

const WAITS_FOR_STANDBY = "select pid from pg_stat_activity where wait_event = 'SyncRep'";
/** Results this long do not fit into the pages that are left. */
const LONG = HALF.results.map((result) => ({ ...result, capped: 'x'.repeat(400_000) }));

async function troubleOf(work: Promise<unknown>): Promise<unknown> {
  const error = await work.then(
    () => 'none',
    (thrown: unknown) => thrown,
  );
  return error instanceof StoreProblem ? error.trouble : error;
}

/** Nothing of a hand-in is there, and the attempt waits for it. */
async function untouched({ db }: Store): Promise<boolean> {
  const attempts = await db.selectFrom('attempt').select(['state', 'hand_in_key']).execute();
  const walls = await db.selectFrom('attempt_wall').select('marks').execute();
  const results = await db.selectFrom('result_version').select('version').execute();
  const entries = await db.selectFrom('audit').select('seq').execute();
  return (
    attempts.every(({ state, hand_in_key }) => state === 'open' && hand_in_key === null) &&
    walls.every(({ marks }) => marks === '[]') &&
    results.length + entries.length === 0
  );
}

describe('SQLite that cannot write', () => {
  test('a full disk is told, nothing is half written, and the next hand-in goes in once there is room', async () => {
    const store = await readyStore(await ownDatabase('sqlite'));
    const mine = await sampleAttempt(store);
    const { rows } = await sql<{ page_count: number }>`pragma page_count`.execute(store.db);
    // SQLite's own limit on the file stands in for the disk: the error is the same SQLITE_FULL.
    await sql.raw(`pragma max_page_count = ${(rows[0]?.page_count ?? 0) + 20}`).execute(store.db);
    const long = sampleHandIn(mine, { grade: () => ({ engine: '1', results: LONG, score: 0.5 }) });
    expect(await troubleOf(recordHandIn(store, long))).toBe('full');
    expect(await untouched(store)).toBe(true);
    await sql`pragma max_page_count = 1000000`.execute(store.db);
    expect(await recordHandIn(store, long)).toMatchObject({ replay: false });
  });

  test('a file that may only be read', async () => {
    const store = await readyStore(await ownDatabase('sqlite'));
    const mine = await sampleAttempt(store);
    await sql`pragma query_only = 1`.execute(store.db);
    expect(await troubleOf(recordHandIn(store, sampleHandIn(mine)))).toBe('read-only');
    expect(await untouched(store)).toBe(true);
    await sql`pragma query_only = 0`.execute(store.db);
    expect(await recordHandIn(store, sampleHandIn(mine))).toMatchObject({ replay: false });
  });

  test('a disk that takes a second and a half for each commit: some are taken, the others sent away, nothing between', async () => {
    const { dataDir } = await ownDatabase('sqlite');
    const quick = await readyStore({ dataDir, databaseUrl: null });
    const attempts = [];
    for (let n = 0; n < 10; n += 1) attempts.push(await sampleAttempt(quick));
    const store = await slowStore(dataDir, 1_500);
    const ends = await Promise.all(
      attempts.map((mine) =>
        troubleOf(recordHandIn(store, sampleHandIn(mine)).then(() => Promise.reject('taken'))),
      ),
    );
    const taken = ends.filter((end) => end === 'taken').length;
    expect(ends.filter((end) => end === 'busy')).toHaveLength(10 - taken);
    expect([taken > 0, taken < 10]).toEqual([true, true]);
    const marked = await quick.db.selectFrom('attempt').select('id').where('state', '=', 'marked').execute();
    expect(marked).toHaveLength(taken);
    expect(await quick.db.selectFrom('audit').select('seq').execute()).toHaveLength(taken);
  });

  test('a file that another program holds', async () => {
    const settings = await ownDatabase('sqlite');
    const store = await readyStore(settings);
    const mine = await sampleAttempt(store);
    const other = await openDatabase(settings);
    const held = await other.db.startTransaction().execute();
    expect(await troubleOf(recordHandIn(store, sampleHandIn(mine)))).toBe('busy');
    await held.rollback().execute();
    expect(await untouched(store)).toBe(true);
    expect(await recordHandIn(store, sampleHandIn(mine))).toMatchObject({ replay: false });
    await other.close();
  });
});

describe('PostgreSQL that cannot write', () => {
  test('a full disk is told, nothing is half written', async () => {
    const store = await readyStore(await ownDatabase('postgres'));
    const mine = await sampleAttempt(store);
    // 53100 is what the server says when a file cannot grow; here at the last but one step of the hand-in.
    await sql`create function no_room() returns trigger language plpgsql as $$ begin raise exception 'could not extend file' using errcode = '53100'; end $$`.execute(
      store.db,
    );
    await sql`create trigger no_room before insert on result_version for each row execute function no_room()`.execute(
      store.db,
    );
    expect(await troubleOf(recordHandIn(store, sampleHandIn(mine)))).toBe('full');
    expect(await untouched(store)).toBe(true);
  });

  test('a database that may only be read', async () => {
    const settings = await ownDatabase('postgres');
    const first = await readyStore(settings);
    const mine = await sampleAttempt(first);
    const name = new URL(settings.databaseUrl ?? '').pathname.slice(1);
    await ask(inject('postgres'), `alter database ${name} set default_transaction_read_only = on`);
    const store = await openDatabase(settings);
    expect(await troubleOf(recordHandIn(store, sampleHandIn(mine)))).toBe('read-only');
    expect(await untouched(store)).toBe(true);
    await store.close();
  });

  test('a row that another process holds for too long', async () => {
    const store = await readyStore(await ownDatabase('postgres', '?lock_timeout=300'));
    const mine = await sampleAttempt(store);
    const held = await store.db.startTransaction().execute();
    await held.updateTable('attempt').set({ late: 1 }).execute();
    expect(await troubleOf(recordHandIn(store, sampleHandIn(mine)))).toBe('busy');
    await held.rollback().execute();
    expect(await untouched(store)).toBe(true);
  });

  test('a server that went away in the middle, and came back', async () => {
    const settings = await ownDatabase('postgres');
    const store = await readyStore(settings);
    const mine = await sampleAttempt(store);
    const name = new URL(settings.databaseUrl ?? '').pathname.slice(1);
    const dropConnections = `select pg_terminate_backend(pid) from pg_stat_activity where datname = '${name}'`;
    const held = await store.db.startTransaction().execute();
    await held.updateTable('attempt').set({ late: 1 }).execute();
    const waiting = troubleOf(recordHandIn(store, sampleHandIn(mine)));
    await untilWaiting(inject('postgres'), name);
    await ask(inject('postgres'), dropConnections);
    expect(await waiting).toBe('unreachable');
    await held
      .rollback()
      .execute()
      .catch(() => undefined);
    expect(await untouched(store)).toBe(true);
    expect(await recordHandIn(store, sampleHandIn(mine))).toMatchObject({ replay: false });
  });

  test('a server that falls silent is given up, and the hand-in goes in once another has its address', async () => {
    const settings = await ownDatabase('postgres');
    const url = new URL(settings.databaseUrl ?? '');
    const server = Number(url.port);
    const floating = await openFloatingAddress(server);
    onTestFinished(floating.close);
    url.port = String(floating.port);
    const store = await readyStore({ ...settings, databaseUrl: url.href });
    const mine = await sampleAttempt(store);
    floating.fallSilent();
    expect(await troubleOf(recordHandIn(store, sampleHandIn(mine)))).toBe('unreachable');
    floating.moveTo(server);
    expect(await untouched(store)).toBe(true);
    expect(await recordHandIn(store, sampleHandIn(mine))).toMatchObject({ replay: false });
  });

  test('no server at all', async () => {
    const store = await openDatabase({ dataDir: '', databaseUrl: 'postgres://wall:x@127.0.0.1:1/wall' });
    expect(await troubleOf(recordHandIn(store, sampleHandIn({ attempt: 'a', learner: 'b' })))).toBe(
      'unreachable',
    );
    await store.close();
  });
});

describe('PostgreSQL with a standby', () => {
  test('what the standby may not have is not acknowledged, also when the same hand-in comes again', async () => {
    const first = await startPostgres();
    onTestFinished(first.stop);
    const standby = await startStandby(first);
    onTestFinished(standby.stop);
    const store = await readyStore({ dataDir: '', databaseUrl: first.address });
    const handIn = sampleHandIn(await sampleAttempt(store));

    standby.crash();
    const cutOff = recordHandIn(store, handIn).catch(() => 'no receipt');
    await expect.poll(async () => (await ask(first.address, WAITS_FOR_STANDBY)).rowCount).toBe(1);
    await ask(first.address, `select pg_terminate_backend(pid) from (${WAITS_FOR_STANDBY}) as waiting`);
    expect(await cutOff).toBe('no receipt');
    // From here on the first database shows the hand-in, and it alone has it.
    const again = recordHandIn(store, handIn);
    const waiting = expect.poll(async () => (await ask(first.address, WAITS_FOR_STANDBY)).rowCount).toBe(1);
    expect(await Promise.race([again, waiting.then(() => 'it waits')])).toBe('it waits');

    standby.start();
    const receipt = await again;
    expect(receipt).toMatchObject({ attempt: handIn.attempt, replay: true });
    await store.close();
    first.crash();
    standby.promote();
    const second = await openDatabase({ dataDir: '', databaseUrl: standby.address });
    onTestFinished(second.close);
    expect(await recordHandIn(second, handIn)).toEqual(receipt);
  });
});

/** A store whose disk needs that long to say that a commit is on it. */
async function slowStore(dataDir: string, ms: number): Promise<Store> {
  const quick = await openSqlite(sqliteFileIn(dataDir));
  const database: SqliteDatabase = {
    close: () => quick.close(),
    prepare: (text) => {
      if (text === 'commit') Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
      return quick.prepare(text);
    },
  };
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database }) });
  onTestFinished(() => db.destroy());
  return { db, kind: 'sqlite', close: () => db.destroy() };
}

/** Until some query of that database waits for a lock. */
async function untilWaiting(server: string, name: string): Promise<void> {
  await ask(
    server,
    `do $$ begin loop exit when exists (select 1 from pg_stat_activity where datname = '${name}' and wait_event_type = 'Lock'); perform pg_sleep(0.01); perform pg_stat_clear_snapshot(); end loop; end $$`,
  );
}
