import { createHash, randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { openDatabase } from '../../lib/store/database';
import { freePort } from '../commands/address.mjs';
import { startServer } from '../commands/server.mjs';
import { realWalls } from '../store/samples/real-walls';
import { openAttempt, sampleAnswers, sampleAttempt } from '../store/samples/sample-attempt';

const HAND_INS = 120;

test('asked to end in the middle of hand-ins, the site answers what it took and keeps what it answered', async () => {
  const dataDir = mkdtempSync(join(tmpdir(), 'wall-end-'));
  onTestFinished(() => rmSync(dataDir, { recursive: true, force: true }));
  const env = { DATA_DIR: dataDir, DATABASE_URL: '', PUBLIC_ADDRESS: '' };
  const server = await startServer({ port: await freePort(), host: '127.0.0.1', env });
  onTestFinished(() => server.stop());
  const store = await openDatabase({ dataDir, databaseUrl: null });
  onTestFinished(() => store.close());
  const walls = realWalls();
  const { work, learner, attempt: first } = await sampleAttempt(store, undefined, walls);
  const attempts = [first];
  while (attempts.length < HAND_INS)
    attempts.push(await openAttempt(store, work, learner, attempts.length + 1, walls));
  const token_hash = createHash('sha256').update('a token').digest('base64url');
  const session = { token_hash, learner_id: learner, created_at: 0, expires_at: Date.now() + 3_600_000 };
  await store.db.insertInto('learner_session').values(session).execute();

  let answered = 0;
  const answers = await Promise.all(
    attempts.map(async (attempt) => {
      const response = await fetch(`${server.address}/api/hand-in`, {
        method: 'POST',
        headers: {
          'content-type': 'application/json',
          'sec-fetch-site': 'same-origin',
          cookie: 'learner=a token',
        },
        body: JSON.stringify({ attempt, key: randomUUID(), walls: sampleAnswers(walls) }),
      }).catch(() => undefined);
      answered += 1;
      if (answered === 10) void server.stop();
      return response?.status === 201 ? [attempt] : [];
    }),
  );
  await server.ended;
  const kept = await store.db.selectFrom('attempt').select('id').where('state', '=', 'marked').execute();
  expect(kept.length).toBeGreaterThanOrEqual(10);
  expect(kept.map(({ id }) => id).sort()).toEqual(answers.flat().sort());
});
