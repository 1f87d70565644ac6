import { describe, expect, test } from 'vitest';
import { hashOf } from '../../../app/accounts/codes';
import { KINDS } from '../databases';
import { NOON, sampleAttempt, sampleGroup } from '../samples/sample-attempt';
import { openPeople, type PeopleSite, setUpOwner, type Visitor } from '../visitor';

const CODE = '7KQ2-M9TX';

/** A group with a code that can be typed. */
async function openGroup({ store }: PeopleSite, code = CODE): Promise<string> {
  const { group } = await sampleGroup(store);
  await store.db.updateTable('learning_group').set({ join_code: code }).where('id', '=', group).execute();
  return group;
}

async function enrol({ store }: PeopleSite, group: string, name: string, pin?: string): Promise<string> {
  const { hashSecret } = await import('../../../app/accounts/passwords');
  const { learner } = await sampleAttempt(store, { group, work: await workOf({ store }, group) });
  await store.db
    .updateTable('learner')
    .set({ name, pin_hash: pin === undefined ? null : await hashSecret(pin) })
    .where('id', '=', learner)
    .execute();
  return learner;
}

async function workOf({ store }: Pick<PeopleSite, 'store'>, group: string): Promise<string> {
  const row = await store.db
    .selectFrom('set_work')
    .select('id')
    .where('group_id', '=', group)
    .executeTakeFirstOrThrow();
  return row.id;
}

const enter = (visitor: Visitor, who: object, pin: string, code = CODE) =>
  visitor.post('/api/join/enter', { code, who, pin });

/** As the page sends it where a name has no PIN yet. */
const chooseFirst = (visitor: Visitor, who: object, pin: string) =>
  visitor.post('/api/join/enter', { code: CODE, who, pin, again: pin });

/** An instructor who leads the group. */
async function lead(site: PeopleSite, group: string): Promise<Visitor> {
  const visitor = await setUpOwner(site);
  const { userId } = (await visitor.who()) as { userId: string };
  await site.store.db
    .insertInto('group_instructor')
    .values({ group_id: group, user_id: userId, part: 'lead' })
    .execute();
  return visitor;
}

describe.each(KINDS)('learners, on %s', (kind) => {
  test('a typed name joins with a PIN, which opens it again on another device', async () => {
    const site = await openPeople(kind);
    const group = await openGroup(site);
    const phone = site.newVisitor();
    expect((await enter(phone, { name: '  Joan   Hod ' }, '4711', '7kq2 m9tx')).body).toEqual({
      ok: true,
      go: '/my-work',
    });
    expect(await phone.who()).toMatchObject({ kind: 'learner', name: 'Joan Hod', groupId: group });
    const tablet = site.newVisitor();
    const wrong = await enter(tablet, { name: 'joan hod' }, '4712');
    expect([wrong.status, Object.keys(wrong.body.fields ?? {})]).toEqual([422, ['pin']]);
    expect((await enter(tablet, { name: 'joan hod' }, '4711')).status).toBe(200);
    const rows = await site.store.db.selectFrom('learner').select(['name', 'pin_hash']).execute();
    expect(rows).toHaveLength(1);
    expect(rows[0]?.pin_hash).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
  });

  test('a name of the roster takes the first PIN that is chosen for it', async () => {
    const site = await openPeople(kind);
    const id = await enrol(site, await openGroup(site), 'Joan');
    const twice = await Promise.all([
      chooseFirst(site.newVisitor(), { id }, '4713'),
      chooseFirst(site.newVisitor(), { id }, '4714'),
    ]);
    expect(twice.map(({ status }) => status).sort()).toEqual([200, 409]);
    // However late the second one comes.
    expect((await chooseFirst(site.newVisitor(), { id }, '4715')).status).toBe(409);
  });

  test('a first PIN sent twice, by a double tap or since no answer came, joins once', async () => {
    const site = await openPeople(kind);
    const id = await enrol(site, await openGroup(site), 'Joan');
    const twice = await Promise.all([
      chooseFirst(site.newVisitor(), { id }, '4713'),
      chooseFirst(site.newVisitor(), { id }, '4713'),
    ]);
    expect(twice.map(({ status }) => status)).toEqual([200, 200]);
    expect((await chooseFirst(site.newVisitor(), { id }, '4713')).status).toBe(200);
  });

  test('of ten who type one new name at once there is one learner, and one PIN', async () => {
    const site = await openPeople(kind);
    await openGroup(site);
    const pins = Array.from({ length: 10 }, (_, n) => `470${n}`);
    const answers = await Promise.all(
      pins.map((pin) => chooseFirst(site.newVisitor(), { name: 'Joan' }, pin)),
    );
    expect(answers.map(({ status }) => status).sort()).toEqual([200, ...Array(9).fill(409)]);
    expect(await site.store.db.selectFrom('learner').select('name').execute()).toEqual([{ name: 'Joan' }]);
  });

  test.each([
    ['letters', '12ab', ['pin']],
    ['three digits', '123', ['pin']],
    ['seven digits', '1234567', ['pin']],
  ])('a PIN of %s is refused', async (_, pin, fields) => {
    const site = await openPeople(kind);
    await openGroup(site);
    const { status, body } = await enter(site.newVisitor(), { name: 'Joan' }, pin);
    expect([status, Object.keys(body.fields ?? {})]).toEqual([422, fields]);
    expect(await site.store.db.selectFrom('learner').select('id').execute()).toEqual([]);
  });

  test('the code of one group opens no name of another, nor a closed group, nor one taken off the roster', async () => {
    const site = await openPeople(kind);
    const group = await openGroup(site);
    const other = await openGroup(site, 'AAAA-AAAA');
    const id = await enrol(site, other, 'Joan', '4711');
    expect((await enter(site.newVisitor(), { id }, '4711')).status).toBe(404);

    const joan = site.newVisitor();
    expect((await enter(joan, { id }, '4711', 'AAAA-AAAA')).status).toBe(200);
    await site.store.db.updateTable('learner').set({ removed_at: NOON }).where('id', '=', id).execute();
    expect(await joan.who()).toEqual({ kind: 'nobody' });
    expect((await enter(site.newVisitor(), { id }, '4711', 'AAAA-AAAA')).status).toBe(404);

    await site.store.db
      .updateTable('learning_group')
      .set({ closed_at: NOON })
      .where('id', '=', group)
      .execute();
    const closed = await enter(site.newVisitor(), { name: 'Ann' }, '4711');
    expect([closed.status, Object.keys(closed.body.fields ?? {})]).toEqual([422, ['code']]);
  });

  test('of 100 guesses at one PIN ten are evaluated, by name or by id; the instructor resets it', async () => {
    const site = await openPeople(kind);
    const group = await openGroup(site);
    const ada = await lead(site, group);
    const learner = await enrol(site, group, 'Joan', '8642');
    const statuses = await Promise.all(
      Array.from({ length: 100 }, async (_, guess) => {
        const who = guess % 2 === 0 ? { id: learner } : { name: 'Joan' };
        const visitor = site.newVisitor({ 'x-forwarded-for': `10.0.${guess % 200}.1` });
        return (await enter(visitor, who, String(1000 + guess))).status;
      }),
    );
    expect(statuses.filter((status) => status === 422)).toHaveLength(10);
    expect(statuses.filter((status) => status === 429)).toHaveLength(90);
    expect((await enter(site.newVisitor(), { id: learner }, '8642')).status).toBe(429);

    const { body } = await ada.post('/api/people/reset-pin', { learner });
    const chosen = { code: CODE, who: { id: learner }, pin: '2468', again: '2468', word: body.word };
    expect((await site.newVisitor().post('/api/join/enter', chosen)).status).toBe(200);
  });

  test('320 learners behind one address, more than it may guess codes, sign in, and nobody is shut out', async () => {
    const site = await openPeople(kind);
    const group = await openGroup(site);
    const { hashSecret } = await import('../../../app/accounts/passwords');
    const pinHash = await hashSecret('4711');
    const ids = Array.from({ length: 320 }, (_, n) => `learner-${n}`);
    const rest = { pin_hash: pinHash, time_factor: 100, created_at: NOON, removed_at: null };
    const rows = ids.map((id) => ({ id, group_id: group, name: id, ...rest }));
    await site.store.db.insertInto('learner').values(rows).execute();
    const statuses = await Promise.all(
      ids.map(
        async (id) => (await enter(site.newVisitor({ 'x-peer-address': '10.1.1.1' }), { id }, '4711')).status,
      ),
    );
    expect(statuses.filter((status) => status === 200)).toHaveLength(320);
  });

  test('made-up names that joined within the hour are taken off in one act, and no others', async () => {
    const site = await openPeople(kind);
    const group = await openGroup(site);
    const ada = await lead(site, group);
    await enrol(site, group, 'Joan', '4711');
    const players = [site.newVisitor(), site.newVisitor()];
    for (const [n, player] of players.entries()) await enter(player, { name: `Nobody ${n}` }, '4711');
    const other = await openGroup(site, 'AAAA-AAAA');
    await enter(site.newVisitor(), { name: 'Ann' }, '4711', 'AAAA-AAAA');
    const answer = await ada.post('/api/groups/undo-joins', { group });
    expect(answer.body).toEqual({ ok: true, learners: 2 });
    const left = await site.store.db
      .selectFrom('learner')
      .select(['name', 'group_id'])
      .where('removed_at', 'is', null)
      .orderBy('name')
      .execute();
    expect(left).toEqual([
      { name: 'Ann', group_id: other },
      { name: 'Joan', group_id: group },
    ]);
    expect(await players[0]?.who()).toEqual({ kind: 'nobody' });
  });

  test('a reset PIN ends the sign-ins that were made with the old one', async () => {
    const site = await openPeople(kind);
    const group = await openGroup(site);
    const ada = await lead(site, group);
    const learner = await enrol(site, group, 'Joan', '4711');
    const joan = site.newVisitor();
    await enter(joan, { id: learner }, '4711');
    await ada.post('/api/people/reset-pin', { learner });
    expect(await joan.who()).toEqual({ kind: 'nobody' });
  });

  test('a learner takes their data away; results are in it from the release on', async () => {
    const site = await openPeople(kind);
    const learner = await enrol(site, await openGroup(site), 'Joan', '4711');
    const joan = site.newVisitor();
    await enter(joan, { id: learner }, '4711');
    const { id: attempt } = await site.store.db.selectFrom('attempt').select('id').executeTakeFirstOrThrow();
    await site.store.db
      .insertInto('result_version')
      .values({
        attempt_id: attempt,
        version: 1,
        engine: '1',
        results: '[{"key":"gauge-drift"}]',
        score: 0.5,
        reason: 'handed in',
        made_by: 'server',
        made_at: NOON,
      })
      .execute();
    await site.store.db
      .updateTable('attempt')
      .set({ state: 'marked', handed_in_at: NOON, late: 1 })
      .execute();
    const before = await joan.get('/api/join/my-data');
    expect(before.headers.get('content-disposition')).toBe('attachment; filename="my-data.json"');
    expect(before.body).toMatchObject({ name: 'Joan', group: 'Tuesday', joined: '2026-11-25T12:00:00.000Z' });
    expect(JSON.stringify(before.body)).not.toMatch(/gauge-drift|argon2id|score/);
    expect(before.body.attempts).toEqual([
      {
        work: expect.any(String),
        number: 1,
        state: 'marked',
        started: '2026-11-25T12:00:00.000Z',
        handedIn: '2026-11-25T12:00:00.000Z',
        late: true,
        walls: expect.any(Array),
        used: [],
      },
    ]);
    await site.store.db.updateTable('attempt').set({ state: 'released' }).execute();
    await site.store.db.updateTable('set_work').set({ released_at: NOON }).execute();
    const after = await joan.get('/api/join/my-data');
    expect(JSON.stringify(after.body)).toContain('gauge-drift');
  });

  test('results that show by date or at once are in a learner’s data without a release', async () => {
    const site = await openPeople(kind);
    const learner = await enrol(site, await openGroup(site), 'Joan', '4711');
    const joan = site.newVisitor();
    await enter(joan, { id: learner }, '4711');
    const { id: attempt } = await site.store.db.selectFrom('attempt').select('id').executeTakeFirstOrThrow();
    const result = { version: 1, engine: '1', results: '[{"key":"gauge-drift"}]', score: 0.5 };
    await site.store.db
      .insertInto('result_version')
      .values({ attempt_id: attempt, ...result, reason: 'handed in', made_by: 'server', made_at: NOON })
      .execute();
    await site.store.db.updateTable('attempt').set({ state: 'marked', handed_in_at: NOON }).execute();
    const seen = async (release: 'at once' | 'when due', dueAt: number) => {
      await site.store.db.updateTable('set_work').set({ release, due_at: dueAt, grace_ms: 0 }).execute();
      return JSON.stringify((await joan.get('/api/join/my-data')).body).includes('gauge-drift');
    };
    const inTenYears = Date.now() + 10 * 365 * 86_400_000;
    expect(await seen('when due', inTenYears)).toBe(false);
    expect(await seen('when due', Date.now() - 1)).toBe(true);
    expect(await seen('at once', inTenYears)).toBe(true);
  });

  test('a learner has their data deleted: nothing is left but an id in the trail', async () => {
    const site = await openPeople(kind);
    const group = await openGroup(site);
    const learner = await enrol(site, group, 'Joan Hod', '4711');
    const other = await enrol(site, group, 'Ann', '4711');
    const joan = site.newVisitor();
    await enter(joan, { id: learner }, '4711');
    expect((await joan.post('/api/join/delete-my-data', { sure: false })).status).toBe(422);
    expect((await joan.post('/api/join/delete-my-data', { sure: true })).status).toBe(200);
    expect(await joan.who()).toEqual({ kind: 'nobody' });

    const left = await site.store.db.selectFrom('attempt').select('learner_id').execute();
    expect(left).toEqual([{ learner_id: other }]);
    for (const table of ['learner', 'learner_session', 'attempt_wall', 'audit', 'throttle'] as const) {
      expect(JSON.stringify(await site.store.db.selectFrom(table).selectAll().execute())).not.toContain(
        'Joan',
      );
    }
    expect(await site.store.db.selectFrom('attempt_wall').select('place').execute()).toHaveLength(2);
  });

  test('a learner signs out on all other devices, and nobody else', async () => {
    const site = await openPeople(kind);
    await openGroup(site);
    const [phone, tablet, mate] = [site.newVisitor(), site.newVisitor(), site.newVisitor()];
    for (const visitor of [phone, tablet]) await enter(visitor, { name: 'Joan' }, '4711');
    await enter(mate, { name: 'Maud' }, '4711');
    expect((await phone.post('/api/join/end-sessions', {})).status).toBe(200);
    expect([await phone.who(), await tablet.who(), await mate.who()]).toMatchObject([
      { name: 'Joan' },
      { kind: 'nobody' },
      { name: 'Maud' },
    ]);
  });

  test('one browser is one person: the learner who signs in ends the instructor’s session', async () => {
    const site = await openPeople(kind);
    const group = await openGroup(site);
    const shared = await lead(site, group);
    const copy = site.newVisitor();
    for (const [name, value] of shared.cookies) copy.cookies.set(name, value);
    await enter(shared, { name: 'Joan' }, '4711');
    expect(await shared.who()).toMatchObject({ kind: 'learner', name: 'Joan' });
    expect(await copy.who()).toEqual({ kind: 'nobody' });
  });
});

test('300 wrong codes from one network, and no more are looked at; who was there before comes in', async () => {
  const site = await openPeople('sqlite');
  const ada = await lead(site, await openGroup(site));
  const visitor = site.newVisitor({ 'x-peer-address': '2001:db8::1' });
  const neighbour = site.newVisitor({ 'x-peer-address': '2001:db8:0:0:9::2' });
  expect((await enter(neighbour, { name: 'Ann' }, '4711')).status).toBe(200);
  for (let tries = 0; tries < 300; tries += 1) {
    expect((await enter(visitor, { name: 'Joan' }, '4711', 'ZZZZ-ZZZZ')).status).toBe(422);
  }
  expect((await enter(visitor, { name: 'Joan' }, '4711', 'ZZZZ-ZZZZ')).status).toBe(429);
  const beside = site.newVisitor({ 'x-peer-address': '2001:db8::7:8' });
  expect((await enter(beside, { name: 'Joan' }, '4711')).status).toBe(429);
  expect((await enter(neighbour, { name: 'Ann' }, '4711')).status).toBe(200);
  const signIn = { email: 'ada@example.org', password: 'four red bricks' };
  expect((await beside.post('/api/people/sign-in', signIn)).status).toBe(200);
  expect((await ada.post('/api/people/sign-in', signIn)).status).toBe(200);
  const elsewhere = site.newVisitor({ 'x-peer-address': '2001:db8:0:1::1' });
  expect((await enter(elsewhere, { name: 'Joan' }, '4711')).status).toBe(200);
});

test('a learner’s session is kept as a hash', async () => {
  const site = await openPeople('sqlite');
  await openGroup(site);
  const joan = site.newVisitor();
  await enter(joan, { name: 'Joan' }, '4711');
  const rows = await site.store.db.selectFrom('learner_session').select('token_hash').execute();
  expect(rows).toEqual([{ token_hash: hashOf(joan.cookies.get('learner') ?? '') }]);
});
