import { isAPIError } from 'better-auth/api';
import type { Store } from '../../lib/store/database';
import { staffById } from '../../lib/store/staff';
import { countTry } from '../../lib/store/throttle';
import { cookieName, cookieOf, STEP_COOKIE } from '../request/cookies';
import { Refusal, wrongField } from '../request/refusal';
import { accounts } from './accounts';
import { hashOf, tidyCode } from './codes';
import { deviceWords } from './device-words';
import type { Staff } from './people';
import { qrPath } from './qr-path';
import { rateLimited } from './rate-limit';
import { keptCodeOf } from './recovery-codes';
import { accountKey, type Cookies, deskCookies, settleAtDesk } from './sessions';

interface Asking {
  readonly store: Store;
  readonly request: Request;
  readonly at: number;
}

/** A key for an app on the phone, as a QR code and to type, and recovery codes. The second step is not on before a code of the app was right. @throws Refusal. */
export async function beginSecondStep({ headers }: Request, password: string) {
  const made = await fitting((await accounts()).api.enableTwoFactor({ headers, body: { password } }));
  if (!made || !('totpURI' in made)) throw new Refusal(409, 'The second step is on already.');
  const key = new URL(made.totpURI).searchParams.get('secret') ?? '';
  return { qr: qrPath(made.totpURI), key: key.match(/.{1,4}/g)?.join(' ') ?? '', codes: made.backupCodes };
}

/** Turns the second step on. The cookies are those of a session in the place of this one. @throws Refusal when the code is wrong. */
export async function confirmSecondStep(
  asking: Asking & { readonly person: Staff },
  code: string,
): Promise<Cookies> {
  const { person, request } = asking;
  const { api } = await accounts();
  const digits = code.replaceAll(/\s/g, '');
  const { headers } = await tryCode(asking, person, digits, () =>
    api.verifyTOTP({ headers: request.headers, body: { code: digits }, returnHeaders: true }),
  );
  return deskCookies(headers);
}

/** Ten others in the place of the recovery codes there were. @throws Refusal when the second step is off. */
export async function newRecoveryCodes({ headers }: Request, password: string): Promise<readonly string[]> {
  const made = await fitting((await accounts()).api.generateBackupCodes({ headers, body: { password } }));
  if (!made) throw new Refusal(409, 'The second step is off.');
  return made.backupCodes;
}

/** The recovery codes that were not used yet, as they are kept: they cannot be read. */
export async function recoveryCodesOf(userId: string): Promise<readonly string[]> {
  return (await (await accounts()).api.viewBackupCodes({ body: { userId } })).backupCodes;
}

/** Whose password was right in this browser a moment ago, so that the second step may be asked for. */
export async function waitingForCode(headers: Headers): Promise<string | undefined> {
  // The cookie holds what the library keeps it under, a dot, and a signature, which the library looks at when the code is tried.
  const [, identifier] = /^(.+)\./.exec(cookieOf(headers, STEP_COOKIE) ?? '') ?? [];
  if (identifier === undefined) return undefined;
  const { internalAdapter } = await (await accounts()).$context;
  const waiting = await internalAdapter.findVerificationValue(identifier);
  return waiting && waiting.expiresAt.getTime() > Date.now() ? waiting.value : undefined;
}

/** Signs in whoever waits for it, by six digits from the phone or by a recovery code. @throws Refusal. */
export async function passSecondStep(
  asking: Asking,
  typed: string,
): Promise<{ readonly cookies: Cookies; readonly userId: string; readonly byRecovery: boolean }> {
  const { headers } = asking.request;
  const userId = await waitingForCode(headers);
  const holder = userId === undefined ? undefined : await staffById(asking.store.db, userId);
  if (userId === undefined || !holder) throw new Refusal(410, 'This took too long. Sign in again.');
  const digits = typed.replaceAll(/\s/g, '');
  const byRecovery = !/^\d{6}$/.test(digits);
  const { api } = await accounts();
  const call = (code: string) => ({
    body: { code },
    // Nothing but what was begun here: with a session the library would ask for the code of that one.
    headers: new Headers({
      cookie: `${cookieName(STEP_COOKIE)}=${encodeURIComponent(cookieOf(headers, STEP_COOKIE) ?? '')}`,
      'user-agent': deviceWords(headers),
    }),
    returnHeaders: true as const,
  });
  const answer = await tryCode(
    asking,
    { userId, ...holder },
    byRecovery ? tidyCode(typed) : digits,
    async () =>
      byRecovery
        ? api.verifyBackupCode(call((await keptCodeOf(await recoveryCodesOf(userId), typed)) ?? ''))
        : api.verifyTOTP(call(digits)),
  );
  return { cookies: await settleAtDesk(headers, answer.headers, holder.email), userId, byRecovery };
}

/** One try at a code, counted like those at a password. A code is good once (RFC 6238, 5.2): so the same one is not looked at twice. */
async function tryCode<T>(
  { store, request: { headers }, at }: Asking,
  { userId, email }: { readonly userId: string; readonly email: string },
  code: string,
  verify: () => Promise<T>,
): Promise<T> {
  const guess = { kinds: ['code', 'codeDay'] as const, of: accountKey(email), subject: `user ${userId}` };
  const right = await rateLimited({ store, headers, at, ...guess }, async () => {
    const isFresh = await countTry(store.db, 'sameCode', hashOf(`${userId} ${code}`), at);
    return isFresh ? fitting(verify()) : undefined;
  });
  if (right === undefined) {
    throw wrongField('code', 'This code does not fit, or it was used before.');
  }
  return right;
}

/** What the library answers; undefined when it refuses. What else goes wrong is no matter of the code. */
async function fitting<T>(answer: Promise<T>): Promise<T | undefined> {
  try {
    return await answer;
  } catch (error) {
    if (isAPIError(error) && error.statusCode < 500) return undefined;
    throw error;
  }
}
