import 'fake-indexeddb/auto';
import { randomUUID } from 'node:crypto';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { openOutbox } from '../../components/hand-in/outbox';
import type { Store } from '../../lib/store/database';
import { badNetwork } from './bad-network';
import { KINDS, type Kind, ownDatabase } from './databases';
import { realWalls } from './samples/real-walls';
import { type SampleAttempt, sampleAnswers, sampleAttempt } from './samples/sample-attempt';
import { openSite } from './site';

afterEach(() => vi.unstubAllGlobals());

const answers = sampleAnswers(realWalls()).map((wall) => ({
  ...wall,
  marks: wall.marks as readonly object[],
  readings: [],
}));

/** A learner's phone in front of the real route. `through` is the network it sends through: 'off' sends nothing. */
async function phone(kind: Kind) {
  const site = await openSite(await ownDatabase(kind));
  const mine = await sampleAttempt(site.store, undefined, realWalls());
  const cookie = await site.cookieFor(mine.learner);
  const send = globalThis.fetch;
  const network = { address: site.address, cookie, isOff: false, tries: 0 };
  vi.stubGlobal('fetch', (path: string, init: RequestInit) => {
    network.tries++;
    if (network.isOff) return Promise.reject(new TypeError('no network'));
    const headers = { ...init.headers, cookie: network.cookie, 'sec-fetch-site': 'same-origin' };
    return send(`${network.address}${path}`, { ...init, headers });
  });
  return { site, mine, network };
}

async function handedIn({ db }: Store, { attempt }: SampleAttempt) {
  const results = await db
    .selectFrom('result_version')
    .select('version')
    .where('attempt_id', '=', attempt)
    .execute();
  const { state, late } = await db
    .selectFrom('attempt')
    .selectAll()
    .where('id', '=', attempt)
    .executeTakeFirstOrThrow();
  return { state, late: late === 1, results: results.length };
}

const name = () => `outbox ${randomUUID()}`;

describe.each(KINDS)('the outbox in front of the real hand-in on %s', (kind) => {
  test('tapped twice, sent from two tabs at once: one hand-in, one receipt', async () => {
    const { site, mine } = await phone(kind);
    const box = name();
    const tabs = await Promise.all([openOutbox(box), openOutbox(box)]);
    const put = await Promise.all(
      [...tabs, ...tabs].map((tab) => tab.put(mine.attempt, mine.learner, answers)),
    );
    expect(new Set(put.map(({ key }) => key)).size).toBe(1);
    await Promise.all(tabs.map((tab) => tab.flush(mine.learner)));
    const kept = await Promise.all(tabs.map((tab) => tab.find(mine.attempt)));
    expect(kept.map((each) => each?.state)).toEqual(['received', 'received']);
    expect(await handedIn(site.store, mine)).toEqual({ state: 'marked', late: true, results: 1 });
  });

  test('the answer is lost after the site stored it: the next try brings the same receipt', async () => {
    const { site, mine, network } = await phone(kind);
    const box = await openOutbox(name());
    const { key } = await box.put(mine.attempt, mine.learner, answers);
    const real = globalThis.fetch;
    vi.stubGlobal('fetch', async (path: string, init: RequestInit) => {
      await real(path, init);
      throw new TypeError('the answer got lost');
    });
    expect(await box.flush(mine.learner)).toBeGreaterThan(0);
    expect((await box.find(mine.attempt))?.state).toBe('waiting');
    expect((await handedIn(site.store, mine)).results).toBe(1);
    vi.stubGlobal('fetch', real);
    expect(await box.flush(mine.learner)).toBe(null);
    expect(await box.find(mine.attempt)).toMatchObject({ state: 'received', key });
    expect((await handedIn(site.store, mine)).results).toBe(1);
    expect(network.tries).toBe(2);
  });

  test('flight mode, phone off for a week, due meanwhile: it is sent after the restart, taken once and flagged late', async () => {
    const { site, mine, network } = await phone(kind);
    const box = name();
    network.isOff = true;
    const before = await openOutbox(box);
    await before.put(mine.attempt, mine.learner, answers);
    await before.flush(mine.learner);
    before.close();
    // sample-attempt's work is due long before the clock of this machine.
    network.isOff = false;
    const after = await openOutbox(box);
    expect((await after.find(mine.attempt))?.state).toBe('waiting');
    await after.flush(mine.learner);
    expect((await after.find(mine.attempt))?.receipt).toMatchObject({ late: true });
    expect(await handedIn(site.store, mine)).toEqual({ state: 'marked', late: true, results: 1 });
  });

  test('signed out meanwhile: it waits, says what to do, and goes off after signing in', async () => {
    const { mine, network } = await phone(kind);
    const { cookie } = network;
    const box = await openOutbox(name());
    await box.put(mine.attempt, mine.learner, answers);
    network.cookie = '';
    await box.flush(mine.learner);
    expect(await box.find(mine.attempt)).toMatchObject({
      state: 'waiting',
      problem: 'You are signed out. Join your group again with your PIN, and it is sent.',
    });
    network.cookie = cookie;
    await box.flush(mine.learner);
    expect((await box.find(mine.attempt))?.state).toBe('received');
  });

  test('handed in on another phone before: this one gets the receipt of that one', async () => {
    const { site, mine } = await phone(kind);
    const [first, second] = await Promise.all([openOutbox(name()), openOutbox(name())]);
    await first.put(mine.attempt, mine.learner, answers);
    await second.put(mine.attempt, mine.learner, answers);
    await first.flush(mine.learner);
    await second.flush(mine.learner);
    const receipts = await Promise.all(
      [first, second].map(async (box) => (await box.find(mine.attempt))?.receipt),
    );
    expect(receipts[1]).toEqual(receipts[0]);
    expect((await handedIn(site.store, mine)).results).toBe(1);
  });

  test('on a shared phone a hand-in is not sent in another learner’s name', async () => {
    const { mine, network } = await phone(kind);
    const box = await openOutbox(name());
    await box.put(mine.attempt, mine.learner, answers);
    expect(await box.flush('somebody else')).toBe(null);
    expect(network.tries).toBe(0);
  });

  test('a mark the wall has no part for is refused with the reason; put right, it goes in under a new key', async () => {
    const { mine } = await phone(kind);
    const box = await openOutbox(name());
    const wrong = answers.map((wall) => ({
      ...wall,
      marks: [{ part: 'Z9.9', fault: 'proud-unit', sure: 2 }],
    }));
    const { key } = await box.put(mine.attempt, mine.learner, wrong);
    expect(await box.flush(mine.learner)).toBe(null);
    const refused = await box.find(mine.attempt);
    expect(refused?.problem).toMatch(/this wall has no part "Z9.9"/);
    expect(refused?.walls).toEqual(wrong);
    expect((await box.put(mine.attempt, mine.learner, answers)).key).not.toBe(key);
    await box.flush(mine.learner);
    expect((await box.find(mine.attempt))?.state).toBe('received');
  });

  test('through a network that loses, doubles and delays: received in the end, and stored once', async () => {
    const { site, mine, network } = await phone(kind);
    let seed = 7;
    const bad = await badNetwork(site.address, () => {
      seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
      return seed / 2 ** 32;
    });
    network.address = bad.address;
    const box = await openOutbox(name());
    await box.put(mine.attempt, mine.learner, answers);
    for (let tries = 0; tries < 50 && (await box.flush(mine.learner)) !== null; tries++);
    expect((await box.find(mine.attempt))?.state).toBe('received');
    expect((await handedIn(site.store, mine)).results).toBe(1);
  });
});
