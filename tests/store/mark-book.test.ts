import { describe, expect, test } from 'vitest';
import { parseResults } from '../../lib/exercise/stored-results';
import { ENGINE } from '../../lib/generate/brief';
import { verifyAudit } from '../../lib/store/audit';
import { attemptAnswers } from '../../lib/store/book/book-answers';
import { addComment, addMarking, overrideMark, releaseWork } from '../../lib/store/book/book-changes';
import { givenMarks } from '../../lib/store/book/given-marks';
import {
  allBookRows,
  type BookOrder,
  bookLearners,
  bookRows,
  bookWorks,
} from '../../lib/store/book/mark-book';
import { calendarBehind, replaceCalendarLink } from '../../lib/store/calendar';
import type { Store } from '../../lib/store/database';
import { recordsOfLearner } from '../../lib/store/hand-in-record';
import { RefusedChange } from '../../lib/store/store-problem';
import { KINDS, ownDatabase, readyStore } from './databases';
import { INVENTED_LEARNERS, inventGroup } from './samples/invented-group';
import { type InventedWork, inventedId, MONDAY } from './samples/invented-hand-ins';
import { openAttempt, sampleAttempt } from './samples/sample-attempt';

const BY = { actor: 'user u1', at: MONDAY + 1000 };
const JOINTS: InventedWork = {
  title: 'Joints',
  topics: ['joints'],
  walls: 2,
  difficulty: 1,
  sameForAll: true,
};

async function smallGroup(store: Store, works: readonly InventedWork[] = [JOINTS]) {
  return inventGroup(store, { name: 'Invented', number: 1, learners: INVENTED_LEARNERS.slice(0, 3), works });
}

async function scoresOf(store: Store, group: string, work: string) {
  const rows = await bookRows(store.db, await bookLearners(store.db, group, ALL));
  return rows.map(({ cells }) => cells.get(work));
}

const ALL = { by: 'name', find: '', without: '' } as const;

describe.each(KINDS)('%s: the mark book', (kind) => {
  test('pages of learners by name, each with the latest hand-in of each work', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { group, works, learners } = await smallGroup(store);
    const all = await bookLearners(store.db, group, ALL);
    const first = await bookRows(store.db, all.slice(0, 2));
    const second = await bookRows(store.db, all.slice(2));
    expect([...first, ...second].map(({ name }) => name)).toEqual(['Amal Brook', 'Bera Stone', 'Cal Ridge']);
    expect(second.map(({ learner }) => learner)).toEqual([learners[2]]);
    const cell = first[0]?.cells.get(works[0] ?? '');
    expect(cell).toMatchObject({ number: 1, state: 'marked', late: false, overridden: false, version: 1 });
    expect(await bookWorks(store.db, group)).toMatchObject([{ title: 'Joints', walls: 2, sameForAll: true }]);
  });

  test('learners sort by first or last name, are found without accents, and by what they have not handed in', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { group, works } = await smallGroup(store);
    await store.db
      .insertInto('learner')
      .values(
        ['Zoë Ångström', 'Éluard Zapf'].map((name, i) => ({
          id: inventedId(9, i),
          group_id: group,
          name,
          pin_hash: null,
          time_factor: 100,
          created_at: 0,
          removed_at: null,
        })),
      )
      .execute();
    const names = async (order: Partial<BookOrder>) =>
      (await bookLearners(store.db, group, { ...ALL, ...order })).map(({ name }) => name);
    expect(await names({})).toEqual(['Amal Brook', 'Bera Stone', 'Cal Ridge', 'Éluard Zapf', 'Zoë Ångström']);
    expect(await names({ by: 'last name' })).toEqual([
      'Zoë Ångström',
      'Amal Brook',
      'Cal Ridge',
      'Bera Stone',
      'Éluard Zapf',
    ]);
    expect(await names({ find: ' elu' })).toEqual(['Éluard Zapf']);
    expect(await names({ without: works[0] ?? '' })).toEqual(['Éluard Zapf', 'Zoë Ångström']);
  });

  test('the stream gives every learner once, the removed left out', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { group } = await smallGroup(store, []);
    const many = Array.from({ length: 450 }, (_, i) => ({
      id: inventedId(9, i),
      group_id: group,
      name: `Learner ${String(i).padStart(3, '0')}`,
      pin_hash: null,
      time_factor: 100,
      created_at: MONDAY,
      removed_at: i === 7 ? MONDAY : null,
    }));
    await store.db.insertInto('learner').values(many).execute();
    const names: string[] = [];
    let pages = 0;
    for await (const rows of allBookRows(store.db, group)) {
      names.push(...rows.map(({ name }) => name));
      pages += 1;
    }
    // 452 learners, 50 at a time.
    expect(pages).toBe(10);
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBe(3 + 449);
  });

  test('a second try counts from when it is handed in, not from when it is opened', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { group, work, learner, attempt } = await sampleAttempt(store);
    await store.db.updateTable('set_work').set({ spec: '{"walls":2,"sameForAll":true}' }).execute();
    const graded = { engine: '1', results: [], score: 0.25 };
    await store.db
      .updateTable('attempt')
      .set({ state: 'marked', handed_in_at: 1 })
      .where('id', '=', attempt)
      .execute();
    await addMarking(store, { attempt, graded, reason: 'handed in' }, BY);
    const second = await openAttempt(store, work, learner, 2);
    expect(await scoresOf(store, group, work)).toMatchObject([{ attempt, number: 1, score: 0.25 }]);
    await store.db
      .updateTable('attempt')
      .set({ state: 'handed in', handed_in_at: 2 })
      .where('id', '=', second)
      .execute();
    expect(await scoresOf(store, group, work)).toMatchObject([{ attempt: second, number: 2, score: null }]);
  });

  test('the answers come wall by wall with what was found and what it was called', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { works } = await smallGroup(store);
    const answers = await attemptAnswers(store.db, { work: works[0] ?? '' });
    expect(answers.map(({ walls }) => walls.map(({ place }) => place))).toEqual([
      [1, 2],
      [1, 2],
      [1, 2],
    ]);
    const faults = answers.map(({ walls }) => walls.map(({ faults }) => faults.map(({ fault }) => fault)));
    // Same walls for all, so the same faults for all.
    expect(faults[1]).toEqual(faults[0]);
    expect(faults.flat(2).length).toBeGreaterThan(0);
    for (const { found, named } of answers.flatMap(({ walls }) => walls.flatMap((wall) => wall.faults)))
      expect(named === null).toBe(!found);
  });
});

describe.each(KINDS)('%s: changes keep what was before', (kind) => {
  test('an own mark goes before the marking and leaves it', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { group, works, learners, attempts } = await smallGroup(store);
    const attempt = attempts[0]?.[0] ?? '';
    const [before] = await scoresOf(store, group, works[0] ?? '');
    const id = inventedId(20, 1);
    await overrideMark(store, { id, attempt, score: 0.9, reason: 'The light was out' }, BY);
    const [after] = await scoresOf(store, group, works[0] ?? '');
    expect(after).toMatchObject({ score: 0.9, overridden: true });
    const [record] = await recordsOfLearner(store.db, learners[0] ?? '');
    expect(record?.markings).toMatchObject([{ version: 1, score: before?.score }]);
    expect(record?.ownMarks).toEqual([{ score: 0.9, reason: 'The light was out', by: 'user u1', at: BY.at }]);
    expect(await givenMarks(store, attempt)).toEqual([
      { kind: 'handed in', score: before?.score, reason: 'handed in' },
      { kind: 'set by hand', score: 0.9, reason: 'The light was out' },
    ]);
    expect(await verifyAudit(store.db)).toEqual({ ok: true });
  });

  test('the last own mark counts', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { group, works, attempts } = await smallGroup(store);
    const attempt = attempts[0]?.[0] ?? '';
    const again = (number: number, score: number, at: number) =>
      overrideMark(
        store,
        { id: inventedId(20, number), attempt, score, reason: 'Looked again' },
        { ...BY, at },
      );
    await again(2, 0.4, MONDAY + 1);
    await again(1, 0.6, MONDAY + 2);
    expect(await scoresOf(store, group, works[0] ?? '')).toMatchObject([{ score: 0.6 }, {}, {}]);
  });

  test('marking again adds a version only where something came out otherwise', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { group, works, learners, attempts } = await smallGroup(store);
    const attempt = attempts[0]?.[0] ?? '';
    const old = await store.db
      .selectFrom('result_version')
      .selectAll()
      .where('attempt_id', '=', attempt)
      .executeTakeFirstOrThrow();
    const same = { engine: 'the next', results: parseResults(old.results), score: old.score };
    expect(await addMarking(store, { attempt, graded: same, reason: 'New limit' }, BY)).toBe(false);
    const changed = { ...same, score: old.score === 0.125 ? 0.25 : 0.125 };
    expect(await addMarking(store, { attempt, graded: changed, reason: 'New limit' }, BY)).toBe(true);
    expect(await scoresOf(store, group, works[0] ?? '')).toMatchObject([
      { score: changed.score, version: 2 },
      {},
      {},
    ]);
    const [record] = await recordsOfLearner(store.db, learners[0] ?? '');
    expect(record?.markings).toEqual([
      {
        version: 1,
        engine: `${ENGINE}`,
        score: old.score,
        reason: 'handed in',
        by: 'server',
        at: old.made_at,
      },
      { version: 2, engine: 'the next', score: changed.score, reason: 'New limit', by: 'user u1', at: BY.at },
    ]);
  });

  test('nothing is changed before it is handed in', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { attempt } = await sampleAttempt(store);
    const refusal = new RefusedChange('This work is not handed in yet. Wait until it is, then try again.');
    const id = inventedId(20, 1);
    await expect(overrideMark(store, { id, attempt, score: 1, reason: 'Early' }, BY)).rejects.toThrow(
      refusal,
    );
    await expect(addComment(store, { id, attempt, text: 'Early' }, BY)).rejects.toThrow(refusal);
    expect(await store.db.selectFrom('override_mark').selectAll().execute()).toEqual([]);
    expect(await store.db.selectFrom('audit').selectAll().execute()).toEqual([]);
  });

  test('release moves the marked ones on, once', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { group, works } = await smallGroup(store);
    expect(await releaseWork(store, works[0] ?? '', BY)).toBe(3);
    expect(await releaseWork(store, works[0] ?? '', { ...BY, at: BY.at + 5 })).toBe(0);
    expect(await bookWorks(store.db, group)).toMatchObject([{ releasedAt: BY.at }]);
    expect(await scoresOf(store, group, works[0] ?? '')).toMatchObject([
      { state: 'released' },
      { state: 'released' },
      { state: 'released' },
    ]);
  });
});

test.each(KINDS)('%s: a new calendar address ends the old one, and only a hash is kept', async (kind) => {
  const store = await readyStore(await ownDatabase(kind));
  const { group } = await smallGroup(store);
  await replaceCalendarLink(store, { tokenHash: 'first', group }, BY);
  await replaceCalendarLink(store, { tokenHash: 'second', group }, BY);
  expect(await calendarBehind(store.db, 'first')).toBe(undefined);
  expect(await calendarBehind(store.db, 'second')).toMatchObject({
    name: 'Invented',
    // The first work is due on the Friday of its week.
    dates: [{ title: 'Joints', dueAt: Date.UTC(2026, 0, 9, 8) }],
  });
});
