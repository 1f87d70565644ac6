import { randomUUID } from 'node:crypto';
import fc from 'fast-check';
import { sql } from 'kysely';
import { describe, expect, inject, test } from 'vitest';
import { parseResults } from '../../lib/exercise/stored-results';
import type { Store } from '../../lib/store/database';
import { ask } from '../kills/ask';
import { KINDS, type Kind, ownDatabase } from './databases';
import { realWalls } from './samples/real-walls';
import { NOON, sampleAnswers, sampleAttempt } from './samples/sample-attempt';
import { openSite, type Site } from './site';

async function ready(kind: Kind) {
  const site = await openSite(await ownDatabase(kind));
  const walls = realWalls();
  const mine = await sampleAttempt(site.store, undefined, walls);
  const cookie = await site.cookieFor(mine.learner);
  const body = { attempt: mine.attempt, key: randomUUID(), walls: sampleAnswers(walls) };
  return { site, mine, cookie, body, send: (what: unknown) => post(site, cookie, JSON.stringify(what)) };
}

async function post({ address }: Site, cookie: string, text: string) {
  const response = await fetch(`${address}/api/hand-in`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', 'sec-fetch-site': 'same-origin', cookie },
    body: text,
  });
  const answer = (await response.json()) as Record<string, unknown>;
  return { status: response.status, answer, retryAfter: response.headers.get('retry-after') };
}

async function resultOf({ db }: Store) {
  return db.selectFrom('result_version').selectAll().executeTakeFirstOrThrow();
}

describe.each(KINDS)('%s: handing in over HTTP', (kind) => {
  test('201 with a receipt, then 200 with the same; the server marked the walls it laid itself', async () => {
    const { site, send, body } = await ready(kind);
    const first = await send(body);
    expect(first).toMatchObject({ status: 201, answer: { ok: true, attempt: body.attempt, replay: false } });
    const again = await send(body);
    expect(again).toMatchObject({ status: 200, answer: { ...first.answer, replay: true } });
    const { results, score } = await resultOf(site.store);
    const each = parseResults(results).map((one) => one.score);
    expect(each).toHaveLength(2);
    expect(score).toBe(((each[0] ?? NaN) + (each[1] ?? NaN)) / 2);
  });

  test('what is sent along as a score is not taken', async () => {
    const { send, body } = await ready(kind);
    expect(await send({ ...body, score: 1 })).toMatchObject({ status: 422 });
    const [first, ...others] = body.walls;
    expect(await send({ ...body, walls: [{ ...first, score: 1 }, ...others] })).toMatchObject({
      status: 422,
    });
  });

  test('each wrong body is told where it is wrong, and nothing is kept', async () => {
    const { site, send, body } = await ready(kind);
    const [first, second] = body.walls;
    const withMark = (mark: unknown) => ({ ...body, walls: [{ ...first, marks: [mark] }, second] });
    const rows: readonly (readonly [unknown, number, RegExp])[] = [
      [null, 422, /^hand-in: /],
      [[], 422, /^hand-in: /],
      [{ ...body, key: 'again' }, 422, /^key: /],
      [{ ...body, walls: [] }, 422, /^walls: /],
      [{ ...body, walls: [first] }, 409, /^This work has 2 walls; 1 were handed in/],
      [{ ...body, walls: [{ ...first, spentMs: -1 }, second] }, 422, /^walls\.0\.spentMs: /],
      [{ ...body, walls: [{ ...first, fingerprint: 'x' }, second] }, 422, /^walls\.0\.fingerprint: /],
      [withMark({ part: 'A1.1' }), 422, /^walls\.0\.marks\.0\.fault: /],
      [withMark({ part: 'Z9.9', fault: 'proud-unit' }), 422, /this wall has no part "Z9\.9"/],
      [withMark({ part: 'A1.1', fault: 'haunted' }), 422, /no fault "haunted"/],
      [{ ...body, attempt: randomUUID() }, 404, /./],
    ];
    for (const [sent, status, words] of rows) {
      const { status: got, answer } = await send(sent);
      expect([got, answer.problem]).toEqual([status, expect.stringMatching(words)]);
    }
    const results = await site.store.db.selectFrom('result_version').select('version').execute();
    expect(results).toEqual([]);
  });

  test('another attempt of the same learner cannot be handed in under the first one’s key', async () => {
    const { site, send, body, mine } = await ready(kind);
    await send(body);
    const second = await sampleAttempt(site.store, mine, realWalls());
    const cookie = await site.cookieFor(second.learner);
    const answer = await post(site, cookie, JSON.stringify({ ...body, attempt: second.attempt }));
    expect(answer.status).toBe(422);
  });

  test('somebody else’s attempt, no session, another site, no JSON, too long: refused', async () => {
    const { site, body, mine, cookie } = await ready(kind);
    const other = await sampleAttempt(site.store, mine, realWalls());
    const stranger = await site.cookieFor(other.learner);
    expect(await post(site, stranger, JSON.stringify(body))).toMatchObject({ status: 404 });
    expect(await post(site, '', JSON.stringify(body))).toMatchObject({ status: 401 });
    expect(await post(site, cookie, '{"attempt":')).toMatchObject({ status: 400 });
    expect(await post(site, cookie, `"${'x'.repeat(1_100_000)}"`)).toMatchObject({ status: 413 });
    const foreign = await fetch(`${site.address}/api/hand-in`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'sec-fetch-site': 'cross-site', cookie },
      body: JSON.stringify(body),
    });
    expect(foreign.status).toBe(403);
  });

  test('whatever is sent, the answer is 4xx and says why', async () => {
    const { site, cookie, body } = await ready(kind);
    const wall = body.walls[0];
    const loose = fc.oneof(
      fc.json({ maxDepth: 6 }),
      fc.string({ unit: 'binary' }),
      fc.constantFrom(
        '[[[['.repeat(5_000),
        `${'['.repeat(40)}${']'.repeat(40)}`,
        '{"__proto__":{"attempt":1}}',
        '1e999',
        '\u0000',
      ),
      // Nearly right: one field of the body or of its first wall is anything.
      fc
        .tuple(fc.constantFrom('attempt', 'key', 'walls'), fc.jsonValue())
        .map(([field, value]) => JSON.stringify({ ...body, [field]: value })),
      fc
        .tuple(
          fc.constantFrom('place', 'fingerprint', 'marks', 'saysSound', 'opened', 'spentMs', 'constructor'),
          fc.jsonValue(),
        )
        .map(([field, value]) => JSON.stringify({ ...body, walls: [{ ...wall, [field]: value }] })),
    );
    await fc.assert(
      fc.asyncProperty(loose, async (text) => {
        const { status, answer } = await post(site, cookie, text);
        expect([status, Math.floor(status / 100)]).toEqual([status, 4]);
        expect(answer.problem).toMatch(/./);
      }),
      { numRuns: 400 },
    );
  });

  test('health: the database, its migrations, the version', async () => {
    const { site } = await ready(kind);
    const response = await fetch(`${site.address}/api/health`);
    expect([response.status, await response.json()]).toEqual([
      200,
      {
        ok: true,
        database: kind,
        migrations: expect.any(Number),
        version: expect.stringMatching(/^\d+\.\d+\.\d+$/),
      },
    ]);
    await sql`insert into migration (number, name, applied_at) values (999, 'newer', ${NOON})`.execute(
      site.store.db,
    );
    expect((await fetch(`${site.address}/api/health`)).status).toBe(503);
  });
});

test('a database that another program holds: 503, what happened and when to come back', async () => {
  const { site, cookie, body } = await ready('sqlite');
  const held = await site.store.db.startTransaction().execute();
  const { status, answer, retryAfter } = await post(site, cookie, JSON.stringify(body));
  await held.rollback().execute();
  expect({ status, answer, retryAfter }).toEqual({
    status: 503,
    answer: {
      problem: 'Too much is being stored at once. Nothing was changed. Try again in a few seconds.',
      fields: {},
    },
    retryAfter: '5',
  });
});

test('a database that cannot be reached: handing in and health answer 503, and are well again when it is back', async () => {
  const settings = await ownDatabase('postgres');
  const site = await openSite(settings);
  const name = new URL(settings.databaseUrl ?? '').pathname.slice(1);
  await ask(inject('postgres'), `alter database ${name} with allow_connections false`);
  await dropConnections(name);
  expect((await fetch(`${site.address}/api/health`)).status).toBe(503);
  expect((await post(site, 'learner=x', '{}')).status).toBe(503);
  await ask(inject('postgres'), `alter database ${name} with allow_connections true`);
  expect((await fetch(`${site.address}/api/health`)).status).toBe(200);
});

async function dropConnections(name: string): Promise<void> {
  await ask(
    inject('postgres'),
    `select pg_terminate_backend(pid, 5000) from pg_stat_activity where datname = '${name}'`,
  );
}
