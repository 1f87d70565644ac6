import type { IncomingMessage, ServerResponse } from 'node:http';
import { ReadableStream } from 'node:stream/web';
import { GET as wall } from '../api/attempts/[attempt]/walls/[place]/route';
import { POST as begin } from '../api/attempts/route';
import { POST as handIn } from '../api/hand-in/route';
import { GET as health } from '../api/health/route';
import { isHttps } from '../request/cookies';
import { contentPolicy } from '../server/content-policy';
import { log } from '../server/log';

type Handler = (
  request: Request,
  context: { readonly params: Promise<Readonly<Record<string, string>>> },
) => Promise<Response>;

/**
 * What a whole college asks for in one minute, and what watches the site: Next's own way to a handler costs more than these do. Each is
 * a guarded handler of app/api, as Next would call it.
 */
const HANDLERS: readonly { readonly method: string; readonly path: RegExp; readonly handler: Handler }[] = [
  { method: 'GET', path: /^\/api\/health$/, handler: health },
  { method: 'POST', path: /^\/api\/hand-in$/, handler: handIn },
  { method: 'POST', path: /^\/api\/attempts$/, handler: begin },
  {
    method: 'GET',
    path: /^\/api\/attempts\/(?<attempt>[\w-]+)\/walls\/(?<place>\d+)$/,
    handler: wall,
  },
];

/** Answers by the handler alone where it is one of these; else by `next`. */
export function withoutNext(
  next: (request: IncomingMessage, response: ServerResponse) => Promise<void>,
): (request: IncomingMessage, response: ServerResponse) => Promise<void> {
  return async (request, response) => {
    dropTheRest(request, response);
    const { method = '', url = '/' } = request;
    for (const { method: taken, path, handler } of HANDLERS) {
      const found = method === taken ? path.exec(url) : null;
      if (found) return answer(request, response, handler, { ...found.groups });
    }
    return next(request, response);
  };
}

/** What a handler left unread of a body is read when it has answered: whoever still sends it would hang until the connection times out. */
export function dropTheRest(request: IncomingMessage, response: ServerResponse): void {
  response.once('finish', () => {
    request.unpipe().removeAllListeners('data');
    request.resume();
  });
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  handler: Handler,
  params: Readonly<Record<string, string>>,
): Promise<void> {
  try {
    const answered = await handler(requestOf(request), { params: Promise.resolve(params) });
    const body = Buffer.from(await answered.arrayBuffer());
    response.statusCode = answered.status;
    response.setHeaders(answered.headers);
    // As proxy.ts does for what goes by Next.
    response.setHeader('content-security-policy', contentPolicy([], { https: isHttps(), developing: false }));
    response.setHeader('x-robots-tag', 'noindex');
    response.end(body);
  } catch (error) {
    // The handler itself answers for what goes wrong in it.
    log.error({ problem: String(error) }, 'a request could not be answered');
    response.destroy();
  }
}

/** As a handler reads it: of the address path and query alone. A body that is not read to its end leaves room for the answer. */
function requestOf(request: IncomingMessage): Request {
  const { method = 'GET', url = '/', headersDistinct } = request;
  const headers = new Headers();
  for (const [name, values = []] of Object.entries(headersDistinct))
    for (const value of values) headers.append(name, value);
  const body = method === 'GET' ? null : ReadableStream.from(request.iterator({ destroyOnReturn: false }));
  // Node's fetch takes a body that is sent bit by bit only by this word, which its types leave out.
  const init = { method, headers, body, duplex: 'half' } as RequestInit;
  return new Request(new URL(url, 'http://site'), init);
}
