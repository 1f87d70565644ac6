import { type IncomingMessage, request } from 'node:http';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { routesOnDisk } from '../routes-on-disk';
import { type Caller, type Cast, makeCast } from './cast';
import { type OwnSite, openOwnSite } from './own-site';

const { SITE_ADDRESS = '' } = process.env;

/** A page written at build time, pages made for the request, what is no page, what is not there, and a file of the build. */
const ADDRESSES = [
  '/',
  '/lessons/full-joints',
  '/walls',
  '/sign-in',
  '/api/health',
  '/api/join/my-data',
  '/sound-wall.svg',
  '/icon.svg',
  '/no-such-page',
];

/** What a file of the site is, by the end of its name, and in which letters. */
const FILE_TYPES: Readonly<Record<string, RegExp>> = {
  '.js': /^text\/javascript; charset=utf-8$/,
  '.css': /^text\/css; charset=utf-8$/,
  '.woff2': /^font\/woff2$/,
};

describe('every answer', () => {
  test.each(ADDRESSES)('%s keeps to itself', async (path) => {
    const { headers } = await fetch(SITE_ADDRESS + path);
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('referrer-policy')).toBe('same-origin');
    const policy = headers.get('content-security-policy') ?? '';
    expect(policy).toMatch(/object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'/);
    expect(policy).not.toMatch(/script-src[^;]*'unsafe/);
    // Over plain http a browser would ignore it, and must.
    expect(headers.get('strict-transport-security')).toBe(null);
    expect(headers.get('x-powered-by')).toBe(null);
    expect(headers.get('access-control-allow-origin')).toBe(null);
    // JSON is UTF-8 by definition, and so is XML that says nothing else (RFC 8259, 7303): Next says nothing of its icon.
    expect(headers.get('content-type')).toMatch(/; ?charset=utf-8$|^application\/json$|^image\/svg\+xml$/i);
  });

  test('a page made for the request holds a nonce of its own each time, on each of its scripts', async () => {
    const nonces = await Promise.all(
      [1, 2].map(async () => {
        const answer = await fetch(`${SITE_ADDRESS}/walls`);
        const nonce = /'nonce-([^']+)'/.exec(answer.headers.get('content-security-policy') ?? '')?.[1] ?? '';
        const scripts = [...(await answer.text()).matchAll(/<script(?![^>]*\bnonce="([^"]*)")[^>]*>/g)];
        // Only the script that sets the colours has none: it is named by its hash.
        expect(scripts).toHaveLength(1);
        return nonce;
      }),
    );
    expect(nonces[0]).toMatch(/^[\w+/]{22}==$/);
    expect(nonces[0]).not.toBe(nonces[1]);
  });

  test('scripts, styles and fonts too, each of the type it is', async () => {
    const page = await (await fetch(SITE_ADDRESS)).text();
    const files = [...new Set([...page.matchAll(/\/_next\/static\/[\w./~-]+/g)].map(([path]) => path))];
    for (const [ending, type] of Object.entries(FILE_TYPES)) {
      const path = files.find((file) => file.endsWith(ending)) ?? `no ${ending}`;
      const { status, headers } = await fetch(SITE_ADDRESS + path);
      expect([path, status, headers.get('x-content-type-options')]).toEqual([path, 200, 'nosniff']);
      expect(headers.get('content-type')).toMatch(type);
      expect(headers.get('content-security-policy')).toBe("default-src 'none'; frame-ancestors 'none'");
    }
  });

  test.each([
    '/.git/config',
    '/.env',
    '/.data/secret',
    '/package.json',
    '/app/page.tsx',
    '/_next/static/',
    '/_next/static/%2e%2e/BUILD_ID',
    '/_next/server/',
    '/lessons/pictures/..%2f..%2fpackage.json',
  ])('%s is nothing that the site hands out', async (path) => {
    expect((await fetch(SITE_ADDRESS + path)).status).toBe(404);
  });

  test.each(['TRACE', 'OPTIONS', 'PUT', 'DELETE', 'PATCH'])('%s is no way to ask', async (method) => {
    // The usual fetch refuses to send TRACE.
    const answer = await new Promise<IncomingMessage>((resolve, reject) => {
      const headers = { cookie: 'desk=secret' };
      request(`${SITE_ADDRESS}/api/health`, { method, headers }, resolve).once('error', reject).end();
    });
    answer.resume();
    expect([answer.statusCode, answer.headers.allow]).toEqual([405, 'GET, HEAD, POST']);
  });

  test('a page written at build time stays so', async () => {
    const { headers } = await fetch(`${SITE_ADDRESS}/lessons/full-joints`);
    expect(headers.get('x-nextjs-cache')).toBe('HIT');
    expect(headers.get('content-security-policy')).not.toContain('nonce-');
  });
});

test('an address cannot be made up: 300 wrong codes, and no more are looked at', async () => {
  const site = await openOwnSite();
  const guess = (n: number) =>
    fetch(`${site.address}/api/join/enter`, {
      method: 'POST',
      headers: {
        'content-type': 'application/json',
        'sec-fetch-site': 'same-origin',
        'x-forwarded-for': `10.0.0.${n % 250}`,
        'x-peer-address': `10.0.1.${n % 250}`,
      },
      body: JSON.stringify({ code: 'ZZZZ-ZZZZ', who: { name: 'Eve' }, pin: '4711' }),
    });
  try {
    const statuses: number[] = [];
    for (let n = 0; n < 305; n += 1) statuses.push((await guess(n)).status);
    expect([statuses.indexOf(429), statuses.filter((status) => status === 422).length]).toEqual([300, 300]);
  } finally {
    await site.close();
  }
});

describe('bodies that make no sense', () => {
  let site: OwnSite;
  let cast: Cast;
  beforeAll(async () => {
    site = await openOwnSite();
    cast = await makeCast(site);
  });
  afterAll(() => site?.close());

  const handlers = routesOnDisk()
    .map(({ name }) => name)
    .filter((name) => name.startsWith('POST ') && !/sign-out|delete-my-data|close|remove-learner/.test(name))
    .map((name) => name.replace('POST ', ''));

  const NAMES = [
    'group',
    'work',
    'learner',
    'attempt',
    'code',
    'who',
    'pin',
    'name',
    'email',
    'password',
    'key',
    'walls',
    'title',
    '__proto__',
  ];
  const bodies = fc.oneof(
    fc.jsonValue(),
    fc.dictionary(fc.constantFrom(...NAMES), fc.jsonValue()),
    fc.string({ unit: 'binary' }),
  );

  test.each(handlers)('%s refuses them, and does not fall over', async (path) => {
    const callers: readonly Caller[] = [cast.people.lead, cast.people.learner, cast.people.owner];
    const real = { group: cast.group, work: cast.work, learner: cast.learner, attempt: cast.attempt };
    const shapes = fc.sample(bodies, { numRuns: 25, seed: 20_261_125 });
    for (const [index, shape] of shapes.entries()) {
      const isRecord = typeof shape === 'object' && shape !== null && !Array.isArray(shape);
      const caller = callers[index % callers.length];
      const answer = await caller?.post(path, isRecord && index % 2 === 0 ? { ...real, ...shape } : shape);
      expect([path, JSON.stringify(shape), answer?.status]).toEqual([
        path,
        JSON.stringify(shape),
        expect.toSatisfy((status: number) => status < 500),
      ]);
    }
  });

  test.each(handlers)('%s stops reading where it has had enough', async (path) => {
    const answer = await cast.people.lead.post(path, 'x'.repeat(4 * 1024 * 1024));
    expect([401, 404, 413]).toContain(answer.status);
  });
});
