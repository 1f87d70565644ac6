import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { openOutbox } from '../../../components/hand-in/outbox';

afterEach(() => vi.unstubAllGlobals());

const WALLS = [
  { place: 1, fingerprint: 'a'.repeat(16), marks: [], readings: [], saysSound: true, opened: [], spentMs: 5 },
];
const RECEIPT = { receipt: 'AB', handedInAt: 1, late: false };

let boxes = 0;
const box = () => openOutbox(`box ${boxes++}`);

function answering(status: number, body: unknown, headers: Record<string, string> = {}) {
  const sent: unknown[] = [];
  vi.stubGlobal('fetch', async (_: string, init: RequestInit) => {
    sent.push(JSON.parse(String(init.body)));
    return new Response(JSON.stringify(body), { status, headers });
  });
  return sent;
}

describe('what becomes of a hand-in', () => {
  test.each([
    [201, RECEIPT, 'received', null],
    [200, RECEIPT, 'received', null],
    [409, { problem: 'before', ...RECEIPT }, 'received', null],
    [409, { problem: 'other walls' }, 'refused', 'other walls'],
    [422, { problem: 'walls.0: no' }, 'refused', 'walls.0: no'],
    [200, {}, 'waiting', 'The site is busy.'],
    [429, {}, 'waiting', 'The site is busy.'],
    [500, {}, 'waiting', 'The site is busy.'],
    [503, { problem: 'full' }, 'waiting', 'The site is busy.'],
    [401, {}, 'waiting', 'You are signed out. Join your group again with your PIN, and it is sent.'],
    [
      404,
      {},
      'waiting',
      'The site does not know this work for who is signed in now. Join your group again as yourself.',
    ],
  ])('answer %i %j: %s', async (status, body, state, problem) => {
    answering(status, body);
    const outbox = await box();
    await outbox.put('a', 'me', WALLS);
    await outbox.flush('me');
    expect(await outbox.find('a')).toMatchObject({ state, problem, walls: WALLS });
  });

  test('a page instead of JSON, as a captive network gives: it waits', async () => {
    vi.stubGlobal('fetch', async () => new Response('<html>Pay for the network</html>', { status: 200 }));
    const outbox = await box();
    await outbox.put('a', 'me', WALLS);
    await outbox.flush('me');
    expect((await outbox.find('a'))?.state).toBe('waiting');
  });

  test('every try has the same key and the same walls, and no score', async () => {
    const sent = answering(503, {});
    const outbox = await box();
    const { key } = await outbox.put('a', 'me', WALLS);
    await outbox.flush('me');
    await outbox.flush('me');
    expect(sent).toEqual([
      { attempt: 'a', key, walls: WALLS },
      { attempt: 'a', key, walls: WALLS },
    ]);
    // RFC 9562: version 4, variant 8, 9, a or b.
    expect(key).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  });

  test('what waits is counted for its learner only', async () => {
    answering(503, {});
    const outbox = await box();
    await outbox.put('a', 'me', WALLS);
    await outbox.put('b', 'me', WALLS);
    await outbox.put('c', 'other', WALLS);
    expect(await outbox.waiting('me')).toBe(2);
    answering(201, RECEIPT);
    await outbox.flush('me');
    expect([await outbox.waiting('me'), await outbox.waiting('other')]).toEqual([0, 1]);
  });

  test('what was received is not sent again, and its answers cannot be changed', async () => {
    const sent = answering(201, RECEIPT);
    const outbox = await box();
    await outbox.put('a', 'me', WALLS);
    await outbox.flush('me');
    await outbox.put('a', 'me', []);
    expect(await outbox.flush('me')).toBe(null);
    expect(sent).toHaveLength(1);
    expect((await outbox.find('a'))?.walls).toEqual(WALLS);
  });
});

test('waits double from one second to one minute, a fifth more or less; the site may ask for more', async () => {
  answering(503, {});
  const outbox = await box();
  await outbox.put('a', 'me', WALLS);
  const waits: number[] = [];
  for (let tries = 0; tries < 8; tries++) waits.push((await outbox.flush('me')) ?? 0);
  // 1, 2, 4, 8, 16, 32, then 60 s.
  [1000, 2000, 4000, 8000, 16_000, 32_000, 60_000, 60_000].forEach((middle, index) => {
    expect(waits[index]).toBeGreaterThanOrEqual(middle * 0.8);
    expect(waits[index]).toBeLessThanOrEqual(middle * 1.2);
  });
  answering(503, {}, { 'retry-after': '120' });
  expect(await outbox.flush('me')).toBe(120_000);
});
