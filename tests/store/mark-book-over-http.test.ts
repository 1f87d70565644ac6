import { describe, expect, test } from 'vitest';
import { ENGINE } from '../../lib/generate/brief';
import { calendarBehind } from '../../lib/store/calendar';
import { recordsOfLearner } from '../../lib/store/hand-in-record';
import { sha256Of } from '../../lib/store/receipt';
import { KINDS, type Kind } from './databases';
import { INVENTED_LEARNERS, inventGroup } from './samples/invented-group';
import { openAttempt } from './samples/sample-attempt';
import { openPeople } from './visitor';

const ADA = { name: 'Ada Clay', email: 'ada@example.org', password: 'four red bricks' };

/** The owner signed in, and a group of two who have handed in three walls on line and level. */
async function openBook(kind: Kind) {
  const site = await openPeople(kind);
  const ada = site.newVisitor();
  await ada.post('/api/people/set-up', { code: await site.startCode(), ...ADA });
  const book = await inventGroup(site.store, {
    name: 'Invented',
    number: 1,
    learners: INVENTED_LEARNERS.slice(8, 10),
    works: [{ title: 'Line', topics: ['line'], walls: 3, difficulty: 2, sameForAll: true }],
  });
  return { ...site, ada, ...book, work: book.works[0] ?? '', attempt: book.attempts[0]?.[0] ?? '' };
}

describe.each(KINDS)('%s: changing the mark book over HTTP', (kind) => {
  test('an own mark in percent, with a reason and the name of who set it', async () => {
    const { store, ada, attempt, learners } = await openBook(kind);
    const given = await ada.post('/api/book/override', {
      attempt,
      score: ' 87,5 % ',
      reason: 'The light was out',
    });
    expect([given.status, given.body]).toEqual([200, { ok: true }]);
    const [record] = await recordsOfLearner(store.db, learners[0] ?? '');
    expect(record?.ownMarks).toMatchObject([{ score: 0.875, reason: 'The light was out', by: 'Ada Clay' }]);
    expect(record?.markings.length).toBe(1);
  });

  test('a mark that is none, or has no reason, is refused at the field', async () => {
    const { store, ada, attempt } = await openBook(kind);
    const cases: readonly (readonly [score: string, reason: string, fields: readonly string[]])[] = [
      ['101', 'Too good', ['score']],
      ['-1', 'Too bad', ['score']],
      ['eighty', 'In words', ['score']],
      ['80', ' ', ['reason']],
      ['', '', ['score', 'reason']],
    ];
    for (const [score, reason, fields] of cases) {
      const given = await ada.post('/api/book/override', { attempt, score, reason });
      expect([given.status, Object.keys(given.body.fields ?? {})]).toEqual([422, fields]);
    }
    expect(await store.db.selectFrom('override_mark').selectAll().execute()).toEqual([]);
  });

  test('a comment; none before the work is handed in', async () => {
    const { store, ada, attempt, work, learners } = await openBook(kind);
    await ada.post('/api/book/comment', { attempt, text: 'Look along the course, not at it.' });
    const [record] = await recordsOfLearner(store.db, learners[0] ?? '');
    expect(record?.comments).toMatchObject([{ text: 'Look along the course, not at it.', by: 'Ada Clay' }]);
    const open = await openAttempt(store, work, learners[0] ?? '', 2);
    const early = await ada.post('/api/book/comment', { attempt: open, text: 'Early' });
    expect([early.status, early.body.problem]).toEqual([
      409,
      'This work is not handed in yet. Wait until it is, then try again.',
    ]);
  });

  test('release says how many it let out', async () => {
    const { ada, work } = await openBook(kind);
    expect((await ada.post('/api/book/release', { work })).body).toEqual({ ok: true, released: 2 });
    expect((await ada.post('/api/book/release', { work })).body).toEqual({ ok: true, released: 0 });
  });

  test('marking again by the same rules changes nothing', async () => {
    const { store, ada, work } = await openBook(kind);
    const given = await ada.post('/api/book/mark-again', { work, reason: 'To be sure' });
    expect(given.body).toEqual({ ok: true, changed: 0, same: 2, notLaid: 0 });
    expect((await store.db.selectFrom('result_version').select('version').execute()).length).toBe(2);
  });

  test('marking again by another rule set puts a new result beside the old, with reason and person', async () => {
    const { store, ada, work, learners } = await openBook(kind);
    const reason = 'This group builds in Britain';
    const given = await ada.post('/api/book/mark-again', { work, reason, rules: 'united-kingdom' });
    // Every limit has another source now, so every result reads otherwise.
    expect(given.body).toEqual({ ok: true, changed: 2, same: 0, notLaid: 0 });
    const [record] = await recordsOfLearner(store.db, learners[0] ?? '');
    expect(record?.markings).toMatchObject([
      { version: 1, engine: `${ENGINE}`, reason: 'handed in', by: 'server' },
      { version: 2, engine: `${ENGINE} by united-kingdom`, reason, by: 'Ada Clay' },
    ]);
  });

  test('a wall that no longer comes out as it was is left as it was marked', async () => {
    const { store, ada, work, attempt } = await openBook(kind);
    await store.db
      .updateTable('attempt_wall')
      .set({ fingerprint: '0000000000000000' })
      .where('attempt_id', '=', attempt)
      .execute();
    const given = await ada.post('/api/book/mark-again', { work, reason: 'New engine', rules: 'ontario' });
    expect(given.body).toMatchObject({ ok: true, notLaid: 1 });
    const kept = await store.db
      .selectFrom('result_version')
      .select('version')
      .where('attempt_id', '=', attempt)
      .execute();
    expect(kept).toEqual([{ version: 1 }]);
  });

  test('a calendar address of which only the hash is kept', async () => {
    const { store, ada, group } = await openBook(kind);
    const { body } = await ada.post('/api/book/calendar-link', { group });
    const [, token = ''] = /^\/api\/calendar\/([A-Za-z0-9_-]{32})$/.exec(String(body.link)) ?? [];
    expect(await calendarBehind(store.db, sha256Of(token))).toMatchObject({
      name: 'Invented',
      dates: [{ title: 'Line' }],
    });
    expect(JSON.stringify(await store.db.selectFrom('calendar_link').selectAll().execute())).not.toContain(
      token,
    );
  });

  test('nobody, and a page of another site, change nothing', async () => {
    const { store, ada, newVisitor, attempt } = await openBook(kind);
    const body = { attempt, score: '90', reason: 'Because' };
    expect((await newVisitor().post('/api/book/override', body)).status).toBe(401);
    expect((await ada.post('/api/book/override', body, { 'sec-fetch-site': 'cross-site' })).status).toBe(403);
    expect(await store.db.selectFrom('override_mark').selectAll().execute()).toEqual([]);
  });
});
