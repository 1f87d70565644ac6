import { describe, expect, test } from 'vitest';
import { accountKey } from '../../../app/accounts/sessions';
import { refusedTries } from '../../../lib/store/throttle';
import { KINDS } from '../databases';
import { openPeople, type PeopleSite, type Visitor } from '../visitor';

const ADA = { name: 'Ada Clay', email: 'ada@example.org', password: 'four red bricks' };
/** What Firefox on a Windows machine and Chrome on an Android phone say of themselves. */
const FIREFOX = 'Mozilla/5.0 (Windows NT 10.0; Win64; x64; rv:145.0) Gecko/20100101 Firefox/145.0';
const PHONE =
  'Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/142.0.0.0 Mobile Safari/537.36';

async function owner(site: PeopleSite): Promise<Visitor> {
  const visitor = site.newVisitor({ 'user-agent': FIREFOX });
  await visitor.post('/api/people/set-up', { code: await site.startCode(), ...ADA });
  return visitor;
}

async function signIn(site: PeopleSite, password = ADA.password): Promise<Visitor> {
  const visitor = site.newVisitor({ 'user-agent': PHONE });
  await visitor.post('/api/people/sign-in', { email: ADA.email, password });
  return visitor;
}

async function sessionsOf(visitor: Visitor) {
  const { ownSessions } = await import('../../../app/accounts/own-sessions');
  return ownSessions((await visitor.who()) as Parameters<typeof ownSessions>[0]);
}

const NOBODY = { kind: 'nobody' };

describe.each(KINDS)('one’s own account, on %s', (kind) => {
  test('a new password takes the old one, and ends every session but this', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const elsewhere = await signIn(site);
    const chosen = 'lime putty in a tub';
    const wrong = await ada.post('/api/account/password', { password: 'not the password', chosen });
    expect([wrong.status, wrong.body.fields]).toEqual([422, { password: 'This is not your password.' }]);
    const own = await ada.post('/api/account/password', { password: ADA.password, chosen: 'Ada Clay 2026' });
    expect([own.status, Object.keys(own.body.fields ?? {})]).toEqual([422, ['chosen']]);
    expect(await elsewhere.who()).toMatchObject({ kind: 'owner' });

    expect((await ada.post('/api/account/password', { password: ADA.password, chosen })).status).toBe(200);
    expect([await ada.who(), await elsewhere.who()]).toMatchObject([{ kind: 'owner' }, NOBODY]);
    expect([await (await signIn(site)).who(), await (await signIn(site, chosen)).who()]).toMatchObject([
      NOBODY,
      { kind: 'owner' },
    ]);
  });

  test('a new e-mail takes the password; it signs in from then on, from a browser that stays known', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    await ada.post('/api/people/invite', { name: 'Ben Stone', email: 'ben@example.org' });
    const change = (email: string, password: string) => ada.post('/api/account/email', { email, password });
    expect((await change('clay@example.org', 'not the password')).body.fields).toEqual({
      password: 'This is not your password.',
    });
    expect((await change('BEN@example.org', ADA.password)).body.fields).toEqual({
      email: 'Another account has this e-mail already.',
    });
    expect((await change('Clay@example.org', ADA.password)).status).toBe(200);
    expect(await ada.who()).toMatchObject({ email: 'clay@example.org' });
    for (let tries = 0; tries < 11; tries += 1)
      await site.newVisitor().post('/api/people/sign-in', { email: 'clay@example.org', password: 'a guess' });
    const again = { email: 'clay@example.org', password: ADA.password };
    expect((await site.newVisitor().post('/api/people/sign-in', again)).status).toBe(429);
    expect((await ada.post('/api/people/sign-in', again)).status).toBe(200);
  });

  test('a new name takes no password', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    expect((await ada.post('/api/account/name', { name: '  Ada  Marl ' })).status).toBe(200);
    expect(await ada.who()).toMatchObject({ name: 'Ada Marl' });
  });

  test('tries at the own password are counted like tries to sign in', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const guess = () =>
      ada.post('/api/account/email', { email: 'eve@example.org', password: 'not the password' });
    for (let tries = 0; tries < 10; tries += 1) expect((await guess()).status).toBe(422);
    expect((await guess()).status).toBe(429);
  });

  test('one sees one’s sessions with the device in words, and ends one or all others, never those of another', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const [phone, tablet] = [await signIn(site), await signIn(site)];
    const listed = await sessionsOf(ada);
    expect(listed.map(({ device, isThis }) => [device, isThis])).toEqual([
      ['Firefox on Windows', true],
      ['Chrome on Android', false],
      ['Chrome on Android', false],
    ]);
    const kept = await site.store.db.selectFrom('session').selectAll().execute();
    expect(JSON.stringify(kept)).not.toMatch(/Mozilla|127\.0\.0\.1/);

    const { body } = await ada.post('/api/people/invite', { name: 'Ben Stone', email: 'ben@example.org' });
    const token = String(body.link).split('/').at(-1);
    const ben = site.newVisitor();
    await ben.post('/api/people/new-password', { token, password: 'mortar and lime 7' });
    const [{ id: session } = { id: '' }] = await sessionsOf(phone);
    await ben.post('/api/account/end-sessions', { session });
    expect(await phone.who()).toMatchObject({ kind: 'owner' });
    await ada.post('/api/account/end-sessions', { session });
    expect([await phone.who(), await tablet.who()]).toMatchObject([NOBODY, { kind: 'owner' }]);
    await ada.post('/api/account/end-sessions', {});
    expect([await tablet.who(), await ada.who(), await ben.who()]).toMatchObject([
      NOBODY,
      { kind: 'owner' },
      { kind: 'instructor' },
    ]);
  });

  test('a person is told of the tries that were refused, until the sign-in after the next', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const told = async () => (await refusedTries(site.store.db, accountKey(ADA.email)))?.count;
    expect(await told()).toBe(undefined);
    // Ten are looked at, the rest are refused unread: all are tries.
    for (let tries = 0; tries < 12; tries += 1) await signIn(site, 'not the password');
    expect(await told()).toBe(12);
    await ada.post('/api/people/sign-in', { email: ADA.email, password: ADA.password });
    expect(await told()).toBe(12);
    await ada.post('/api/people/sign-in', { email: ADA.email, password: ADA.password });
    expect(await told()).toBe(undefined);
  });
});
