import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { onTestFinished, vi } from 'vitest';
import type { Store, StoreSettings } from '../../lib/store/database';
import { readyStore } from './databases';

export interface Site {
  readonly address: string;
  /** The site's database, opened beside it by another connection. */
  readonly store: Store;
  readonly cookieFor: (learner: string) => Promise<string>;
}

/** What the site answers without Next, hand-ins and health among it, with a database of its own. */
export async function openSite(settings: StoreSettings): Promise<Site> {
  const store = await readyStore(settings);
  vi.resetModules();
  vi.stubEnv('DATA_DIR', settings.dataDir);
  vi.stubEnv('DATABASE_URL', settings.databaseUrl ?? '');
  vi.stubEnv('PUBLIC_ADDRESS', '');
  const { withoutNext } = await import('../../app/serve/without-next');
  const site = await import('../../app/server/store');
  const { log } = await import('../../app/server/log');
  log.level = 'silent';
  const { cookieName, LEARNER_COOKIE } = await import('../../app/request/cookies');
  const { hashOf } = await import('../../app/accounts/codes');
  const answer = withoutNext(async (_, response) => void response.writeHead(404).end());
  const server = createServer((request, response) => void answer(request, response));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  onTestFinished(async () => {
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
    await site.closeStore();
    vi.unstubAllEnvs();
  });
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    store,
    cookieFor: async (learner) => {
      const token = `token of ${learner}`;
      const week = Date.now() + 7 * 86_400_000;
      await store.db
        .insertInto('learner_session')
        .values({ token_hash: hashOf(token), learner_id: learner, created_at: Date.now(), expires_at: week })
        .execute();
      return `${cookieName(LEARNER_COOKIE)}=${token}`;
    },
  };
}
