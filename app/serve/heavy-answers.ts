import type { IncomingMessage, ServerResponse } from 'node:http';
import { pipeline } from 'node:stream/promises';
import { promisify } from 'node:util';
import { brotliDecompress } from 'node:zlib';
import type compression from 'compression';
import { PEER_HEADER } from '../request/address';
import { log } from '../server/log';
import { makeKeptPages, OF_ONE_CONNECTION, questionFor } from './kept-pages';
import { LineFull, makeLine } from './line';
import type { PageMakers } from './page-makers';
import { dropTheRest } from './without-next';

type Compress = ReturnType<typeof compression>;

const decompress = promisify(brotliDecompress);

/** A college that begins at once waits; strangers whose turn is far off are asked to come back. */
const MOST_WAITING = { begun: 2_000, work: 2_000, look: 100 } as const;
const COME_BACK_SECONDS = 5;

/** Whoever has begun waits for a wall, and those who begin meanwhile wait behind. */
const BEGUN = /^\/(my-work|api\/attempts)\//;

/** Answers by page makers: `kept` for what is the same for everybody, `passedOn` for the rest. */
export function makeHeavyAnswers(pageMakers: PageMakers, seats: number) {
  const line = makeLine(seats, MOST_WAITING);
  const pages = makeKeptPages();

  return {
    kept: (request: IncomingMessage, response: ServerResponse, compressed: Compress) =>
      orSay(request, response, async () => {
        const path = request.url ?? '/';
        const { key, headers } = questionFor(path, request.headers);
        const {
          status,
          headers: told,
          body,
        } = await pages.page(key, () =>
          line.wait('look', (seat) => pageMakers.ask(seat, { method: 'GET', path, headers })),
        );
        response.statusCode = status;
        for (const [name, value] of Object.entries(told)) response.setHeader(name, value);
        if (takesBrotli(request)) {
          response.setHeader('content-encoding', 'br');
          response.setHeader('vary', `${told.vary ?? ''}, accept-encoding`);
          response.end(body);
        } else {
          const plain = await decompress(body);
          compressed(request, response, () => response.end(plain));
        }
      }),

    passedOn: (request: IncomingMessage, response: ServerResponse) =>
      orSay(request, response, () =>
        line.wait(BEGUN.test(request.url ?? '') ? 'begun' : 'work', async (seat) => {
          // Whoever has gone meanwhile needs no answer.
          if (response.destroyed) return;
          dropTheRest(request, response);
          const { method = 'GET', url: path = '/', headers } = request;
          const peer = String(headers[PEER_HEADER]);
          const answer = await pageMakers.ask(seat, {
            method,
            path,
            headers: { ...headers, 'x-forwarded-for': headers['x-forwarded-for'] ?? peer },
            body: request,
          });
          response.statusCode = answer.statusCode ?? 502;
          for (const [name, values = []] of Object.entries(answer.headersDistinct)) {
            // One value as it is: what compresses asks for the type, and takes no list for one.
            const [value = '', ...more] = values;
            if (!OF_ONE_CONNECTION.includes(name))
              response.setHeader(name, more.length === 0 ? value : values);
          }
          await pipeline(answer, response);
        }),
      ),
  };
}

/** A reader who takes brotli says so; "br;q=0" says the opposite. */
function takesBrotli({ headers }: IncomingMessage): boolean {
  const taken = String(headers['accept-encoding'] ?? '').split(',');
  return taken.some((each) => {
    const [name, weight = 'q=1'] = each.replaceAll(/\s/g, '').toLowerCase().split(';');
    return name === 'br' && Number(weight.slice('q='.length)) > 0;
  });
}

async function orSay(
  { url = '' }: IncomingMessage,
  response: ServerResponse,
  work: () => Promise<void>,
): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (response.destroyed) return;
    const isFull = error instanceof LineFull;
    if (!isFull) log.error({ problem: String(error) }, 'a page maker gave no answer');
    if (response.headersSent) return void response.destroy();
    const problem = isFull
      ? 'More walls are asked for than can be drawn at the moment. Try again in a few seconds.'
      : 'This could not be answered just now. Try again in a few seconds.';
    const isApi = url.startsWith('/api/');
    response.writeHead(503, {
      'content-type': isApi ? 'application/json' : 'text/plain; charset=utf-8',
      'retry-after': String(COME_BACK_SECONDS),
      'cache-control': 'no-store',
    });
    response.end(isApi ? JSON.stringify({ problem, fields: {} }) : problem);
  }
}
