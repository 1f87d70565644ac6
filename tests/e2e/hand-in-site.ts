import { createHash, randomUUID } from 'node:crypto';
import { mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDatabase, type Store } from '../../lib/store/database';
import { freePort } from '../commands/address.mjs';
import { type RunningServer, startServer } from '../commands/server.mjs';
import { realWalls } from '../store/samples/real-walls';
import { openAttempt, sampleAnswers, sampleAttempt } from '../store/samples/sample-attempt';

const TOKEN = 'a token';

/** The built site with attempts of one learner that wait to be handed in. */
export interface HandInSite {
  readonly server: RunningServer;
  readonly store: Store;
  readonly attempts: readonly string[];
  readonly handIn: (attempt: string) => Promise<Response>;
  readonly close: () => Promise<void>;
}

export async function openHandInSite(count: number): Promise<HandInSite> {
  const dataDir = mkdtempSync(join(tmpdir(), 'wall-hand-in-'));
  const env = { DATA_DIR: dataDir, DATABASE_URL: '', PUBLIC_ADDRESS: '' };
  const server = await startServer({ port: await freePort(), host: '127.0.0.1', env });
  const store = await openDatabase({ dataDir, databaseUrl: null });
  const walls = realWalls();
  const { work, learner, attempt } = await sampleAttempt(store, undefined, walls);
  const attempts = [attempt];
  while (attempts.length < count)
    attempts.push(await openAttempt(store, work, learner, attempts.length + 1, walls));
  const token_hash = createHash('sha256').update(TOKEN).digest('base64url');
  const session = { token_hash, learner_id: learner, created_at: 0, expires_at: Date.now() + 86_400_000 };
  await store.db.insertInto('learner_session').values(session).execute();
  return {
    server,
    store,
    attempts,
    handIn: (of) =>
      fetch(`${server.address}/api/hand-in`, {
        method: 'POST',
        headers: {
          'content-type': 'application/json',
          'sec-fetch-site': 'same-origin',
          cookie: `learner=${TOKEN}`,
        },
        body: JSON.stringify({ attempt: of, key: randomUUID(), walls: sampleAnswers(walls) }),
      }),
    close: async () => {
      await store.close();
      await server.stop();
      await rm(dataDir, { recursive: true, force: true, maxRetries: 20 });
    },
  };
}
