import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { hashSource } from './content-policy';

/** Where `next build` left its pages, whichever folder the server was started for. */
const BUILT = join(/* turbopackIgnore: true */ process.cwd(), '.next');

/** The page that Next shows for any address it does not know; it too is written at build time. */
const NOT_FOUND = '/_not-found';

let routes: ReadonlySet<string> | undefined;
const known = new Map<string, readonly string[]>();

/**
 * What the policy of an answer has to let run. A page made for this request holds the nonce. A page written at build time cannot,
 * for it is the same for all; but its scripts are known word for word, and are named by their hashes.
 */
export function inlineSources(path: string, nonce: string): readonly string[] {
  routes ??= prerenderedRoutes();
  if (routes.has(path)) return hashesOf(path);
  return [`'nonce-${nonce}'`, ...(routes.has(NOT_FOUND) ? hashesOf(NOT_FOUND) : [])];
}

function hashesOf(path: string): readonly string[] {
  const hashes = known.get(path) ?? hashesIn(path);
  known.set(path, hashes);
  return hashes;
}

/** What an HTML page holds between its script tags that load nothing, as a policy names it. */
export function inlineScriptHashes(html: string): readonly string[] {
  const hashes = new Set<string>();
  for (let at = html.indexOf('<script'); at !== -1; at = html.indexOf('<script', at + 1)) {
    const begin = html.indexOf('>', at) + 1;
    const end = html.indexOf('</script>', begin);
    if (begin === 0 || end === -1) break;
    if (!/\ssrc=/.test(html.slice(at, begin))) hashes.add(hashSource(html.slice(begin, end)));
    at = end;
  }
  return [...hashes];
}

function hashesIn(path: string): readonly string[] {
  try {
    const file = path === '/' ? 'index' : decodeURIComponent(path).slice(1);
    return inlineScriptHashes(readFileSync(join(BUILT, 'server', 'app', `${file}.html`), 'utf8'));
  } catch {
    return []; // no page but a drawing or a feed
  }
}

/** From Next's own list. Only addresses in it lead to a file, so a path can not lead out of the folder. */
function prerenderedRoutes(): ReadonlySet<string> {
  // `next dev` writes no page beforehand; what lies there is of an earlier build.
  if (process.env.NODE_ENV === 'development') return new Set();
  try {
    const manifest: unknown = JSON.parse(readFileSync(join(BUILT, 'prerender-manifest.json'), 'utf8'));
    const listed = (manifest as { readonly routes?: Readonly<Record<string, unknown>> }).routes ?? {};
    return new Set(Object.keys(listed));
  } catch {
    return new Set(); // not built yet
  }
}
