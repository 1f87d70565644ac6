import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { availableParallelism } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import compression from 'compression';
import next from 'next';
import sirv from 'sirv';
import { isHttps } from '../request/cookies';
import { commonHeaders } from '../server/common-headers';
import { endWhenAsked } from './end-when-asked';
import { makeHeavyAnswers } from './heavy-answers';
import { startPageMakers } from './page-makers';
import { weightOf } from './weight';
import { withoutNext } from './without-next';

/**
 * The built site at an address: HOST PORT. This process takes hand-ins, signs people in and answers what is quick. What lays
 * and draws walls goes through a line to page makers, so that nobody who hands in waits for it.
 */
const [, , hostname = '127.0.0.1', port = '3000'] = process.argv;

/** Longer than a proxy in front keeps its connections, or it would write on one that has just been closed. */
const KEEP_ALIVE_MS = 75_000;
/** Each is a whole process: more would take memory and not help. */
const MOST_PAGE_MAKERS = 4;
const A_YEAR_SECONDS = 31_536_000;
/** All that the site's pages and handlers take. TRACE would hand cookies back to whoever asked. */
const METHODS = ['GET', 'HEAD', 'POST'];
/** Of a file, or of an answer from here; a page brings its own policy (proxy.ts). */
const FILE_POLICY = "default-src 'none'; frame-ancestors 'none'";

const site = next({ dev: false, hostname, port: Number(port) });
await site.prepare();
const answerLight = withoutNext(site.getRequestHandler());
const pageMakers = startPageMakers(fileURLToPath(new URL('./page-maker.mjs', import.meta.url)));
const answerHeavy = makeHeavyAnswers(pageMakers, Math.min(availableParallelism(), MOST_PAGE_MAKERS));
const compressed = compression();

const STATIC = '/_next/static/';
/** A worker goes by the policy that it comes with, and fetches its own parts. */
const WORKER = `${STATIC}chunks/turbopack-worker-`;
const WORKER_POLICY = "default-src 'none'; script-src 'self'; frame-ancestors 'none'";
/** A text says in which letters it is. */
const TEXT_TYPES: Readonly<Record<string, string>> = {
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
};
/** Written by the build under names that change with their contents, each also in brotli and gzip. */
const assets = sirv(join('.next', 'static'), {
  brotli: true,
  gzip: true,
  immutable: true,
  maxAge: A_YEAR_SECONDS,
  setHeaders: (response, path) => {
    const type = TEXT_TYPES[extname(path)];
    if (type) response.setHeader('content-type', type);
  },
});

function answer(request: IncomingMessage, response: ServerResponse): void {
  const { url = '/', method = '' } = request;
  response.setHeader('content-security-policy', FILE_POLICY);
  for (const [name, value] of Object.entries(commonHeaders(isHttps()))) response.setHeader(name, value);
  if (!METHODS.includes(method)) {
    response.writeHead(405, { allow: METHODS.join(', ') }).end();
    return;
  }
  if (url.startsWith(STATIC)) {
    if (url.startsWith(WORKER)) response.setHeader('content-security-policy', WORKER_POLICY);
    request.url = url.slice(STATIC.length - 1);
    assets(request, response, () => {
      request.url = url;
      void answerLight(request, response);
    });
    return;
  }
  const weight = weightOf(url.replace(/\?.*/, ''));
  if (weight === 'kept') void answerHeavy.kept(request, response, compressed);
  else
    compressed(request, response, () => {
      void (weight === 'heavy' ? answerHeavy.passedOn(request, response) : answerLight(request, response));
    });
}

const server = createServer(answer);
server.keepAliveTimeout = KEEP_ALIVE_MS;
endWhenAsked(server, () => {
  pageMakers.close();
  process.exit(0);
});
server.listen(Number(port), hostname);
