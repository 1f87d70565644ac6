import { statSync, writeFileSync } from 'node:fs';
import { sql } from 'kysely';
import { describe, expect, test } from 'vitest';
import { resultOf } from '../../lib/store/attempts';
import { openDatabase, sqliteFileIn } from '../../lib/store/database';
import { MigrationError, migrate, migrationsDone, SCHEMA_NUMBER } from '../../lib/store/migrate';
import { runChild } from '../kills/children';
import { emptyDatabase, KINDS, ownDatabase, readyStore } from './databases';
import { NOON, recordHandIn, sampleAttempt, sampleGroup, sampleHandIn } from './samples/sample-attempt';

describe.each(KINDS)('%s: tables', (kind) => {
  test('the first start makes them, the second finds nothing to do', async () => {
    const settings = await emptyDatabase(kind);
    const store = await openDatabase(settings);
    expect(await migrate(store, NOON)).toBe(SCHEMA_NUMBER);
    expect(await migrate(store, NOON)).toBe(0);
    expect(await migrationsDone(store.db)).toBe(SCHEMA_NUMBER);
    await store.close();
  });

  test('of four processes that start at once one makes them and three wait', async () => {
    const settings = await emptyDatabase(kind);
    const ran = await Promise.all([1, 2, 3, 4].map(() => runChild('migrate', settings)));
    expect(ran.sort()).toEqual(['0', '0', '0', String(SCHEMA_NUMBER)]);
  });

  test('a database of a newer version is refused and left as it is', async () => {
    const store = await readyStore(await ownDatabase(kind));
    await store.db
      .insertInto('migration')
      .values({ number: 999, name: 'from the future', applied_at: NOON })
      .execute();
    await expect(migrate(store, NOON)).rejects.toThrow(
      new MigrationError(
        `The database has migration 999; this version of the site knows ${SCHEMA_NUMBER}. Start a newer version, or restore an older backup.`,
      ),
    );
    expect(await migrationsDone(store.db)).toBe(999);
  });

  test('times, counts and shares come back as numbers, JSON letter for letter', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { attempt } = await sampleAttempt(store);
    const results = '{"b":1,  "a":[0.1]}';
    await store.db
      .insertInto('result_version')
      .values({
        attempt_id: attempt,
        version: 1,
        engine: '1',
        results,
        score: 0.1,
        reason: 'handed in',
        made_by: 'server',
        made_at: 9_007_199_254_740_991,
      })
      .execute();
    const row = await store.db.selectFrom('result_version').selectAll().executeTakeFirstOrThrow();
    expect({ score: row.score, results: row.results, at: row.made_at }).toEqual({
      score: 0.1,
      results,
      at: 9_007_199_254_740_991,
    });
    const { count } = await store.db
      .selectFrom('attempt_wall')
      .select((e) => e.fn.countAll<number>().as('count'))
      .executeTakeFirstOrThrow();
    expect(count).toBe(2);
  });

  test('a learner who goes takes along all that is theirs', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { learner } = await sampleAttempt(store);
    await store.db.deleteFrom('learner').where('id', '=', learner).execute();
    const left = await store.db.selectFrom('attempt_wall').select('place').execute();
    expect(left).toEqual([]);
  });

  test('a record that belongs to nothing is refused', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { work } = await sampleGroup(store);
    await expect(
      sql`insert into attempt (id, set_work_id, learner_id, number, state, started_at) values ('a', ${work}, 'nobody', 1, 'open', 0)`.execute(
        store.db,
      ),
    ).rejects.toThrow(/foreign key/i);
  });

  test('an attempt only moves forward, and its hand-in stays', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const mine = await sampleAttempt(store);
    await recordHandIn(store, sampleHandIn(mine));
    const changes = [
      "state = 'open', handed_in_at = null",
      "state = 'handed in'",
      "hand_in_key = 'other'",
      'handed_in_at = 1',
    ];
    for (const change of changes) {
      await expect(sql.raw(`update attempt set ${change}`).execute(store.db)).rejects.toThrow(
        'an attempt only moves forward',
      );
    }
    await sql.raw("update attempt set state = 'released', late = 1").execute(store.db);
    await expect(sql.raw("update attempt set state = 'marked'").execute(store.db)).rejects.toThrow(
      'an attempt only moves forward',
    );
  });

  test('a result is never changed', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { attempt } = await sampleAttempt(store);
    await sql`insert into result_version values (${attempt}, 1, '1', '[]', 1, 'handed in', 'server', 0)`.execute(
      store.db,
    );
    await expect(sql`update result_version set score = 0`.execute(store.db)).rejects.toThrow(
      'a result is never changed, a new version is added',
    );
  });
});

test.each([
  ['journal_mode', 'wal'],
  ['synchronous', 2],
  ['foreign_keys', 1],
])('SQLite runs with %s = %s', async (name, value) => {
  const store = await readyStore(await ownDatabase('sqlite'));
  const { rows } = await sql.raw<Record<string, unknown>>(`pragma ${name}`).execute(store.db);
  expect(rows).toEqual([{ [name]: value }]);
});

test('nobody but this user may read the file, nor what SQLite lays beside it', async () => {
  const settings = await emptyDatabase('sqlite');
  const file = sqliteFileIn(settings.dataDir);
  // As an older version of the site left it.
  writeFileSync(file, '', { mode: 0o644 });
  const { db } = await readyStore(settings);
  await sql`create table tried (n integer)`.execute(db);
  const modes = [file, `${file}-wal`, `${file}-shm`].map((each) => statSync(each).mode & 0o777);
  expect(modes).toEqual([0o600, 0o600, 0o600]);
});

test('of two own marks of one moment the one that the mark book shows counts', async () => {
  const store = await readyStore(await ownDatabase('sqlite'));
  const mine = await sampleAttempt(store);
  await recordHandIn(store, sampleHandIn(mine));
  for (const [id, score] of [
    ['b', 0.9],
    ['a', 0.1],
  ] as const) {
    await store.db
      .insertInto('override_mark')
      .values({
        id,
        attempt_id: mine.attempt,
        score,
        reason: 'seen on site',
        made_by: 'user 1',
        made_at: NOON,
      })
      .execute();
  }
  expect((await resultOf(store, mine.attempt))?.score).toBe(0.9);
});
