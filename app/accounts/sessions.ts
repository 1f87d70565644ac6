import { isAPIError } from 'better-auth/api';
import { endLearnerSession, LEARNER_SESSION_MS, startLearnerSession } from '../../lib/store/learner-sessions';
import { tellRefusedTries } from '../../lib/store/throttle';
import { cookieLine, cookieOf, DESK_COOKIE, LEARNER_COOKIE, WHO_COOKIE } from '../request/cookies';
import { store } from '../server/store';
import { accounts } from './accounts';
import { hashOf, makeToken } from './codes';
import { deviceWords } from './device-words';
import { rememberDevice } from './known-device';

/** Lines for Set-Cookie. */
type Cookies = readonly string[];

/** How an account is named in counts of tries: nobody reads an e-mail address there. */
export function accountKey(email: string): string {
  return hashOf(email.toLowerCase());
}

/** Signs an instructor in, in the place of whoever was signed in here; undefined when e-mail and password do not fit. Tries are counted by the caller. */
export async function startDeskSession(
  headers: Headers,
  { email, password }: { readonly email: string; readonly password: string },
): Promise<Cookies | undefined> {
  try {
    const { headers: answer } = await (await accounts()).api.signInEmail({
      body: { email, password },
      // Of the browser no more is kept than these words; of the network nothing.
      headers: new Headers({ 'user-agent': deviceWords(headers) }),
      returnHeaders: true,
    });
    await endLearner(headers);
    await endDesk(headers);
    await tellRefusedTries((await store()).db, accountKey(email));
    return [
      ...answer.getSetCookie(),
      rememberDevice(headers, [accountKey(email)]),
      cookieLine(LEARNER_COOKIE, '', { maxAgeMs: 0 }),
      cookieLine(WHO_COOKIE, 'desk', { maxAgeMs: LEARNER_SESSION_MS, readable: true }),
    ];
  } catch (error) {
    // UNAUTHORIZED or, for what is no e-mail address, BAD_REQUEST. What else goes wrong is no matter of the password.
    if (isAPIError(error) && error.statusCode < 500) return undefined;
    throw error;
  }
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

/** An answer that also sets cookies. */
export function answerWith(body: Readonly<Record<string, unknown>>, cookies: Cookies): Response {
  const answer = Response.json(body);
  for (const line of cookies) answer.headers.append('set-cookie', line);
  return answer;
}
