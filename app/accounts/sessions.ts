import { isAPIError } from 'better-auth/api';
import { parseSetCookie, stringifySetCookie } from 'cookie';
import { endLearnerSession, LEARNER_SESSION_MS, startLearnerSession } from '../../lib/store/learner-sessions';
import { tellRefusedTries } from '../../lib/store/throttle';
import {
  cookieLine,
  cookieName,
  cookieOf,
  DESK_COOKIE,
  LEARNER_COOKIE,
  STEP_COOKIE,
  WHO_COOKIE,
} from '../request/cookies';
import { store } from '../server/store';
import { accounts, LONGEST_SESSION_MS } from './accounts';
import { hashOf, makeToken } from './codes';
import { deviceWords } from './device-words';
import { rememberDevice } from './known-device';

/** Lines for Set-Cookie. */
export type Cookies = readonly string[];

/** What a right password leads to: the desk, or first the second step, where one is set up. */
interface SignIn {
  readonly cookies: Cookies;
  readonly needsCode: boolean;
}

/** How an account is named in counts of tries: nobody reads an e-mail address there. */
export function accountKey(email: string): string {
  return hashOf(email.toLowerCase());
}

/** Signs an instructor in, where there is no second step; undefined when e-mail and password do not fit. Tries are counted by the caller. */
export async function startDeskSession(
  headers: Headers,
  { email, password }: { readonly email: string; readonly password: string },
): Promise<SignIn | undefined> {
  try {
    const { headers: answer, response } = await (await accounts()).api.signInEmail({
      body: { email, password },
      // Of the browser no more is kept than these words; of the network nothing.
      headers: new Headers({ 'user-agent': deviceWords(headers) }),
      returnHeaders: true,
    });
    if ('twoFactorRedirect' in response) {
      const step = answer.getSetCookie().filter((line) => line.startsWith(`${cookieName(STEP_COOKIE)}=`));
      return { needsCode: true, cookies: step };
    }
    return { needsCode: false, cookies: await settleAtDesk(headers, answer, email) };
  } catch (error) {
    // UNAUTHORIZED or, for what is no e-mail address, BAD_REQUEST. What else goes wrong is no matter of the password.
    if (isAPIError(error) && error.statusCode < 500) return undefined;
    throw error;
  }
}

/** Somebody has passed, with what the library answered: they take the place of whoever was signed in in this browser. */
export async function settleAtDesk(headers: Headers, answer: Headers, email: string): Promise<Cookies> {
  await endLearner(headers);
  await endDesk(headers);
  await tellRefusedTries((await store()).db, accountKey(email));
  return [
    ...deskCookies(answer),
    rememberDevice(headers, [accountKey(email)]),
    cookieLine(LEARNER_COOKIE, '', { maxAgeMs: 0 }),
    cookieLine(WHO_COOKIE, 'desk', { maxAgeMs: LEARNER_SESSION_MS, readable: true }),
  ];
}

/** The library's cookies. A browser keeps that of the session for as long as one may last; when it is over the server says. */
export function deskCookies(answer: Headers): Cookies {
  return answer.getSetCookie().map((line) => {
    const cookie = parseSetCookie(line);
    if (cookie.name !== cookieName(DESK_COOKIE) || !cookie.value) return line;
    return stringifySetCookie({ ...cookie, maxAge: LONGEST_SESSION_MS / 1000 });
  });
}

export async function startLearner(
  headers: Headers,
  { learnerId, groupId }: { readonly learnerId: string; readonly groupId: string },
  at: number,
): Promise<Cookies> {
  const token = makeToken();
  const { db } = await store();
  await endLearner(headers);
  await startLearnerSession(db, { tokenHash: hashOf(token), learnerId, device: deviceWords(headers), at });
  await tellRefusedTries(db, learnerId);
  return [
    ...(await endDesk(headers)),
    rememberDevice(headers, [learnerId, groupId]),
    cookieLine(LEARNER_COOKIE, token, { maxAgeMs: LEARNER_SESSION_MS }),
    cookieLine(WHO_COOKIE, 'learner', { maxAgeMs: LEARNER_SESSION_MS, readable: true }),
  ];
}

/** Signs out whoever is there, on the server and in the browser. */
export async function endSessions(headers: Headers): Promise<Cookies> {
  await endLearner(headers);
  return [
    ...(await endDesk(headers)),
    cookieLine(LEARNER_COOKIE, '', { maxAgeMs: 0 }),
    cookieLine(WHO_COOKIE, '', { maxAgeMs: 0, readable: true }),
  ];
}

async function endLearner(headers: Headers): Promise<void> {
  const token = cookieOf(headers, LEARNER_COOKIE);
  if (token) await endLearnerSession((await store()).db, hashOf(token));
}

async function endDesk(headers: Headers): Promise<Cookies> {
  if (cookieOf(headers, DESK_COOKIE)) await (await accounts()).api.signOut({ headers });
  return [cookieLine(DESK_COOKIE, '', { maxAgeMs: 0 })];
}

/** On to the page of the desk that they wanted, or first to the second step. To no other page: nobody is sent to another site. */
export function answerSignedIn({ cookies, needsCode }: SignIn, onward?: string): Response {
  const page = onward && /^\/desk(\/[\w/-]*)?$/.test(onward) ? onward : '/desk';
  return answerWith(
    { ok: true, go: needsCode ? `/sign-in/code?then=${encodeURIComponent(page)}` : page },
    cookies,
  );
}

/** An answer that also sets cookies. */
export function answerWith(body: Readonly<Record<string, unknown>>, cookies: Cookies): Response {
  const answer = Response.json(body);
  for (const line of cookies) answer.headers.append('set-cookie', line);
  return answer;
}
