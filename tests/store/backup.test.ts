import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sql } from 'kysely';
import { describe, expect, test } from 'vitest';
import { backUp, contentsOf, restore } from '../../lib/store/backup';
import { sqliteFileIn } from '../../lib/store/database';
import { startChild } from '../kills/children';
import { ownDatabase, readyStore } from './databases';
import { NOON, recordHandIn, sampleAttempt, sampleHandIn } from './samples/sample-attempt';

async function ready() {
  const settings = await ownDatabase('sqlite');
  const store = await readyStore(settings);
  const mine = await sampleAttempt(store);
  await recordHandIn(store, sampleHandIn(mine));
  return { settings, store, mine, file: join(settings.dataDir, 'copy.sqlite') };
}

describe('backup', () => {
  test('made while other processes hand in, it is whole, and holds all that was acknowledged before it', async () => {
    const { settings, store, mine, file } = await ready();
    const child = await startChild('hand-in', settings, mine.work, mine.learner);
    while (child.lines.length < 20) await new Promise((resolve) => setTimeout(resolve, 5));
    const before = [...child.lines];
    const contents = await backUp(store, file);
    child.process.kill('SIGKILL');
    await child.ended;
    expect(contents.handIns).toBeGreaterThan(before.length);
    expect(contents.auditEntries).toBe(contents.handIns);
    expect(await contentsOf(file)).toEqual(contents);
  });

  test('restored into an empty folder and over another database, which is kept', async () => {
    const { store, mine, file } = await ready();
    const contents = await backUp(store, file);
    const { dataDir } = await ownDatabase('sqlite');
    expect(await restore(file, dataDir, NOON)).toEqual({ contents, kept: null });
    const restored = await readyStore({ dataDir, databaseUrl: null });
    const attempts = await restored.db.selectFrom('attempt').select('id').execute();
    expect(attempts).toEqual([{ id: mine.attempt }]);
    await restored.db.deleteFrom('learning_group').execute();
    await restored.close();
    const { kept } = await restore(file, dataDir, NOON);
    expect(kept).toBe(`${sqliteFileIn(dataDir)}.before-${NOON}`);
    expect(existsSync(kept ?? '')).toBe(true);
    const again = await readyStore({ dataDir, databaseUrl: null });
    expect(await again.db.selectFrom('attempt').select('id').execute()).toHaveLength(1);
  });

  test('not over the database of a running site', async () => {
    const { settings, store, file } = await ready();
    await backUp(store, file);
    await expect(restore(file, settings.dataDir, NOON)).rejects.toThrow(
      'The site is running. Stop it first, then restore.',
    );
    expect(await store.db.selectFrom('attempt').select('id').execute()).toHaveLength(1);
  });

  test('a file that is there is not written over', async () => {
    const { store, file } = await ready();
    writeFileSync(file, 'a photograph');
    await expect(backUp(store, file)).rejects.toThrow(`${file} is there already. Choose another name.`);
    expect(readFileSync(file, 'utf8')).toBe('a photograph');
  });

  test('a folder that is not there: told, and nothing is left behind', async () => {
    const { store, settings } = await ready();
    await expect(backUp(store, join(settings.dataDir, 'nowhere', 'copy'))).rejects.toThrow(
      'cannot be written',
    );
    expect(readdirSync(settings.dataDir).filter((name) => name.includes('part'))).toEqual([]);
  });

  test.each([
    ['one byte turned over in the audit trail', /damaged|audit trail was changed at entry 1/],
    ['cut short', /damaged/],
    ['something else', /no backup of this site/],
    ['of a newer version', /from a newer version of the site \(migration 999\)/],
  ])('a copy that is %s is refused', async (what, words) => {
    const { store, settings, file } = await ready();
    if (what === 'of a newer version')
      await sql`insert into migration (number, name, applied_at) values (999, 'newer', 0)`.execute(store.db);
    if (what !== 'of a newer version') await backUp(store, file);
    else await sql`vacuum into ${file}`.execute(store.db);
    const bytes = readFileSync(file);
    if (what.startsWith('one byte')) {
      const at = bytes.indexOf('handed in', bytes.indexOf('learner '));
      bytes[at] = (bytes[at] ?? 0) ^ 1;
      writeFileSync(file, bytes);
    }
    if (what === 'cut short') writeFileSync(file, bytes.subarray(0, bytes.length / 2));
    if (what === 'something else') writeFileSync(file, 'a photograph');
    await expect(restore(file, settings.dataDir, NOON)).rejects.toThrow(words);
  });
});

test('a PostgreSQL is backed up with its own program, which is named', async () => {
  const store = await readyStore(await ownDatabase('postgres'));
  await expect(backUp(store, 'copy')).rejects.toThrow('pg_dump --format=custom --file=FILE "$DATABASE_URL"');
});
