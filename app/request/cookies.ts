import { parseCookie, stringifySetCookie } from 'cookie';
import { settings } from '../server/settings';

/** Over https a cookie's name begins so: then no other host and no plain http page can set it. */
export const HOST_PREFIX = '__Host-';

/** The cookies that say who somebody is. A browser is one person at a time: signing in as the one ends the other. */
export const DESK_COOKIE = 'desk';
export const LEARNER_COOKIE = 'learner';

/** Says whose password was right, for the few minutes until the second step is taken. Opens nothing. */
export const STEP_COOKIE = 'second-step';

/** Tells the header's menu whose links to show. Says nothing a page trusts, and script may read it. */
export const WHO_COOKIE = 'who';

/** Whether people reach the site by https. Next itself speaks plain http, so https means that a proxy stands in front. */
export function isHttps(): boolean {
  return settings().publicAddress?.startsWith('https:') ?? false;
}

export function cookieName(name: string): string {
  return isHttps() ? `${HOST_PREFIX}${name}` : name;
}

/** The line that sets a cookie for the whole site; an empty value ends it. SameSite=Lax: links from elsewhere stay signed in. */
export function cookieLine(
  name: string,
  value: string,
  { maxAgeMs, readable = false }: { readonly maxAgeMs: number; readonly readable?: boolean },
): string {
  return stringifySetCookie({
    name: cookieName(name),
    value,
    path: '/',
    maxAge: value === '' ? 0 : Math.floor(maxAgeMs / 1000),
    sameSite: 'lax',
    httpOnly: !readable,
    secure: isHttps(),
  });
}

/** The value of one of our cookies; undefined when it was not sent. */
export function cookieOf(headers: Headers, name: string): string | undefined {
  return parseCookie(headers.get('cookie') ?? '')[cookieName(name)];
}
