import { randomBytes } from 'node:crypto';
import { type NextRequest, NextResponse } from 'next/server';
import { isHttps } from './app/request/cookies';
import { commonHeaders } from './app/server/common-headers';
import { contentPolicy } from './app/server/content-policy';
import { inlineSources } from './app/server/prerendered';
import { settings } from './app/server/settings';

/** Drawn from a number, of which there is no end, or behind a door: not for a search engine. */
const NOT_LISTED =
  /^\/(walls\/|practise\/(build|guided\/|pair\/)|api\/|desk|join|my-data|my-work|reset|set-up|sign-in)/;

/**
 * Runs before every answer, and sets the headers that keep a page to itself. A page made for this request gets a nonce, which Next
 * reads from the request's own policy and writes on its scripts; a page written at build time has its scripts named by their hashes.
 */
export function proxy(request: NextRequest): NextResponse {
  const { pathname } = request.nextUrl;
  const inline = inlineSources(pathname, randomBytes(16).toString('base64'));
  const https = isHttps();
  const policy = contentPolicy(inline, { https, developing: process.env.NODE_ENV === 'development' });

  const headers = new Headers(request.headers);
  headers.set('content-security-policy', policy);
  // A page that sends somebody to sign in has to know where they wanted to go.
  headers.set('x-path', pathname);

  const answer = NextResponse.next({ request: { headers } });
  answer.headers.set('content-security-policy', policy);
  for (const [name, value] of Object.entries(commonHeaders(https))) answer.headers.set(name, value);
  // A page has one address, whatever was asked of it. Without a public address nobody outside looks.
  const { publicAddress } = settings();
  if (publicAddress !== null) answer.headers.append('link', `<${publicAddress}${pathname}>; rel="canonical"`);
  if (NOT_LISTED.test(pathname)) answer.headers.set('x-robots-tag', 'noindex');
  return answer;
}
