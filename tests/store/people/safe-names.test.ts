import { describe, expect, test } from 'vitest';
import { isEasyPin } from '../../../app/accounts/guessed-password';
import { deletedWorks } from '../../../lib/store/groups/groups';
import { rosterWithPins, takenOff } from '../../../lib/store/groups/roster';
import { KINDS } from '../databases';
import { NOON } from '../samples/sample-attempt';
import { openPeople, type PeopleSite, setUpOwner, type Visitor } from '../visitor';

/** A site with its owner, who has a group, and the group's id and code. */
async function ready(kind: (typeof KINDS)[number]) {
  const site = await openPeople(kind);
  const ada = await setUpOwner(site);
  const { body } = await ada.post('/api/groups', { name: 'Tuesday' });
  const group = String(body.group);
  return { site, ada, group };
}

async function codeOf({ store }: PeopleSite, group: string): Promise<string> {
  const row = await store.db
    .selectFrom('learning_group')
    .select('join_code')
    .where('id', '=', group)
    .executeTakeFirstOrThrow();
  return row.join_code;
}

const enter = (visitor: Visitor, code: string, who: object, pin: string, word?: string) =>
  visitor.post('/api/join/enter', { code, who, pin, ...(word === undefined ? {} : { word }) });

describe.each(KINDS)('names are safe, on %s', (kind) => {
  test('after a reset only the one-time word lets a new PIN be chosen, once', async () => {
    const { site, ada, group } = await ready(kind);
    const code = await codeOf(site, group);
    await enter(site.newVisitor(), code, { name: 'Joan' }, '4711');
    const [joan] = await rosterWithPins(site.store, group, Date.now());
    const reset = await ada.post('/api/people/reset-pin', { learner: joan?.id });
    const word = String(reset.body.word);
    expect(word).toMatch(/^[0-9A-Z]{4}$/);
    const [waiting] = await rosterWithPins(site.store, group, Date.now());
    expect(waiting).toMatchObject({ hasPin: false, hasWord: true, devices: 0 });

    for (const wrong of [undefined, '', word === 'AAAA' ? 'BBBB' : 'AAAA']) {
      const answer = await enter(site.newVisitor(), code, { name: 'Joan' }, '8642', wrong);
      expect([answer.status, Object.keys(answer.body.fields ?? {})]).toEqual([422, ['word']]);
    }
    expect((await enter(site.newVisitor(), code, { name: 'Joan' }, '8642', word.toLowerCase())).status).toBe(
      200,
    );
    const [again] = await rosterWithPins(site.store, group, Date.now());
    expect(again).toMatchObject({ hasPin: true, hasWord: false, devices: 1 });
  });

  test('guesses at the word are counted as those at a PIN are, and the roster shows the lock', async () => {
    const { site, ada, group } = await ready(kind);
    const code = await codeOf(site, group);
    await enter(site.newVisitor(), code, { name: 'Joan' }, '4711');
    const [joan] = await rosterWithPins(site.store, group, Date.now());
    if (!joan) throw new Error('nobody on the roster');
    await ada.post('/api/people/reset-pin', { learner: joan.id });
    for (let guess = 0; guess < 10; guess += 1) {
      expect((await enter(site.newVisitor(), code, { id: joan.id }, '8642', `${1000 + guess}`)).status).toBe(
        422,
      );
    }
    expect((await enter(site.newVisitor(), code, { id: joan.id }, '8642', '2000')).status).toBe(429);
    const now = Date.now();
    const [locked] = await rosterWithPins(site.store, group, now);
    // Fifteen minutes from the first of the ten.
    expect(locked?.lockedUntil).toBeGreaterThan(now);
    expect(locked?.lockedUntil).toBeLessThanOrEqual(now + 15 * 60_000);
  });

  test('a name that was removed is told so, and comes back with its PIN when it is put back', async () => {
    const { site, ada, group } = await ready(kind);
    const code = await codeOf(site, group);
    await enter(site.newVisitor(), code, { name: 'Joan' }, '4711');
    const [joan] = await rosterWithPins(site.store, group, NOON);
    await ada.post('/api/groups/remove-learner', { learner: joan?.id });
    const again = await enter(site.newVisitor(), code, { name: 'joan' }, '4711');
    expect([again.status, again.body.problem]).toEqual([
      409,
      'This name was taken off the list. Ask your instructor to put it back.',
    ]);
    expect(await takenOff(site.store, group)).toEqual([{ id: joan?.id, name: 'Joan' }]);
    expect((await ada.post('/api/groups/put-back', { learner: joan?.id })).status).toBe(200);
    expect((await enter(site.newVisitor(), code, { name: 'Joan' }, '4711')).status).toBe(200);
  });

  test('a group that takes no new names lets in those on its roster; a new code ends the old one', async () => {
    const { site, ada, group } = await ready(kind);
    const code = await codeOf(site, group);
    await enter(site.newVisitor(), code, { name: 'Joan' }, '4711');
    await ada.post('/api/groups/joining', { group, takesNew: false });
    expect((await enter(site.newVisitor(), code, { name: 'Ann' }, '4711')).status).toBe(409);
    expect((await enter(site.newVisitor(), code, { name: 'Joan' }, '4711')).status).toBe(200);
    await ada.post('/api/groups/joining', { group, takesNew: true });
    expect((await enter(site.newVisitor(), code, { name: 'Ann' }, '4711')).status).toBe(200);

    await ada.post('/api/groups/join-code', { group });
    expect((await enter(site.newVisitor(), code, { name: 'Joan' }, '4711')).status).toBe(422);
    expect((await enter(site.newVisitor(), await codeOf(site, group), { name: 'Joan' }, '4711')).status).toBe(
      200,
    );
  });

  test('a closed group opens again with its code', async () => {
    const { site, ada, group } = await ready(kind);
    const code = await codeOf(site, group);
    await ada.post('/api/groups/close', { group });
    expect((await enter(site.newVisitor(), code, { name: 'Joan' }, '4711')).status).toBe(422);
    await ada.post('/api/groups/reopen', { group });
    expect((await enter(site.newVisitor(), code, { name: 'Joan' }, '4711')).status).toBe(200);
  });

  test('an easy PIN is not taken as a first one', async () => {
    const { site, group } = await ready(kind);
    const answer = await enter(site.newVisitor(), await codeOf(site, group), { name: 'Joan' }, '1234');
    expect([answer.status, Object.keys(answer.body.fields ?? {})]).toEqual([422, ['pin']]);
  });

  test('of work that was handed in and deleted a line stays, with name and dates and no content', async () => {
    const { site, group } = await ready(kind);
    const { db } = site.store;
    const joan = site.newVisitor();
    await enter(joan, await codeOf(site, group), { name: 'Joan' }, '4711');
    const [{ id: learner } = { id: '' }] = await rosterWithPins(site.store, group, NOON);
    await db
      .insertInto('set_work')
      .values({
        id: 'work',
        group_id: group,
        title: 'Ties',
        spec: '{}',
        secret_seed: 's',
        state: 'set',
        opens_at: null,
        due_at: null,
        grace_ms: 0,
        release: 'by hand',
        released_at: null,
        created_by: 'ada',
        created_at: NOON,
      })
      .execute();
    const attempt = {
      set_work_id: 'work',
      learner_id: learner,
      started_at: NOON,
      late: 0,
      hand_in_hash: null,
    } as const;
    await db
      .insertInto('attempt')
      .values([
        { ...attempt, id: 'one', number: 1, state: 'marked', handed_in_at: NOON + 5, hand_in_key: 'k' },
        { ...attempt, id: 'two', number: 2, state: 'open', handed_in_at: null, hand_in_key: null },
      ])
      .execute();
    expect((await joan.post('/api/join/delete-my-data', { sure: true })).status).toBe(200);
    expect(await deletedWorks(site.store, group)).toEqual([
      {
        id: expect.any(String),
        name: 'Joan',
        title: 'Ties',
        handedInAt: NOON + 5,
        deletedAt: expect.any(Number),
      },
    ]);
    expect(await db.selectFrom('attempt').select('id').execute()).toEqual([]);
  });
});

// Runs and repeats are what NIST SP 800-63B bars from memorised secrets (5.1.1.2, from memory); the rest is the kept list's.
test.each(['1234', '4321', '7890', '1111', '777777', '1212', '123123', '2580', '123456'])(
  '%s is easy',
  (pin) => expect(isEasyPin(pin)).toBe(true),
);
test.each(['4711', '8642', '9035', '470913'])('%s is not easy', (pin) => expect(isEasyPin(pin)).toBe(false));
