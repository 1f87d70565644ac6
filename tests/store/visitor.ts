import { onTestFinished, vi } from 'vitest';
import type { Store } from '../../lib/store/database';
import { type Kind, ownDatabase, readyStore } from './databases';

interface Answer {
  readonly status: number;
  readonly body: Readonly<Record<string, unknown>>;
  readonly headers: Headers;
}

/** A browser without a window: keeps its cookies, and says of itself what browsers say. */
export interface Visitor {
  readonly cookies: Map<string, string>;
  readonly post: (path: string, body: unknown, headers?: Readonly<Record<string, string>>) => Promise<Answer>;
  readonly get: (path: string) => Promise<Answer>;
  /** Who the site takes this browser for. */
  readonly who: () => Promise<unknown>;
}

export interface PeopleSite {
  readonly store: Store;
  readonly newVisitor: (headers?: Readonly<Record<string, string>>) => Visitor;
  readonly startCode: () => Promise<string>;
}

type Handler = (request: Request, context: { params: Promise<Record<string, string>> }) => Promise<Response>;

const ROUTES = import.meta.glob<Record<string, Handler>>(
  '../../app/api/{account,people,join,book,groups,work}/**/route.ts',
);

/** The site's own handlers for people, with an empty database of their own. */
export async function openPeople(kind: Kind, publicAddress = ''): Promise<PeopleSite> {
  const settings = await ownDatabase(kind);
  const store = await readyStore(settings);
  vi.resetModules();
  vi.stubEnv('DATA_DIR', settings.dataDir);
  vi.stubEnv('DATABASE_URL', settings.databaseUrl ?? '');
  vi.stubEnv('PUBLIC_ADDRESS', publicAddress);
  const { log } = await import('../../app/server/log');
  log.level = 'silent';
  const { closeStore } = await import('../../app/server/store');
  const { makeStartCode } = await import('../../app/accounts/start-code');
  onTestFinished(async () => {
    await closeStore();
    vi.unstubAllEnvs();
  });
  return { store, startCode: makeStartCode, newVisitor };
}

function newVisitor(own: Readonly<Record<string, string>> = {}): Visitor {
  const cookies = new Map<string, string>();
  // A header set to '' is not sent at all.
  const headersOf = (more: Readonly<Record<string, string>> = {}) =>
    sent({
      host: 'walls.test',
      ...(cookies.size === 0
        ? {}
        : { cookie: [...cookies].map(([name, value]) => `${name}=${value}`).join('; ') }),
      ...own,
      ...more,
    });
  const ask = async (method: string, path: string, init: RequestInit): Promise<Answer> => {
    const load = ROUTES[`../../app${path}/route.ts`];
    const handler = (await load?.())?.[method];
    if (!handler) throw new Error(`${method} ${path}: no such handler`);
    const answer = await handler(new Request(`http://walls.test${path}`, { method, ...init }), {
      params: Promise.resolve({}),
    });
    keepCookies(cookies, answer.headers);
    const body = (await answer.json()) as Record<string, unknown>;
    return { status: answer.status, body, headers: answer.headers };
  };
  return {
    cookies,
    get: (path) => ask('GET', path, { headers: headersOf() }),
    post: (path, body, headers) =>
      ask('POST', path, {
        headers: headersOf({
          'content-type': 'application/json',
          'sec-fetch-site': 'same-origin',
          ...headers,
        }),
        body: typeof body === 'string' ? body : JSON.stringify(body),
      }),
    who: async () => (await import('../../app/accounts/people')).whoIs(new Headers(headersOf())),
  };
}

function sent(headers: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(headers).filter(([, value]) => value !== ''));
}

function keepCookies(cookies: Map<string, string>, headers: Headers): void {
  for (const line of headers.getSetCookie()) {
    const [, name = '', value = ''] = /^([^=]+)=([^;]*)/.exec(line) ?? [];
    if (value === '' || /max-age=0/i.test(line)) cookies.delete(name);
    else cookies.set(name, value);
  }
}

/** The owner of the site, Ada Clay, signed in. */
export async function setUpOwner(site: PeopleSite): Promise<Visitor> {
  const visitor = site.newVisitor();
  await visitor.post('/api/people/set-up', {
    code: await site.startCode(),
    name: 'Ada Clay',
    email: 'ada@example.org',
    password: 'four red bricks',
  });
  return visitor;
}
