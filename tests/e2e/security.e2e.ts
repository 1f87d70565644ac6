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

  test('a page written at build time stays so', async () => {
    const { headers } = await fetch(`${SITE_ADDRESS}/lessons/full-joints`);
    expect(headers.get('x-nextjs-cache')).toBe('HIT');
    expect(headers.get('content-security-policy')).not.toContain('nonce-');
  });
});

test('behind https: a year of HSTS, and cookies for this host alone', async () => {
  const site = await openOwnSite({ PUBLIC_ADDRESS: 'https://walls.example.org' });
  try {
    const page = await fetch(`${site.address}/sign-in`);
    expect(page.headers.get('strict-transport-security')).toBe('max-age=31536000; includeSubDomains');
    expect(page.headers.get('content-security-policy')).toContain('upgrade-insecure-requests');
    const made = await fetch(`${site.address}/api/people/set-up`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: 'https://walls.example.org' },
      body: JSON.stringify({
        code: site.startCode,
        name: 'Ada Clay',
        email: 'ada@example.org',
        password: 'four red bricks',
      }),
    });
    expect(made.status).toBe(200);
    expect(made.headers.getSetCookie().every((line) => /^__Host-.*; Secure/.test(line))).toBe(true);
  } finally {
    await site.close();
  }
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
