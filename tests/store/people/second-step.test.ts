import { symmetricEncrypt } from 'better-auth/crypto';
import { beforeEach, describe, expect, onTestFinished, test, vi } from 'vitest';
import { keyOf, RFC_CODES, RFC_KEY, totpOf } from '../../accounts/totp';
import { KINDS } from '../databases';
import { openPeople, type PeopleSite, type Visitor } from '../visitor';

const ADA = { name: 'Ada Clay', email: 'ada@example.org', password: 'four red bricks' };
const BEN = { name: 'Ben Stone', email: 'ben@example.org', password: 'mortar and lime 7' };
const NOBODY = { kind: 'nobody' };

// A clock that stands: each code is asked for a minute later, so that none is the one before.
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: Date.UTC(2026, 10, 30, 12) });
  onTestFinished(() => {
    vi.useRealTimers();
  });
});

async function owner(site: PeopleSite): Promise<Visitor> {
  const visitor = site.newVisitor();
  await visitor.post('/api/people/set-up', { code: await site.startCode(), ...ADA });
  return visitor;
}

/** An instructor by a link of the owner. */
async function ben(site: PeopleSite, ada: Visitor): Promise<Visitor> {
  const { name, email, password } = BEN;
  const { body } = await ada.post('/api/people/invite', { name, email });
  const visitor = site.newVisitor();
  await visitor.post('/api/people/new-password', { token: String(body.link).split('/').at(-1), password });
  return visitor;
}

interface Phone {
  readonly code: () => string;
  readonly recovery: readonly string[];
}

async function setUp(visitor: Visitor, password: string): Promise<Phone> {
  const { body } = await visitor.post('/api/account/second-step/begin', { password });
  const key = keyOf(String(body.key));
  const code = () => {
    vi.setSystemTime(Date.now() + 60_000);
    return totpOf(key, Date.now());
  };
  const turnedOn = await visitor.post('/api/account/second-step/confirm', { code: code() });
  expect(turnedOn.status).toBe(200);
  return { code, recovery: turnedOn.body.codes as readonly string[] };
}

async function afterPassword(site: PeopleSite, { email, password } = ADA): Promise<Visitor> {
  const visitor = site.newVisitor();
  await visitor.post('/api/people/sign-in', { email, password });
  return visitor;
}

async function userOf(visitor: Visitor): Promise<string> {
  return ((await visitor.who()) as { userId: string }).userId;
}

const pass = (visitor: Visitor, code: string) => visitor.post('/api/people/sign-in-code', { code });

describe.each(KINDS)('the second step, on %s', (kind) => {
  test('is on only when the phone has shown a right code; then all other sessions are over', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const begin = (password: string) => ada.post('/api/account/second-step/begin', { password });
    expect((await begin('not the password')).body.fields).toEqual({ password: 'This is not your password.' });
    await begin(ADA.password);
    const wrong = await ada.post('/api/account/second-step/confirm', { code: '000000' });
    expect([wrong.status, Object.keys(wrong.body.fields ?? {})]).toEqual([422, ['code']]);
    const elsewhere = await afterPassword(site);
    expect(await elsewhere.who()).toMatchObject({ kind: 'owner' });
    const { recovery } = await setUp(ada, ADA.password);
    expect([new Set(recovery).size, await ada.who(), await elsewhere.who()]).toMatchObject([
      10,
      { kind: 'owner' },
      NOBODY,
    ]);
    expect((await begin(ADA.password)).status).toBe(409);
    const kept = JSON.stringify(await site.store.db.selectFrom('twoFactor').selectAll().execute());
    expect(recovery.filter((code) => kept.includes(code))).toEqual([]);
  });

  test('the password alone opens nothing; a code is good once, and goes on to the page that was asked for', async () => {
    const site = await openPeople(kind);
    const { code } = await setUp(await owner(site), ADA.password);
    const visitor = site.newVisitor();
    const { email, password } = ADA;
    const first = await visitor.post('/api/people/sign-in', { email, password, onward: '/desk/groups/7' });
    expect(first.body).toEqual({ ok: true, go: '/sign-in/code?then=%2Fdesk%2Fgroups%2F7' });
    expect([[...visitor.cookies.keys()], await visitor.who()]).toEqual([['second-step'], NOBODY]);
    const shown = code();
    const second = await visitor.post('/api/people/sign-in-code', { code: shown, onward: '/desk/groups/7' });
    expect([second.body, await visitor.who()]).toMatchObject([{ go: '/desk/groups/7' }, { kind: 'owner' }]);
    const thief = await afterPassword(site);
    expect([(await pass(thief, shown)).status, await thief.who()]).toEqual([422, NOBODY]);
    expect((await pass(site.newVisitor(), code())).status).toBe(410);
  });

  test('a recovery code signs in once, however it is typed, and the trail says so', async () => {
    const site = await openPeople(kind);
    const { recovery } = await setUp(await owner(site), ADA.password);
    const typed = (recovery[3] ?? '').toLowerCase().replace('-', ' ');
    const visitor = await afterPassword(site);
    expect([(await pass(visitor, typed)).status, await visitor.who()]).toMatchObject([
      200,
      { kind: 'owner' },
    ]);
    vi.setSystemTime(Date.now() + 300_000);
    const again = await afterPassword(site);
    expect((await pass(again, typed)).status).toBe(422);
    const { recoveryCodesOf } = await import('../../../app/accounts/second-step');
    expect(await recoveryCodesOf(await userOf(visitor))).toEqual(recovery.filter((_, place) => place !== 3));
    const trail = await site.store.db.selectFrom('audit').select('action').orderBy('seq').execute();
    expect(trail.map(({ action }) => action).slice(-2)).toEqual([
      'turned the second step on',
      'used a recovery code',
    ]);
  });

  test('of the guesses at a code ten are looked at, and none shuts its owner out where they signed in before', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const { code } = await setUp(ada, ADA.password);
    const statuses: number[] = [];
    for (let guess = 0; guess < 12; guess += 1) {
      const thief = await afterPassword(site);
      statuses.push((await pass(thief, `00000${guess % 10}`)).status);
    }
    expect(statuses).toEqual([...Array.from({ length: 10 }, () => 422), 429, 429]);
    expect((await pass(await afterPassword(site), code())).status).toBe(429);
    await ada.post('/api/people/sign-in', { email: ADA.email, password: ADA.password });
    expect((await pass(ada, code())).status).toBe(200);
  });

  test('who is signed in in the browser already does not stand in for whoever’s password was typed', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const instructor = await ben(site, ada);
    await setUp(ada, ADA.password);
    const own = await setUp(instructor, BEN.password);
    await instructor.post('/api/people/sign-in', { email: ADA.email, password: ADA.password });
    expect((await pass(instructor, own.code())).status).toBe(422);
    expect(await instructor.who()).toMatchObject({ kind: 'instructor' });
  });

  test('it waits ten minutes for the code', async () => {
    const site = await openPeople(kind);
    const { code } = await setUp(await owner(site), ADA.password);
    const slow = await afterPassword(site);
    vi.setSystemTime(Date.now() + 10 * 60_000);
    expect((await pass(slow, code())).status).toBe(410);
  });

  test('a password link leads to the second step too', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const instructor = await ben(site, ada);
    const { code } = await setUp(instructor, BEN.password);
    const { body } = await ada.post('/api/people/reset-link', { user: await userOf(instructor) });
    const visitor = site.newVisitor();
    const token = String(body.link).split('/').at(-1);
    const chosen = await visitor.post('/api/people/new-password', { token, password: 'lime putty in a tub' });
    expect([chosen.body.go, await visitor.who()]).toEqual(['/sign-in/code?then=%2Fdesk', NOBODY]);
    expect((await pass(visitor, code())).status).toBe(200);
  });

  test('one’s own is turned off with the password only; the owner turns off that of an instructor, and the trail says so', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const instructor = await ben(site, ada);
    await setUp(ada, ADA.password);
    await setUp(instructor, BEN.password);
    const [owners, instructors] = [await userOf(ada), await userOf(instructor)];
    const turnOff = (password: string) => ada.post('/api/account/second-step/turn-off', { password });
    expect([
      (await turnOff('not the password')).status,
      (await ada.post('/api/people/take-off-second-step', { user: owners })).status,
      (await instructor.post('/api/people/take-off-second-step', { user: instructors })).status,
    ]).toEqual([422, 409, 404]);
    expect(await (await afterPassword(site)).who()).toEqual(NOBODY);
    expect((await turnOff(ADA.password)).status).toBe(200);
    expect(await (await afterPassword(site)).who()).toMatchObject({ kind: 'owner' });

    expect(await (await afterPassword(site, BEN)).who()).toEqual(NOBODY);
    expect((await ada.post('/api/people/take-off-second-step', { user: instructors })).status).toBe(200);
    expect(await (await afterPassword(site, BEN)).who()).toMatchObject({ kind: 'instructor' });
    const trail = await site.store.db
      .selectFrom('audit')
      .select(['actor', 'action', 'subject'])
      .orderBy('seq', 'desc')
      .limit(2)
      .execute();
    expect(trail).toEqual([
      { actor: `user ${owners}`, action: 'took the second step off', subject: `user ${instructors}` },
      { actor: `user ${owners}`, action: 'turned the second step off', subject: `user ${owners}` },
    ]);
  });
});

test.each(RFC_CODES)('at %i seconds the code that RFC 6238 prints signs in', async (seconds, eight) => {
  const site = await openPeople('sqlite');
  await setUp(await owner(site), ADA.password);
  const { accounts } = await import('../../../app/accounts/accounts');
  const { secretConfig } = await (await accounts()).$context;
  const secret = await symmetricEncrypt({ key: secretConfig, data: RFC_KEY });
  await site.store.db.updateTable('twoFactor').set({ secret }).execute();
  vi.setSystemTime(seconds * 1000);
  const visitor = await afterPassword(site);
  // Six digits are the last of the eight: both are what is left of the same number.
  expect((await pass(visitor, eight.slice(2))).status).toBe(200);
  const late = await afterPassword(site);
  vi.setSystemTime(seconds * 1000 + 150_000);
  expect((await pass(late, eight.slice(2))).status).toBe(422);
});

test('behind https the cookie between the two steps is __Host- as well', async () => {
  const site = await openPeople('sqlite', 'https://walls.test');
  const { code } = await setUp(await owner(site), ADA.password);
  const visitor = await afterPassword(site);
  expect([...visitor.cookies.keys()]).toEqual(['__Host-second-step']);
  expect((await pass(visitor, code())).status).toBe(200);
});
