import { setTimeout as wait } from 'node:timers/promises';
import { sql } from 'kysely';
import { describe, expect, onTestFinished, test } from 'vitest';
import { verifyAudit } from '../../lib/store/audit';
import { openDatabase, type Store, type StoreSettings } from '../../lib/store/database';
import { migrate } from '../../lib/store/migrate';
import { startPostgres } from '../commands/postgres.mjs';
import { startChild } from '../kills/children';
import { KINDS, ownDatabase, readyStore } from './databases';
import { NOON, recordHandIn, sampleAttempt, sampleHandIn } from './samples/sample-attempt';

/** Three hundred kills of the built site: npm run bench -- kills. */
const ROUNDS = 5;
const CHILDREN = 4;
/** After this many hand-ins a child is killed: a different number each time, so that the kill falls anywhere. */
const acknowledgedBeforeKill = (kill: number) => 1 + ((kill * 7) % 23);

interface Acknowledged {
  readonly attempt: string;
  readonly key: string;
  readonly receipt: string;
}

describe.each(KINDS)('%s: killed at any moment', (kind) => {
  test(`after ${ROUNDS * CHILDREN} kills every acknowledged hand-in is there, whole, and nothing is half written`, async () => {
    const settings = await ownDatabase(kind);
    const store = await readyStore(settings);
    const { work, learner } = await sampleAttempt(store);
    const acknowledged: Acknowledged[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      const children = await Promise.all(
        Array.from({ length: CHILDREN }, () => startChild('hand-in', settings, work, learner)),
      );
      await Promise.all(
        children.map(async (child, index) => {
          const enough = acknowledgedBeforeKill(round * CHILDREN + index);
          while (child.lines.length < enough && child.process.exitCode === null) await wait(2);
          child.process.kill('SIGKILL');
          expect(await child.ended).toBe(false);
        }),
      );
      acknowledged.push(...children.flatMap(({ lines }) => lines.map(asAcknowledged)));
    }
    expect(acknowledged.length).toBeGreaterThanOrEqual(ROUNDS * CHILDREN);
    expect(await lostOf(store, learner, acknowledged)).toEqual([]);
    expect(await halfWritten(store)).toEqual([]);
    expect(await verifyAudit(store.db)).toEqual({ ok: true });
    if (kind === 'sqlite') {
      expect((await sql`pragma integrity_check`.execute(store.db)).rows).toEqual([{ integrity_check: 'ok' }]);
      expect((await sql`pragma foreign_key_check`.execute(store.db)).rows).toEqual([]);
    }
  });
});

test('PostgreSQL itself goes down four times without a word: what it acknowledged is there', async () => {
  const server = await startPostgres();
  onTestFinished(() => server.stop());
  const settings = { dataDir: '', databaseUrl: server.address };
  const { work, learner } = await onStore(settings, sampleAttempt);
  const acknowledged: Acknowledged[] = [];
  for (let round = 0; round < 4; round += 1) {
    const child = await startChild('hand-in', settings, work, learner);
    while (child.lines.length < 10 * (round + 1) && child.process.exitCode === null) await wait(2);
    server.crash();
    await expect(child.ended).rejects.toThrow('hand-in ended with 3');
    acknowledged.push(...child.lines.map(asAcknowledged));
    server.start();
  }
  expect(acknowledged.length).toBeGreaterThanOrEqual(100);
  await onStore(settings, async (store) => {
    expect(await lostOf(store, learner, acknowledged)).toEqual([]);
    expect(await halfWritten(store)).toEqual([]);
    expect(await verifyAudit(store.db)).toEqual({ ok: true });
  });
});

/** With a store that is closed again, since a crash of its server would break it. */
async function onStore<T>(settings: StoreSettings, work: (store: Store) => Promise<T>): Promise<T> {
  const store = await openDatabase(settings);
  await migrate(store, NOON);
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

function asAcknowledged(line: string): Acknowledged {
  const [attempt = '', key = '', receipt = ''] = line.split(' ');
  return { attempt, key, receipt };
}

/** Sends each again, as a device does that never heard the answer: it has to get the receipt it had. */
async function lostOf(store: Store, learner: string, acknowledged: readonly Acknowledged[]) {
  const lost = [];
  for (const { attempt, key, receipt } of acknowledged) {
    const again = await recordHandIn(store, sampleHandIn({ attempt, learner }, { key }));
    if (!again.replay || again.receipt !== receipt) lost.push(attempt);
  }
  return lost;
}

/** Attempts of which some of the four parts of a hand-in are there and others are not. */
async function halfWritten({ db }: Store) {
  const attempts = await db
    .selectFrom('attempt')
    .leftJoin('result_version', 'result_version.attempt_id', 'attempt.id')
    .select(['attempt.id', 'state', 'hand_in_key', 'result_version.score'])
    .select((e) =>
      e
        .selectFrom('attempt_wall')
        .select((f) => f.fn.countAll<number>().as('answered'))
        .whereRef('attempt_wall.attempt_id', '=', 'attempt.id')
        .where('marks', '!=', '[]')
        .as('answered'),
    )
    .select((e) =>
      e
        .selectFrom('audit')
        .select((f) => f.fn.countAll<number>().as('told'))
        .where('subject', '=', sql<string>`'attempt ' || attempt.id`)
        .as('told'),
    )
    .execute();
  return attempts.filter(({ state, hand_in_key, score, answered, told }) => {
    const isOpen = state === 'open' && hand_in_key === null && score === null && answered === 0 && told === 0;
    const isMarked =
      state === 'marked' && hand_in_key !== null && score === 0.5 && answered === 2 && told === 1;
    return !isOpen && !isMarked;
  });
}
