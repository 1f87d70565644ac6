import type { IncomingHttpHeaders, IncomingMessage } from 'node:http';
import { buffer } from 'node:stream/consumers';
import { promisify } from 'node:util';
import { brotliCompress, constants } from 'node:zlib';
import { isHttps } from '../request/cookies';
import { contentPolicy } from '../server/content-policy';
import { inlineScriptHashes } from '../server/prerendered';

const compress = promisify(brotliCompress);

/** A page or drawing as everybody gets it. Only what is answered with 200 is kept. */
export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  /** In brotli. */
  readonly body: Buffer;
}

/** All that a kept page is made from: no cookie, nothing that tells one reader from another. */
const MADE_FROM = [
  'host',
  'accept',
  'rsc',
  'next-router-state-tree',
  'next-router-prefetch',
  'next-router-segment-prefetch',
  'next-url',
] as const;

/** Headers between two ends of a connection, which another connection must not get. */
export const OF_ONE_CONNECTION = ['connection', 'keep-alive', 'transfer-encoding'];
/** And what is of one answer. */
const OF_ONE_ANSWER = [...OF_ONE_CONNECTION, 'content-length', 'date', 'set-cookie'];

const MOST_BYTES = 64 * 1024 * 1024;

/** What a page is asked for with, and by which it is found again. */
export function questionFor(path: string, headers: IncomingHttpHeaders) {
  const asked = Object.fromEntries(
    MADE_FROM.flatMap((name) => (headers[name] === undefined ? [] : [[name, headers[name]]])),
  );
  return { key: JSON.stringify([path, asked]), headers: asked };
}

/** Pages in memory, the longest unasked for going first. */
export function makeKeptPages(mostBytes = MOST_BYTES) {
  const pages = new Map<string, Answer>();
  const underWay = new Map<string, Promise<Answer>>();
  let bytes = 0;

  const keep = (key: string, page: Answer) => {
    pages.set(key, page);
    bytes += page.body.length;
    for (const [oldest, { body }] of pages) {
      if (bytes <= mostBytes) break;
      pages.delete(oldest);
      bytes -= body.length;
    }
  };

  return {
    /** The page by its key, made where it is not there; those who ask for one that is being made wait for it. */
    page: async (key: string, make: () => Promise<IncomingMessage>): Promise<Answer> => {
      const known = pages.get(key);
      if (known) {
        pages.delete(key);
        pages.set(key, known);
        return known;
      }
      const made = underWay.get(key) ?? make().then(readAnswer);
      underWay.set(key, made);
      try {
        const page = await made;
        if (page.status === 200 && !pages.has(key)) keep(key, page);
        return page;
      } finally {
        underWay.delete(key);
      }
    },
  };
}

async function readAnswer(answer: IncomingMessage): Promise<Answer> {
  const headers = Object.fromEntries(
    Object.entries(answer.headersDistinct).flatMap(([name, values = []]) =>
      OF_ONE_ANSWER.includes(name) ? [] : [[name, values.join(', ')]],
    ),
  );
  const text = await buffer(answer);
  const isPage = headers['content-type']?.startsWith('text/html');
  const body = isPage ? withoutNonce(text.toString('utf8'), headers) : text;
  return {
    status: answer.statusCode ?? 502,
    headers,
    body: await compress(body, { params: { [constants.BROTLI_PARAM_QUALITY]: 6 } }),
  };
}

/** A nonce is good once. The scripts of a kept page are known word for word, and are named by their hashes. */
function withoutNonce(html: string, headers: Record<string, string>): string {
  const [, nonce] = /'nonce-([^']+)'/.exec(String(headers['content-security-policy'])) ?? [];
  const bare = nonce === undefined ? html : html.replaceAll(` nonce="${nonce}"`, '').replaceAll(nonce, '');
  // With the fonts that the page asks for beforehand.
  if (headers.link) headers.link = headers.link.replaceAll(`; nonce="${nonce}"`, '');
  headers['content-security-policy'] = contentPolicy(inlineScriptHashes(bare), {
    https: isHttps(),
    developing: false,
  });
  return bare;
}
