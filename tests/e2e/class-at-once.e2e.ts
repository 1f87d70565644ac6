import { randomUUID } from 'node:crypto';
import { mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { expect, onTestFinished, test } from 'vitest';
import { verifyAudit } from '../../lib/store/audit';
import { openDatabase, type StoreSettings } from '../../lib/store/database';
import { startPostgres } from '../commands/postgres.mjs';
import { sampleAnswers } from '../store/samples/sample-attempt';
import { learnerIn, makeCast } from './cast';
import { openOwnSite } from './own-site';

const CLASS = 24;

/** Where a new site keeps its work; gone when the test is over. */
async function emptyDatabase(kind: 'sqlite' | 'postgres'): Promise<StoreSettings> {
  const dataDir = mkdtempSync(join(tmpdir(), 'wall-class-'));
  onTestFinished(() => rm(dataDir, { recursive: true, force: true, maxRetries: 20 }));
  if (kind === 'sqlite') return { dataDir, databaseUrl: null };
  const server = await startPostgres();
  onTestFinished(() => server.stop());
  return { dataDir, databaseUrl: server.address };
}

/** As a device does it: a site that has too much to do, on a busy machine, is asked again. */
async function untilThereIsRoom(ask: () => Promise<Response>): Promise<Response> {
  for (;;) {
    const answer = await ask();
    if (answer.status !== 503) return answer;
    await wait(1_000);
  }
}

// Of the built site: what is one module in the sources may be several in a bundle.
test.each(['sqlite', 'postgres'] as const)(
  '%s: a class begins at once and hands in at once, and everybody is let in',
  async (kind) => {
    const settings = await emptyDatabase(kind);
    const site = await openOwnSite({
      DATA_DIR: settings.dataDir,
      DATABASE_URL: settings.databaseUrl ?? '',
    });
    onTestFinished(site.close);
    const { work, joinCode } = await makeCast(site);
    const learners = [];
    for (let n = 1; n <= CLASS; n += 1) learners.push(await learnerIn(site, joinCode, `Learner ${n}`));

    const begun = await Promise.all(
      learners.map((learner) => untilThereIsRoom(() => learner.post('/api/attempts', { work }))),
    );
    expect(begun.map(({ status }) => status)).toEqual(learners.map(() => 200));
    const attempts = await Promise.all(
      begun.map(async (answer) => ((await answer.json()) as { attempt: string }).attempt),
    );

    const store = await openDatabase(settings);
    onTestFinished(store.close);
    const given = await store.db
      .selectFrom('attempt_wall')
      .select(['attempt_id', 'place', 'code', 'fingerprint'])
      .execute();
    const handedIn = await Promise.all(
      learners.map((learner, index) => {
        const attempt = attempts[index] ?? '';
        const walls = sampleAnswers(given.filter(({ attempt_id }) => attempt_id === attempt));
        // No mark: what is answered here does not depend on which parts the walls have.
        const bare = walls.map((wall) => ({ ...wall, marks: [] }));
        const handIn = { attempt, key: randomUUID(), walls: bare };
        return untilThereIsRoom(() => learner.post('/api/hand-in', handIn));
      }),
    );
    expect(handedIn.map(({ status }) => status)).toEqual(learners.map(() => 201));

    const kept = await store.db.selectFrom('attempt').select('id').where('state', '=', 'marked').execute();
    expect(kept.map(({ id }) => id).sort()).toEqual([...attempts].sort());
    const trail = await store.db
      .selectFrom('audit')
      .select('subject')
      .where('action', '=', 'handed in')
      .execute();
    expect(trail.map(({ subject }) => subject).sort()).toEqual(attempts.map((id) => `attempt ${id}`).sort());
    expect(await verifyAudit(store.db)).toEqual({ ok: true });
  },
);
