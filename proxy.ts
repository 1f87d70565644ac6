import { randomBytes } from 'node:crypto';
import { type NextRequest, NextResponse } from 'next/server';
import { isHttps } from './app/request/cookies';
import { commonHeaders } from './app/server/common-headers';
import { contentPolicy } from './app/server/content-policy';
import { inlineSources } from './app/server/prerendered';

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
  return answer;
}
