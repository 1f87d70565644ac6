import { randomUUID } from 'node:crypto';
import { connect } from 'node:net';
import { expect, test } from 'vitest';
import { ownDatabase } from './databases';
import { realWalls } from './samples/real-walls';
import { sampleAnswers, sampleAttempt } from './samples/sample-attempt';
import { openSite, type Site } from './site';

/** More than a hand-in may have. */
const TOO_MUCH = 3 * 1024 * 1024;

/** Sends as given, and gives all that comes back until the other end closes; `leaves`: closes first. */
function raw({ address }: Site, text: string, leaves = false): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connect(Number(new URL(address).port), '127.0.0.1');
    let answer = '';
    socket.on('data', (chunk) => {
      answer += chunk;
    });
    // Whoever is not read to the end may be cut off while they still send.
    socket.on('error', (error) => (answer === '' && !leaves ? reject(error) : resolve(answer)));
    socket.on('close', () => resolve(answer));
    socket.write(text, () => leaves && socket.destroy());
  });
}

const handIn = (cookie: string, length: number, body: string) =>
  `POST /api/hand-in HTTP/1.1\r\nhost: x\r\nconnection: close\r\nsec-fetch-site: same-origin\r\ncontent-type: application/json\r\ncookie: ${cookie}\r\ncontent-length: ${length}\r\n\r\n${body}`;

test('a body that is too long, or breaks off, or comes from nobody, is answered or dropped; the next hand-in is taken', async () => {
  const site = await openSite(await ownDatabase('sqlite'));
  const walls = realWalls();
  const { attempt, learner } = await sampleAttempt(site.store, undefined, walls);
  const cookie = await site.cookieFor(learner);
  expect(await raw(site, handIn(cookie, TOO_MUCH, ' '.repeat(TOO_MUCH)))).toMatch(/^HTTP\/1\.1 413 /);
  expect(await raw(site, handIn('learner=somebody', TOO_MUCH, ' '.repeat(TOO_MUCH)))).toMatch(
    /^HTTP\/1\.1 401 /,
  );
  for (let times = 0; times < 20; times += 1) await raw(site, handIn(cookie, 5_000, '{"attempt":'), true);
  const body = JSON.stringify({ attempt, key: randomUUID(), walls: sampleAnswers(walls) });
  expect(await raw(site, handIn(cookie, Buffer.byteLength(body), body))).toMatch(/^HTTP\/1\.1 201 /);
});

test('who sends on after the answer gets rid of it, and is answered again on the same connection', async () => {
  const site = await openSite(await ownDatabase('sqlite'));
  const { learner } = await sampleAttempt(site.store);
  const cookie = await site.cookieFor(learner);
  const tooLong = handIn(cookie, TOO_MUCH, ' '.repeat(TOO_MUCH)).replace('connection: close\r\n', '');
  const answers = await raw(
    site,
    `${tooLong}GET /api/health HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n`,
  );
  expect(answers.match(/HTTP\/1\.1 \d+/g)).toEqual(['HTTP/1.1 413', 'HTTP/1.1 200']);
});

test('what is asked in another way goes on to Next; what is answered here is not for a search engine', async () => {
  const site = await openSite(await ownDatabase('sqlite'));
  for (const [method, path] of [
    ['HEAD', '/api/health'],
    ['POST', '/api/health'],
    ['GET', '/api/hand-in'],
    ['GET', '/api/health/'],
    ['GET', '/api//health'],
    ['GET', '/api/attempts/x/walls/..'],
  ])
    expect([
      method,
      path,
      await raw(site, `${method} ${path} HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n`),
    ]).toEqual([method, path, expect.stringMatching(/^HTTP\/1\.1 404 /)]);
  const health = await fetch(`${site.address}/api/health`);
  expect([health.status, health.headers.get('x-robots-tag'), health.headers.get('cache-control')]).toEqual([
    200,
    'noindex',
    'no-store',
  ]);
});
