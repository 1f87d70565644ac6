import { randomUUID } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { verifyAudit } from '../../lib/store/audit';
import { badNetwork } from './bad-network';
import { KINDS, ownDatabase } from './databases';
import { realWalls } from './samples/real-walls';
import { sampleAnswers, sampleAttempt } from './samples/sample-attempt';
import { openSite } from './site';

const LEARNERS = 40;

/** A plain mixing of a counter: the same numbers in every run. */
function chanceOf(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

describe.each(KINDS)('%s: a network that loses, doubles, delays and reorders', (kind) => {
  test('every learner gets a receipt in the end, and every attempt is there once', async () => {
    const site = await openSite(await ownDatabase(kind));
    const walls = realWalls();
    const first = await sampleAttempt(site.store, undefined, walls);
    const { address, damage } = await badNetwork(site.address, chanceOf(20_261_125));
    const receipts = await Promise.all(
      Array.from({ length: LEARNERS }, async () => {
        const { learner, attempt } = await sampleAttempt(site.store, first, walls);
        const cookie = await site.cookieFor(learner);
        return sendUntilTaken(address, cookie, { attempt, key: randomUUID(), walls: sampleAnswers(walls) });
      }),
    );
    // Every kind of damage came up, or this shows nothing.
    expect(Math.min(...Object.values(damage))).toBeGreaterThan(0);
    const attempts = await site.store.db
      .selectFrom('attempt')
      .select('id')
      .where('state', '=', 'marked')
      .execute();
    expect(attempts.map(({ id }) => id).sort()).toEqual(receipts.map(({ attempt }) => attempt).sort());
    const results = await site.store.db.selectFrom('result_version').select('attempt_id').execute();
    expect(results).toHaveLength(LEARNERS);
    const entries = await site.store.db.selectFrom('audit').select('detail').execute();
    const told = entries.map(({ detail }) => (JSON.parse(detail) as { receipt: string }).receipt);
    expect(told.sort()).toEqual(receipts.map(({ receipt }) => receipt).sort());
    expect(await verifyAudit(site.store.db)).toEqual({ ok: true });
  });
});

/** As a device does: the same key until an answer comes through. */
async function sendUntilTaken(address: string, cookie: string, body: unknown) {
  for (;;) {
    try {
      const response = await fetch(`${address}/api/hand-in`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'sec-fetch-site': 'same-origin', cookie },
        body: JSON.stringify(body),
      });
      if (response.ok) return (await response.json()) as { attempt: string; receipt: string };
      if (response.status !== 503) throw new RangeError(`answered ${response.status}`);
    } catch (error) {
      if (error instanceof RangeError) throw error;
    }
  }
}
