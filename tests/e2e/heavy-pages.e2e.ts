import { afterAll, beforeAll, expect, test } from 'vitest';
import { codeOf } from '../../lib/generate/wall-code';
import { type HandInSite, openHandInSite } from './hand-in-site';

/** Asked for at once: with those under way, fewer than may wait. */
const WALLS = 24;

let site: HandInSite;
beforeAll(async () => {
  site = await openHandInSite(2);
});
afterAll(() => site?.close());

const wallAt = (seed: number) =>
  `/walls/${codeOf({ topic: 'mixed', kind: 'window-panel', difficulty: 2, rules: 'canada', seed })}`;

async function textOf(path: string, headers: Record<string, string> = {}) {
  const answer = await fetch(site.server.address + path, { headers });
  return { answer, text: await answer.text() };
}

test(`while ${WALLS} walls are drawn, health and a hand-in are answered before half of them`, async () => {
  let drawn = 0;
  const walls = Array.from({ length: WALLS }, async (_, seed) => {
    const { answer } = await textOf(wallAt(seed));
    drawn += 1;
    return answer.status;
  });
  // Until the first is there, so that all of them are in the line.
  await Promise.race(walls);
  const health = await fetch(`${site.server.address}/api/health`);
  const handIn = await site.handIn(site.attempts[0] ?? '');
  expect([health.status, handIn.status]).toEqual([200, 201]);
  expect(drawn).toBeLessThan(WALLS / 2);
  expect(await Promise.all(walls)).toEqual(Array(WALLS).fill(200));
});

test('a wall drawn once is the same page for whoever asks next, with its scripts named by hash', async () => {
  const path = wallAt(1);
  const [first, second] = [
    await textOf(path),
    await textOf(path, { cookie: 'learner=x', 'accept-encoding': 'gzip' }),
  ];
  expect(second.text).toBe(first.text);
  expect(first.answer.headers.get('content-security-policy')).not.toContain('nonce');
  expect(first.text).not.toContain('nonce=');
  expect(second.answer.headers.get('content-encoding')).toBe('gzip');
});

test('pages, scripts and answers come in brotli where it is asked for', async () => {
  const { text } = await textOf('/');
  const script = /\/_next\/static\/[^"]+\.js/.exec(text)?.[0] ?? '';
  for (const path of ['/', '/lessons', '/walls', wallAt(1), script]) {
    const { answer, text: read } = await textOf(path, { 'accept-encoding': 'br' });
    expect([path, answer.status, answer.headers.get('content-encoding')]).toEqual([path, 200, 'br']);
    expect(read.length).toBeGreaterThan(1000);
  }
});
