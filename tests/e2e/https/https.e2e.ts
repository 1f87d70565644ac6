import type { IncomingHttpHeaders } from 'node:http';
import type { Browser, BrowserContext } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newContext, openBrowser } from '../browser';
import { type OwnSite, openOwnSite } from '../own-site';
import { openTlsProxy, type TlsProxy } from './tls-proxy';

const ADA = { name: 'Ada Clay', email: 'ada@example.org', password: 'four red bricks' };

let proxy: TlsProxy;
let site: OwnSite;
let browser: Browser;
let context: BrowserContext;
beforeAll(async () => {
  proxy = await openTlsProxy();
  site = await openOwnSite({ PUBLIC_ADDRESS: proxy.address });
  proxy.passOnTo(site.address);
  browser = await openBrowser();
  // The certificate is the test's own: no browser knows who signed it.
  context = await newContext(browser, { ignoreHTTPSErrors: true });
});
afterAll(async () => {
  await proxy?.close();
  await site?.close();
});

const post = (path: string, headers: Readonly<Record<string, string>>, body: unknown = {}) =>
  proxy.fetch(path, {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    body: JSON.stringify(body),
  });

const signIn = (password: string, headers: Readonly<Record<string, string>> = {}) =>
  post('/api/people/sign-in', { origin: proxy.address, ...headers }, { email: ADA.email, password });

/** The header's lines for cookies, by the cookie's name. */
function cookiesOf(headers: IncomingHttpHeaders): Readonly<Record<string, string>> {
  return Object.fromEntries((headers['set-cookie'] ?? []).map((line) => [line.split('=')[0], line]));
}

describe.sequential('the site behind https', () => {
  test('a browser makes the owner’s account, and has cookies for this host and https alone', async () => {
    const page = await context.newPage();
    await page.goto(`${proxy.address}/set-up`);
    await page.getByLabel('Start code').fill(site.startCode);
    await page.getByLabel('Your name').fill(ADA.name);
    await page.getByLabel('E-mail').fill(ADA.email);
    await page.getByLabel('Password').fill(ADA.password);
    await page.getByRole('main').getByRole('button', { name: 'Make the account' }).click();
    await page.waitForURL(`${proxy.address}/desk`);
    const cookies = await context.cookies();
    expect(
      cookies
        .map(({ name, secure, httpOnly, sameSite, path, domain }) => ({
          name,
          secure,
          httpOnly,
          sameSite,
          path,
          domain,
        }))
        .sort((a, b) => (a.name < b.name ? -1 : 1)),
    ).toEqual(
      (['desk', 'device', 'who'] as const).map((name) => ({
        name: `__Host-${name}`,
        secure: true,
        // Script reads which links to show in the header, and nothing else.
        httpOnly: name !== 'who',
        sameSite: 'Lax',
        path: '/',
        domain: '127.0.0.1',
      })),
    );
    // The same value under a name that a page of plain http, or another host, could set is nobody's.
    const value = cookies.find(({ name }) => name === '__Host-desk')?.value;
    const answer = await proxy.fetch('/desk', {
      headers: { cookie: `desk=${value}; __Secure-desk=${value}` },
    });
    expect(answer.status).toBe(307);
    await page.close();
  });

  test('what the person gets is kept in no cache, and the link they hand over is of https', async () => {
    const page = await context.newPage();
    const answer = await page.goto(`${proxy.address}/desk/people`);
    expect(answer?.headers()['cache-control']).toContain('no-store');
    // Whatever a name looks like, it is text.
    await page.getByLabel('Their name').fill('Ben <img src=x onerror=alert(1)>');
    await page.getByLabel('Their e-mail').fill('ben@example.org');
    await page.getByRole('button', { name: 'Make the link' }).click();
    const card = page.getByRole('region', { name: 'Link for Ben <img src=x onerror=alert(1)>' });
    expect(await card.getByText('/reset/').textContent()).toMatch(
      new RegExp(`^${proxy.address}/reset/[\\w-]{43}$`),
    );
    expect(await page.locator('img[src="x"]').count()).toBe(0);
    await page.close();
  });

  test('signing out ends the session on the server, and takes the cookies that say who it was', async () => {
    const before = await context.cookies();
    const page = await context.newPage();
    await page.goto(`${proxy.address}/desk`);
    await page.getByRole('contentinfo').getByRole('button', { name: 'Sign out' }).click();
    await page.waitForURL(`${proxy.address}/`);
    expect((await context.cookies()).map(({ name }) => name)).toEqual(['__Host-device']);
    const cookie = before.map(({ name, value }) => `${name}=${value}`).join('; ');
    expect((await proxy.fetch('/desk', { headers: { cookie } })).status).toBe(307);
    await page.close();
  });

  test.each(['/', '/sign-in', '/lessons/full-joints', '/walls/AAA-AAAA-AAA', '/api/health', '/no-such-page'])(
    '%s says that a year of https is to come, of every name below too',
    async (path) => {
      const { headers } = await proxy.fetch(path);
      expect(headers['strict-transport-security']).toBe('max-age=31536000; includeSubDomains');
      expect(headers['content-security-policy']).toContain('upgrade-insecure-requests');
      expect(headers['x-content-type-options']).toBe('nosniff');
    },
  );

  test('so does a file of the build, and what is refused', async () => {
    const [script] = /\/_next\/static\/[\w./~-]+\.js/.exec((await proxy.fetch('/')).text) ?? [];
    for (const answer of [
      await proxy.fetch(script ?? 'none'),
      await post('/api/people/invite', { origin: proxy.address }),
      await proxy.fetch('/', { method: 'DELETE' }),
    ]) {
      expect(answer.headers['strict-transport-security']).toBe('max-age=31536000; includeSubDomains');
    }
  });

  test('whoever is sent on stays here, and in https', async () => {
    for (const path of ['/desk', '/my-work', '/desk//evil.test', '/favicon.ico', '//evil.test/desk']) {
      const { status, headers } = await proxy.fetch(path);
      if (status < 300 || status > 399) continue;
      const to = new URL(headers.location ?? '', proxy.address + path);
      expect([path, to.origin]).toEqual([path, proxy.address]);
    }
    const { text } = await signIn(ADA.password);
    expect(JSON.parse(text)).toMatchObject({ ok: true, go: '/desk' });
    for (const onward of [
      'https://evil.test/desk',
      '//evil.test',
      '/desk\\@evil.test',
      'javascript:alert(1)',
    ]) {
      const answer = await post(
        '/api/people/sign-in',
        { origin: proxy.address },
        { email: ADA.email, password: ADA.password, onward },
      );
      expect([onward, JSON.parse(answer.text).go]).toEqual([onward, '/desk']);
    }
  });

  test.each([
    ['our own page', { origin: 'OURS' }, 200],
    ['our own page, by a browser that says so', { 'sec-fetch-site': 'same-origin' }, 200],
    ['a page of plain http on this host', { origin: 'http://127.0.0.1' }, 403],
    ['this host, another port', { origin: 'https://127.0.0.1:1' }, 403],
    ['the address behind the proxy', { origin: 'BEHIND' }, 403],
    ['another site', { origin: 'https://evil.test' }, 403],
    ['another site, by a browser that says so', { origin: 'OURS', 'sec-fetch-site': 'cross-site' }, 403],
    ['another host of this site', { origin: 'OURS', 'sec-fetch-site': 'same-site' }, 403],
    ['a page of no origin', { origin: 'null' }, 403],
    ['no page', {}, 403],
  ])('a sign-in from %s', async (_, headers, status) => {
    const named = Object.fromEntries(
      Object.entries<string>(headers).map(([name, value]) => [
        name,
        value.replace('OURS', proxy.address).replace('BEHIND', site.address),
      ]),
    );
    const body = { email: ADA.email, password: ADA.password };
    const answer = await post('/api/people/sign-in', named, body);
    expect(answer.status).toBe(status);
    if (status !== 200) expect(cookiesOf(answer.headers)).toEqual({});
  });

  test('each sign-in, wrong try and request not let through is a line of the log, by id', async () => {
    const begun = Date.now();
    await signIn('not her password');
    const { headers } = await signIn(ADA.password);
    const [cookie = ''] = (cookiesOf(headers)['__Host-desk'] ?? '').split(';');
    await post('/api/groups/close', { origin: proxy.address, cookie }, { group: 'nobody’s group' });
    await post('/api/groups/close', { origin: proxy.address }, { group: 'nobody’s group' });
    await post('/api/groups/close', { origin: 'https://evil.test', cookie }, {});
    const lines = () =>
      site
        .said()
        .split('\n')
        .filter((line) => line.startsWith('{') && line.endsWith('}'))
        .map((line) => JSON.parse(line))
        .filter(({ time }) => Date.parse(time) > begun);
    await expect
      .poll(() => lines().map(({ msg }) => msg))
      .toEqual([
        'a wrong try',
        'a right try',
        'refused: not let through',
        'refused: not let through',
        'refused: not sent from a page of this site',
      ]);
    const [wrong, right, foreign, stranger, elsewhere] = lines();
    expect(wrong.subject).toMatch(/^user [\w-]{36}$/);
    expect([right.subject, foreign.subject, stranger.subject]).toEqual([
      wrong.subject,
      wrong.subject,
      'nobody',
    ]);
    expect([foreign.route, elsewhere.route]).toEqual(['POST /api/groups/close', 'POST /api/groups/close']);
    expect(site.said()).not.toMatch(/Ada|Ben|example\.org|four red bricks|__Host/);
  });

  // Last: it uses up what this network may try.
  test('who called is what the proxy adds last, whatever the caller put in before', async () => {
    const statuses: number[] = [];
    for (let n = 0; n < 302; n += 1) {
      const made = { 'x-forwarded-for': `198.51.100.${n % 250}`, 'x-peer-address': `203.0.113.${n % 250}` };
      const { status } = await post(
        '/api/join/enter',
        { origin: proxy.address, ...made },
        { code: 'ZZZZ-ZZZZ', who: { name: 'Eve' }, pin: '4711' },
      );
      statuses.push(status);
    }
    expect([statuses.indexOf(429), statuses.filter((status) => status === 422).length]).toEqual([300, 300]);
  });
});
