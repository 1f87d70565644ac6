import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { onTestFinished, vi } from 'vitest';
import type { Store, StoreSettings } from '../../lib/store/database';
import { readyStore } from './databases';

type Handler = (request: Request, context: { params: Promise<undefined> }) => Promise<Response>;

export interface Site {
  readonly address: string;
  /** The site's database, opened beside it by another connection. */
  readonly store: Store;
  readonly cookieFor: (learner: string) => Promise<string>;
}

/** The site's own handlers for handing in and health behind a plain HTTP server, with a database of their own. */
export async function openSite(settings: StoreSettings): Promise<Site> {
  const store = await readyStore(settings);
  vi.resetModules();
  vi.stubEnv('DATA_DIR', settings.dataDir);
  vi.stubEnv('DATABASE_URL', settings.databaseUrl ?? '');
  vi.stubEnv('PUBLIC_ADDRESS', '');
  const handIn = await import('../../app/api/hand-in/route');
  const health = await import('../../app/api/health/route');
  const site = await import('../../app/server/store');
  const { log } = await import('../../app/server/log');
  log.level = 'silent';
  const { cookieName, LEARNER_COOKIE } = await import('../../app/request/cookies');
  const { hashOf } = await import('../../app/accounts/codes');
  const handlers: Readonly<Record<string, Handler>> = {
    'POST /api/hand-in': handIn.POST,
    'GET /api/health': health.GET,
  };
  const server = createServer((request, response) => void answer(handlers, request, response));
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

async function answer(
  handlers: Readonly<Record<string, Handler>>,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  const handler = handlers[`${request.method} ${request.url}`];
  if (!handler) return void response.writeHead(404).end();
  const body = request.method === 'GET' ? null : Buffer.concat(chunks);
  const asked = new Request(`http://127.0.0.1${request.url}`, {
    method: request.method ?? 'GET',
    headers: Object.entries(request.headers).map(([name, value]): [string, string] => [name, String(value)]),
    ...(body === null ? {} : { body }),
  });
  const given = await handler(asked, { params: Promise.resolve(undefined) });
  response.writeHead(given.status, Object.fromEntries(given.headers)).end(await given.text());
}
