import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { KINDS } from '../databases';
import { openPeople, type PeopleSite, type Visitor } from '../visitor';

const ADA = { name: 'Ada Clay', email: 'ada@example.org', password: 'four red bricks' };
const BEN = { name: 'Ben Stone', email: 'ben@example.org', password: 'mortar and lime 7' };

async function owner(site: PeopleSite): Promise<Visitor> {
  const visitor = site.newVisitor();
  const made = await visitor.post('/api/people/set-up', { code: await site.startCode(), ...ADA });
  expect(made.body).toEqual({ ok: true, go: '/desk' });
  return visitor;
}

/** The secret at the end of the link that the owner hands over. */
async function invite(ada: Visitor): Promise<string> {
  const { name, email } = BEN;
  const { body } = await ada.post('/api/people/invite', { name, email });
  return String(body.link).replace('http://walls.test/reset/', '');
}

/** A second link for Ben, asked for while the first is not used. */
async function freshLink(ada: Visitor, site: PeopleSite): Promise<string> {
  const { id: user } = await site.store.db
    .selectFrom('user')
    .select('id')
    .where('email', '=', BEN.email)
    .executeTakeFirstOrThrow();
  const { body } = await ada.post('/api/people/reset-link', { user });
  return String(body.link).split('/').at(-1) ?? '';
}

describe.each(KINDS)('people at the desk, on %s', (kind) => {
  test('whoever has the start code becomes the owner, once', async () => {
    const site = await openPeople(kind);
    const stranger = site.newVisitor();
    const wrong = await stranger.post('/api/people/set-up', { code: 'AAAA-BBBB-CCCC-DDDD', ...ADA });
    expect([wrong.status, Object.keys(wrong.body.fields ?? {})]).toEqual([422, ['code']]);

    const code = await site.startCode();
    // Read out and typed: small letters, no dashes, O for 0.
    const typed = code.toLowerCase().replaceAll('-', ' ').replaceAll('0', 'o');
    const visitor = site.newVisitor();
    expect((await visitor.post('/api/people/set-up', { code: typed, ...ADA })).status).toBe(200);
    expect(await visitor.who()).toMatchObject({ kind: 'owner', name: 'Ada Clay', email: 'ada@example.org' });
    const second = await stranger.post('/api/people/set-up', { code, ...BEN });
    expect([second.status, second.body.problem]).toEqual([
      409,
      'This site has its owner already. Sign in instead.',
    ]);
  });

  test('no code is used up by a form that is not complete', async () => {
    const site = await openPeople(kind);
    const code = await site.startCode();
    const visitor = site.newVisitor();
    const short = await visitor.post('/api/people/set-up', { code, ...ADA, password: 'short', email: 'ada' });
    expect([short.status, Object.keys(short.body.fields ?? {})]).toEqual([422, ['email', 'password']]);
    const bare = await visitor.post('/api/people/set-up', { ...ADA, code: '', name: '' });
    expect([bare.status, Object.keys(bare.body.fields ?? {})]).toEqual([422, ['code', 'name']]);
    expect((await visitor.post('/api/people/set-up', { code, ...ADA })).status).toBe(200);
  });

  test('the code is stored as a hash, the password by argon2id at the OWASP minimum', async () => {
    const site = await openPeople(kind);
    const code = await site.startCode();
    const kept = await site.store.db.selectFrom('verification').selectAll().execute();
    expect(JSON.stringify(kept)).not.toContain(code);
    await site.newVisitor().post('/api/people/set-up', { code, ...ADA });
    const { password } = await site.store.db
      .selectFrom('account')
      .select('password')
      .executeTakeFirstOrThrow();
    // m in KiB: 19 MiB (OWASP Password Storage Cheat Sheet, argon2id with t = 2, p = 1).
    expect(password).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
  });

  test('an instructor comes by a link that works once; e-mail and password open the desk from then on', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const token = await invite(ada);
    const ben = site.newVisitor();
    expect((await ben.post('/api/people/sign-in', { email: BEN.email, password: BEN.password })).status).toBe(
      401,
    );
    const chosen = await ben.post('/api/people/new-password', { token, password: BEN.password });
    expect(chosen.body).toEqual({ ok: true, go: '/desk' });
    expect(await ben.who()).toMatchObject({ kind: 'instructor', name: 'Ben Stone' });
    expect(
      (await site.newVisitor().post('/api/people/new-password', { token, password: 'another long one' }))
        .status,
    ).toBe(410);

    const elsewhere = site.newVisitor();
    const inAgain = await elsewhere.post('/api/people/sign-in', {
      email: 'BEN@example.org',
      password: BEN.password,
      onward: '/desk/groups/7',
    });
    expect(inAgain.body).toEqual({ ok: true, go: '/desk/groups/7' });
  });

  test('a new link signs its holder out everywhere when it is used, and not before', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const ben = site.newVisitor();
    await ben.post('/api/people/new-password', { token: await invite(ada), password: BEN.password });
    const user = String(((await ben.who()) as { userId: string }).userId);
    const { body } = await ada.post('/api/people/reset-link', { user });
    expect(await ben.who()).toMatchObject({ kind: 'instructor' });
    const token = String(body.link).split('/').at(-1);
    await site.newVisitor().post('/api/people/new-password', { token, password: 'lime putty in a tub' });
    expect(await ben.who()).toEqual({ kind: 'nobody' });
    expect((await ben.post('/api/people/sign-in', { email: BEN.email, password: BEN.password })).status).toBe(
      401,
    );
  });

  test('the owner ends the sessions of somebody; signing out ends one', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const ben = site.newVisitor();
    await ben.post('/api/people/new-password', { token: await invite(ada), password: BEN.password });
    const user = String(((await ben.who()) as { userId: string }).userId);
    // A copy of the cookie, as a thief would have it.
    const copy = site.newVisitor();
    for (const [name, value] of ben.cookies) copy.cookies.set(name, value);
    await ada.post('/api/people/end-sessions', { user });
    expect([await ben.who(), await copy.who()]).toEqual([{ kind: 'nobody' }, { kind: 'nobody' }]);

    const stolen = site.newVisitor();
    for (const [name, value] of ada.cookies) stolen.cookies.set(name, value);
    await ada.post('/api/people/sign-out', {});
    expect([[...ada.cookies.keys()], await stolen.who()]).toEqual([['device'], { kind: 'nobody' }]);
  });

  test('somebody shut out is out at once, with every link they had; the owner is not shut out', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const ben = site.newVisitor();
    await ben.post('/api/people/new-password', { token: await invite(ada), password: BEN.password });
    const { userId: user } = (await ben.who()) as { userId: string };
    const { body } = await ada.post('/api/people/reset-link', { user });
    expect((await ada.post('/api/people/close-account', { user })).status).toBe(200);
    expect(await ben.who()).toEqual({ kind: 'nobody' });
    const again = { email: BEN.email, password: BEN.password };
    expect((await ben.post('/api/people/sign-in', again)).status).toBe(401);
    const token = String(body.link).split('/').at(-1);
    expect((await ben.post('/api/people/new-password', { token, password: BEN.password })).status).toBe(410);

    const { userId } = (await ada.who()) as { userId: string };
    expect((await ada.post('/api/people/close-account', { user: userId })).status).toBe(409);
    expect(await ada.who()).toMatchObject({ kind: 'owner' });
  });

  test('of 100 guesses on one account ten are evaluated, whatever address they claim; a link lets its holder in', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const guesses = await Promise.all(
      Array.from({ length: 100 }, (_, guess) =>
        site
          .newVisitor({ 'x-forwarded-for': `10.0.0.${guess}` })
          .post('/api/people/sign-in', { email: ADA.email, password: `guess number ${guess}` }),
      ),
    );
    const statuses = guesses.map(({ status }) => status);
    expect([statuses.filter((s) => s === 401).length, statuses.filter((s) => s === 429).length]).toEqual([
      10, 90,
    ]);
    const shutOut = await site
      .newVisitor()
      .post('/api/people/sign-in', { email: ADA.email, password: ADA.password });
    expect([shutOut.status, shutOut.headers.get('retry-after')]).toEqual([429, '900']);

    const user = String(((await ada.who()) as { userId: string }).userId);
    const { body } = await ada.post('/api/people/reset-link', { user });
    const token = String(body.link).split('/').at(-1);
    const again = await site.newVisitor().post('/api/people/new-password', { token, password: ADA.password });
    expect(again.status).toBe(200);
  });

  test('choosing a password ends every older link of that person', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const invitation = await invite(ada);
    const ben = site.newVisitor();
    await ben.post('/api/people/new-password', { token: await freshLink(ada, site), password: BEN.password });
    expect(await ben.who()).toMatchObject({ kind: 'instructor' });
    const thief = site.newVisitor();
    const late = await thief.post('/api/people/new-password', {
      token: invitation,
      password: 'not his own 7',
    });
    expect(late.status).toBe(410);
    expect((await ben.post('/api/people/sign-in', { ...BEN, name: undefined })).status).toBe(200);
  });

  test('signing in ends the session it replaces', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const before = site.newVisitor();
    for (const [name, value] of ada.cookies) before.cookies.set(name, value);
    await ada.post('/api/people/sign-in', { email: ADA.email, password: ADA.password });
    expect([await ada.who(), await before.who()]).toMatchObject([{ kind: 'owner' }, { kind: 'nobody' }]);
  });

  test('a session that is used every week lasts sixty days, and so does its cookie; then it is over all the same', async () => {
    const site = await openPeople(kind);
    const begun = Date.now();
    vi.useFakeTimers({ toFake: ['Date'], now: begun });
    onTestFinished(() => {
      vi.useRealTimers();
    });
    const ada = await owner(site);
    const { headers } = await ada.post('/api/people/sign-in', { email: ADA.email, password: ADA.password });
    expect(headers.getSetCookie().filter((line) => /^desk=[^;]/.test(line))).toMatchObject([
      expect.stringContaining('Max-Age=5184000;'),
    ]);
    for (const day of [7, 14, 21, 28, 35, 42, 49, 56, 59]) {
      vi.setSystemTime(begun + day * 86_400_000);
      expect(await ada.who()).toMatchObject({ kind: 'owner' });
    }
    vi.setSystemTime(begun + 61 * 86_400_000);
    expect(await ada.who()).toEqual({ kind: 'nobody' });
  });

  test('wrong tries of strangers shut nobody out where they have signed in before', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const tryOn = (visitor: Visitor, password: string) =>
      visitor.post('/api/people/sign-in', { email: ADA.email, password });
    const stranger = site.newVisitor();
    for (let tries = 0; tries < 11; tries += 1) await tryOn(stranger, `guess number ${tries}`);
    expect((await tryOn(stranger, ADA.password)).status).toBe(429);
    await ada.post('/api/people/sign-out', {});
    expect((await tryOn(ada, ADA.password)).status).toBe(200);
    // A browser cannot say of itself that it is known: the mark of another account is none.
    const forged = site.newVisitor();
    forged.cookies.set('device', `${ada.cookies.get('device')?.split('.')[0]}.AAAAAAAAAAAAAAAAAAAAAA`);
    expect((await tryOn(forged, ADA.password)).status).toBe(429);
    // And the browser that is known has its own ten, not more.
    for (let tries = 0; tries < 10; tries += 1) await tryOn(ada, `guess number ${tries}`);
    expect((await tryOn(ada, ADA.password)).status).toBe(429);
  });

  test('nobody’s password is their own name or e-mail', async () => {
    const site = await openPeople(kind);
    const code = await site.startCode();
    for (const password of ['ada@example.org', 'Ada Clay 2024', 'example.org.7']) {
      const { status, body } = await site.newVisitor().post('/api/people/set-up', { code, ...ADA, password });
      expect([password, status, Object.keys(body.fields ?? {})]).toEqual([password, 422, ['password']]);
    }
  });

  test('nobody can tell from the answer whether an e-mail is known', async () => {
    const site = await openPeople(kind);
    await owner(site);
    const visitor = site.newVisitor();
    const wrong = await visitor.post('/api/people/sign-in', {
      email: ADA.email,
      password: 'not the password',
    });
    const unknown = await visitor.post('/api/people/sign-in', {
      email: 'eve@example.org',
      password: 'not the password',
    });
    expect(unknown.body).toEqual(wrong.body);
    expect(unknown.status).toBe(wrong.status);
  });

  test('the trail of what was done names no person', async () => {
    const site = await openPeople(kind);
    await invite(await owner(site));
    const trail = await site.store.db
      .selectFrom('audit')
      .select(['action', 'detail', 'actor'])
      .orderBy('seq')
      .execute();
    expect(trail.map(({ action }) => action)).toEqual(['became owner', 'invited']);
    expect(JSON.stringify(trail)).not.toMatch(/Ada|Ben|example\.org/);
  });
});

test.each([
  ['another site', { 'sec-fetch-site': 'cross-site', origin: 'http://walls.test' }, 403],
  ['another host of the same site', { 'sec-fetch-site': 'same-site' }, 403],
  ['typed into the address bar', { 'sec-fetch-site': 'none' }, 403],
  ['this site', { 'sec-fetch-site': 'same-origin' }, 401],
  ['a browser that names only the origin, ours', { 'sec-fetch-site': '', origin: 'http://walls.test' }, 401],
  [
    'a browser that names only the origin, another',
    { 'sec-fetch-site': '', origin: 'http://evil.test' },
    403,
  ],
  ['a program that names nothing', { 'sec-fetch-site': '' }, 403],
  ['a page of no origin', { 'sec-fetch-site': '', origin: 'null' }, 403],
] as const)('a request from %s', async (_, headers, status) => {
  const site = await openPeople('sqlite');
  const visitor = site.newVisitor();
  const answer = await visitor.post('/api/people/invite', {}, headers);
  expect(answer.status).toBe(status);
});

test('behind https every cookie is __Host-, secure, and for this host alone', async () => {
  const site = await openPeople('sqlite', 'https://walls.test');
  const visitor = site.newVisitor();
  const { headers } = await visitor.post('/api/people/set-up', { code: await site.startCode(), ...ADA });
  const lines = headers.getSetCookie();
  expect(lines.map((line) => line.split('=')[0]).sort()).toEqual([
    '__Host-desk',
    '__Host-device',
    '__Host-learner',
    '__Host-who',
  ]);
  for (const line of lines) {
    expect(line).toMatch(/; Path=\//);
    expect(line).toMatch(/; Secure/);
    expect(line).toMatch(/; SameSite=Lax/i);
    expect(line).not.toMatch(/Domain=/i);
    if (!line.startsWith('__Host-who=')) expect(line).toMatch(/; HttpOnly/);
  }
  expect(await visitor.who()).toMatchObject({ kind: 'owner' });
});
