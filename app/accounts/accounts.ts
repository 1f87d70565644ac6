import { randomUUID } from 'node:crypto';
import { betterAuth } from 'better-auth';
import { twoFactor } from 'better-auth/plugins/two-factor';
import type { Store } from '../../lib/store/database';
import { PEER_HEADER } from '../request/address';
import { cookieName, DESK_COOKIE, isHttps, STEP_COOKIE } from '../request/cookies';
import { settings } from '../server/settings';
import { store } from '../server/store';
import { hashSecret, isSecretOf } from './passwords';
import { recoveryCodesKept } from './recovery-codes';

/** How long an instructor stays signed in without coming back, seconds: a fortnight. */
const SESSION_SECONDS = 14 * 24 * 60 * 60;
const DAY_SECONDS = 24 * 60 * 60;
/** How often it is written down that a session is in use, seconds: its holder is told when it last was. */
const NOTED_SECONDS = 60 * 60;
/** However often they come back: then they sign in anew. */
export const LONGEST_SESSION_MS = 60 * DAY_SECONDS * 1000;

/** The published fewest; length is asked for, kinds of sign are not. */
export const FEWEST_PASSWORD_SIGNS = 12;
export const MOST_PASSWORD_SIGNS = 128;

type Accounts = ReturnType<typeof makeAccounts>;

/** One a database. */
const made = new WeakMap<Store, Accounts>();

/**
 * The sign-in library, over our own tables. None of its own routes is open to the network: app/api/people calls it, behind our
 * guard and our counts of wrong tries. So its believing any forwarded-for header is of no use to anybody.
 */
export async function accounts(): Promise<Accounts> {
  const opened = await store();
  const known = made.get(opened) ?? makeAccounts(opened);
  made.set(opened, known);
  return known;
}

function makeAccounts({ db, kind }: Store) {
  const { secret, publicAddress, port } = settings();
  return betterAuth({
    appName: 'Read the Wall',
    baseURL: publicAddress ?? `http://127.0.0.1:${port}`,
    secret,
    database: { db, type: kind },
    telemetry: { enabled: false },
    logger: { disabled: true },
    // Counted in lib/store/throttle.ts, by account, and by an address that cannot be forged.
    rateLimit: { enabled: false },
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      minPasswordLength: FEWEST_PASSWORD_SIGNS,
      maxPasswordLength: MOST_PASSWORD_SIGNS,
      password: {
        hash: hashSecret,
        verify: ({ hash, password }) => isSecretOf(hash, password),
      },
    },
    user: {
      additionalFields: {
        role: { type: 'string', input: false, required: true, defaultValue: 'instructor' },
      },
    },
    plugins: [
      twoFactor({
        // Ours, as above: its own would shut people out of browsers that are known.
        accountLockout: { enabled: false },
        backupCodeOptions: recoveryCodesKept(secret),
      }),
    ],
    session: { expiresIn: SESSION_SECONDS, updateAge: NOTED_SECONDS },
    advanced: {
      // Made here: with 'uuid' the library leaves it to PostgreSQL, and our tables do not.
      database: { generateId: () => randomUUID() },
      // Its own prefix for https is the weaker __Secure-: ours is in the name.
      useSecureCookies: false,
      cookies: {
        session_token: { name: cookieName(DESK_COOKIE) },
        two_factor: { name: cookieName(STEP_COOKIE) },
      },
      defaultCookieAttributes: { secure: isHttps(), sameSite: 'lax', httpOnly: true, path: '/' },
      ipAddress: { disableIpTracking: true, ipAddressHeaders: [PEER_HEADER] },
    },
  });
}
