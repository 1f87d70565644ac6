import { symmetricEncrypt } from 'better-auth/crypto';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { RFC_CODES, RFC_KEY } from '../../accounts/totp';
import { KINDS } from '../databases';
import { openPeople } from '../visitor';
import { ADA, afterPassword, BEN, ben, NOBODY, owner, pass, setUp, stopClock, userOf } from './two-steps';

beforeEach(stopClock);

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
