import { randomUUID } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { drawAhead } from '../../app/set-work/draw-ahead';
import { briefsFor, firstForm, givenWalls, withSeverity } from '../../app/set-work/lay-forms';
import { templateOf } from '../../lib/classes/templates';
import { codeOf } from '../../lib/generate/wall-code';
import { attemptsOf, openAttempt, wallsOf, workForLearner } from '../../lib/store/attempts';
import { verifyAudit } from '../../lib/store/audit';
import type { Store } from '../../lib/store/database';
import { keepForm, keptForm, learnersWithoutForm } from '../../lib/store/drawn-forms';
import { closeGroup, createGroup, groupsFor } from '../../lib/store/groups/groups';
import { addToRoster, removeFromRoster, rosterWithPins, setTimeFactor } from '../../lib/store/groups/roster';
import {
  changeDraft,
  createWork,
  deleteDraft,
  moveDue,
  moveWork,
  type WorkDraft,
  workOf,
  worksOf,
} from '../../lib/store/set-work';
import { KINDS, ownDatabase, readyStore } from './databases';
import { NOON } from './samples/sample-attempt';

const BY = { actor: 'user teacher', at: NOON };
const HOUR = 3_600_000;
const SPEC = { ...templateOf('warm-up').spec, attempts: 2 };

const draft = (changes: Partial<WorkDraft> = {}): WorkDraft => ({
  title: 'Warm-up',
  opensAt: NOON,
  dueAt: NOON + HOUR,
  graceMs: 60_000,
  release: 'at once',
  spec: withSeverity(SPEC),
  ...changes,
});

async function teacher({ db }: Store): Promise<string> {
  const id = randomUUID();
  const user = {
    id,
    name: 'Invented',
    email: `${id}@example.org`,
    emailVerified: 0,
    image: null,
    role: 'instructor' as const,
  };
  const time = new Date(NOON).toISOString();
  await db
    .insertInto('user')
    .values({ ...user, createdAt: time, updatedAt: time })
    .execute();
  return id;
}

async function groupOfTwo(store: Store) {
  const userId = await teacher(store);
  const group = await createGroup(store, { name: 'Tuesday', joinCode: randomUUID(), userId }, NOON);
  await addToRoster(store, group, [row('Ada', 1), row('Bo', 2, 150)], BY);
  const [ada, bo] = await rosterWithPins(store, group, NOON);
  if (!ada || !bo) throw new Error('the roster has not two');
  return { userId, group, ada, bo };
}

const row = (name: string, line: number, timeFactor = 100) => ({ name, line, timeFactor });

async function setWork(store: Store, group: string, changes: Partial<WorkDraft> = {}): Promise<string> {
  const work = await createWork(store, group, 'a secret', draft(changes), BY);
  await moveWork(store, work, 'set', BY);
  return work;
}

const open = (store: Store, work: string, learner: string, at = NOON) =>
  openAttempt(
    store,
    { work, learner },
    async (kept, number) => givenWalls(briefsFor(kept, learner, number)),
    at,
  );

describe.each(KINDS)('groups and set work on %s', (kind) => {
  const ready = async () => readyStore(await ownDatabase(kind));

  test('the due date of set work is moved, and the trail says from when to when', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const { group } = await groupOfTwo(store);
    const work = await setWork(store, group);
    await moveDue(store, work, NOON + 5 * HOUR, { ...BY, at: NOON + 2 * HOUR });
    expect((await workOf(store, work)).dueAt).toBe(NOON + 5 * HOUR);
    const trail = await store.db
      .selectFrom('audit')
      .select(['action', 'detail'])
      .where('subject', '=', `work ${work}`)
      .orderBy('seq', 'desc')
      .executeTakeFirstOrThrow();
    expect([trail.action, JSON.parse(trail.detail)]).toEqual([
      'moved the due date',
      { from: NOON + HOUR, to: NOON + 5 * HOUR },
    ]);
    expect(await verifyAudit(store.db)).toEqual({ ok: true });
  });

  test.each([
    ['a date that is past', {}, NOON, NOON, 'Choose a day and a time that are still to come.'],
    ['before it opens', { opensAt: NOON + HOUR }, NOON + HOUR, NOON, 'It would be due before it opens.'],
    [
      'once results show',
      { release: 'when due' },
      NOON + 9 * HOUR,
      NOON + HOUR + 60_000,
      'Learners see the results already, and the key with them. Set new work instead.',
    ],
  ] as const)('the due date is not moved: %s', async (_, changes, dueAt, at, message) => {
    const store = await readyStore(await ownDatabase(kind));
    const { group } = await groupOfTwo(store);
    const work = await setWork(store, group, changes);
    const before = (await workOf(store, work)).dueAt;
    await expect(moveDue(store, work, dueAt, { ...BY, at })).rejects.toThrow(message);
    expect((await workOf(store, work)).dueAt).toBe(before);
  });

  test('a roster is written whole or not at all', async () => {
    const store = await ready();
    const { group } = await groupOfTwo(store);
    const names = async () => (await rosterWithPins(store, group, NOON)).map(({ name }) => name);
    await expect(addToRoster(store, group, [row('Cy', 1), row('ada', 2)], BY)).rejects.toThrow(
      'Line 2: "ada" is in the group already.',
    );
    expect(await names()).toEqual(['Ada', 'Bo']);
    await addToRoster(store, group, [row('Cy', 1)], BY);
    expect(await names()).toEqual(['Ada', 'Bo', 'Cy']);
  });

  test('who was taken off the roster comes back by name with the work they had', async () => {
    const store = await ready();
    const { group, bo } = await groupOfTwo(store);
    await removeFromRoster(store, bo.id, BY);
    expect((await rosterWithPins(store, group, NOON)).map(({ name }) => name)).toEqual(['Ada']);
    await addToRoster(store, group, [row('bo', 1, 125)], BY);
    expect((await rosterWithPins(store, group, NOON))[1]).toEqual({ ...bo, timeFactor: 125 });
  });

  test('an instructor sees their own groups, the owner of the site all of them', async () => {
    const store = await ready();
    const { userId, group, ada } = await groupOfTwo(store);
    await createGroup(store, { name: 'Another', joinCode: 'x', userId: await teacher(store) }, NOON);
    await setTimeFactor(store, ada.id, 200, BY);
    expect(await groupsFor(store, userId)).toMatchObject([{ id: group, name: 'Tuesday', learners: 2 }]);
    expect((await groupsFor(store, null)).map(({ name }) => name)).toEqual(['Another', 'Tuesday']);
  });

  test('a draft can be changed, set work cannot', async () => {
    const store = await ready();
    const { group } = await groupOfTwo(store);
    const work = await createWork(store, group, 'a secret', draft(), BY);
    await changeDraft(store, work, draft({ title: 'Better' }), BY);
    await moveWork(store, work, 'set', BY);
    await expect(changeDraft(store, work, draft({ title: 'Too late' }), BY)).rejects.toThrow(
      'This work is set already',
    );
    expect(await workOf(store, work)).toMatchObject({ title: 'Better', state: 'set', ...{ spec: SPEC } });
  });

  test('a draft is deleted; published work is not', async () => {
    const store = await ready();
    const { group } = await groupOfTwo(store);
    const work = await createWork(store, group, 'a secret', draft(), BY);
    await deleteDraft(store, work, BY);
    expect(await worksOf(store, group)).toEqual([]);
    const published = await setWork(store, group);
    await expect(deleteDraft(store, published, BY)).rejects.toThrow('Only a draft can be deleted.');
    expect((await workOf(store, published)).state).toBe('set');
  });

  test('work that was closed opens again; what was published is no draft any more', async () => {
    const store = await ready();
    const { group } = await groupOfTwo(store);
    const work = await setWork(store, group);
    await moveWork(store, work, 'closed', BY);
    await moveWork(store, work, 'set', BY);
    expect((await workOf(store, work)).state).toBe('set');
    await expect(changeDraft(store, work, draft(), BY)).rejects.toThrow('This work is set already');
  });

  test('a learner begins once however often they tap, and gets walls of their own', async () => {
    const store = await ready();
    const { group, ada, bo } = await groupOfTwo(store);
    const work = await setWork(store, group);
    const opened = await Promise.all(Array.from({ length: 12 }, () => open(store, work, ada.id)));
    expect(new Set(opened.map(({ id }) => id)).size).toBe(1);
    expect(await attemptsOf(store, work, ada.id)).toHaveLength(1);
    const walls = await wallsOf(store, opened[0]?.id ?? '');
    expect(walls.map(({ place }) => place)).toEqual([1, 2]);
    expect(walls[0]?.fingerprint).toMatch(/^[0-9a-f]{16}$/);
    const others = await wallsOf(store, (await open(store, work, bo.id)).id);
    expect(others.some(({ code }) => walls.some((wall) => wall.code === code))).toBe(false);
  });

  test('a second attempt has other walls, and a third is refused where two are allowed', async () => {
    const store = await ready();
    const { group, ada } = await groupOfTwo(store);
    const work = await setWork(store, group);
    const codes = async (id: string) => (await wallsOf(store, id)).map(({ code }) => code);
    const first = await open(store, work, ada.id);
    await markAsMarked(store, first.id);
    const second = await open(store, work, ada.id);
    expect(second.number).toBe(2);
    expect(await codes(second.id)).not.toEqual(await codes(first.id));
    await markAsMarked(store, second.id);
    await expect(open(store, work, ada.id)).rejects.toThrow('as often as this work allows');
  });

  test('forms drawn ahead are the walls that the secret gives, for all on the roster, and go with their learner', async () => {
    const store = await ready();
    const { group, ada, bo } = await groupOfTwo(store);
    const work = await setWork(store, group);
    const row = await workOf(store, work);
    expect(await keptForm(store, row, ada.id)).toBe(null);
    await drawAhead(store, work);
    expect(await keptForm(store, row, ada.id)).toEqual(givenWalls(briefsFor(row, ada.id, 1)));
    expect(await keptForm(store, row, bo.id)).toEqual(givenWalls(briefsFor(row, bo.id, 1)));
    expect(await learnersWithoutForm(store, row)).toEqual([]);
    // A second run finds nothing to do and changes nothing.
    await drawAhead(store, work);
    expect(await keptForm(store, row, bo.id)).toEqual(givenWalls(briefsFor(row, bo.id, 1)));
    await store.db.deleteFrom('learner').where('id', '=', bo.id).execute();
    expect(await keptForm(store, row, bo.id)).toBe(null);
  });

  test('after a new engine the desk still shows the walls that were given, and those drawn ahead', async () => {
    const store = await ready();
    const { group, ada, bo } = await groupOfTwo(store);
    const work = await setWork(store, group);
    const row = await workOf(store, work);
    // Codes that engine 2 gave out, in place of those of today.
    const older = {
      topic: 'joints',
      kind: 'plain-panel',
      difficulty: 2,
      rules: 'canada',
      engine: 2,
    } as const;
    const walls = Array.from({ length: row.spec.walls }, (_, seed) => ({
      place: seed + 1,
      code: codeOf({ ...older, seed }),
      fingerprint: 'of then',
    }));
    await keepForm(store, work, bo.id, walls);
    await openAttempt(store, { work, learner: ada.id }, async () => walls, NOON);
    const codes = walls.map(({ code }) => code);
    expect((await firstForm(store, row, ada.id)).map(codeOf)).toEqual(codes);
    expect((await firstForm(store, row, bo.id)).map(codeOf)).toEqual(codes);
  });

  test('of one wall for all, whoever joins later has the form that was drawn for the others; a draft has none', async () => {
    const store = await ready();
    const { group, ada, bo } = await groupOfTwo(store);
    const same = { spec: withSeverity({ ...SPEC, sameForAll: true }) };
    const unset = await createWork(store, group, 'a secret', draft(same), BY);
    await drawAhead(store, unset);
    expect(await keptForm(store, await workOf(store, unset), 'anybody')).toBe(null);
    await moveWork(store, unset, 'set', BY);
    await drawAhead(store, unset);
    const row = await workOf(store, unset);
    expect(await keptForm(store, row, 'anybody')).toEqual(givenWalls(briefsFor(row, null, 1)));
    // Two begin, the second from what the first was given: the walls, and nothing else of theirs.
    const begin = (learner: string) =>
      openAttempt(
        store,
        { work: unset, learner },
        async () => (await keptForm(store, row, learner)) ?? givenWalls(briefsFor(row, learner, 1)),
        NOON,
      );
    const [first, second] = [await begin(ada.id), await begin(bo.id)];
    expect(await keptForm(store, row, 'anybody')).toEqual(givenWalls(briefsFor(row, null, 1)));
    expect(await wallsOf(store, second.id)).toEqual(await wallsOf(store, first.id));
  });

  test('when it is not open, over, a draft or closed, nothing begins; what was begun goes on', async () => {
    const store = await ready();
    const { group, ada, bo } = await groupOfTwo(store);
    const work = await setWork(store, group);
    await expect(open(store, work, ada.id, NOON - 1)).rejects.toThrow('not open yet');
    // The last moment of the grace still counts.
    const begun = await open(store, work, ada.id, NOON + HOUR + 60_000);
    await expect(open(store, work, bo.id, NOON + HOUR + 60_001)).rejects.toThrow('The time to begin');
    await moveWork(store, work, 'closed', BY);
    await expect(open(store, work, bo.id)).rejects.toThrow('This work is closed');
    expect((await open(store, work, ada.id, NOON + 2 * HOUR)).id).toBe(begun.id);
    const unset = await createWork(store, group, 's', draft(), BY);
    await expect(open(store, unset, ada.id)).rejects.toThrow('not set yet');
    const other = await setWork(store, group);
    await closeGroup(store, group, BY);
    await expect(open(store, other, bo.id)).rejects.toThrow('This group is closed');
  });

  test('the lists: a learner sees no draft, what is due first comes first; an instructor sees who handed in', async () => {
    const store = await ready();
    const { group, ada } = await groupOfTwo(store);
    await createWork(store, group, 's', draft({ title: 'Draft' }), BY);
    await setWork(store, group, { title: 'No date', dueAt: null });
    await setWork(store, group, { title: 'Later', dueAt: NOON + 9 * HOUR });
    const soon = await setWork(store, group, { title: 'Soon' });
    await markAsMarked(store, (await open(store, soon, ada.id)).id);
    const list = await workForLearner(store, group, ada.id);
    expect(list.map(({ work }) => work.title)).toEqual(['Soon', 'Later', 'No date']);
    const counts = (await worksOf(store, group)).map(({ title, handedIn, waiting }) => [
      title,
      handedIn,
      waiting,
    ]);
    expect(counts).toContainEqual(['Soon', 1, 1]);
    expect(counts).toContainEqual(['Later', 0, 0]);
    expect(await verifyAudit(store.db)).toEqual({ ok: true });
  });
});

async function markAsMarked({ db }: Store, attempt: string): Promise<void> {
  await db
    .updateTable('attempt')
    .set({ state: 'marked', handed_in_at: NOON, hand_in_key: randomUUID(), hand_in_hash: 'x' })
    .where('id', '=', attempt)
    .execute();
}
