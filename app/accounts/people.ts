import { learnerOf } from '../../lib/store/learner-sessions';
import { cookieOf, DESK_COOKIE, LEARNER_COOKIE } from '../request/cookies';
import { store } from '../server/store';
import { accounts, LONGEST_SESSION_MS } from './accounts';
import { hashOf } from './codes';

export interface Nobody {
  readonly kind: 'nobody';
}

export interface Staff {
  readonly kind: 'owner' | 'instructor';
  readonly userId: string;
  readonly name: string;
  readonly email: string;
  readonly session: { readonly id: string; readonly begun: number };
}

export interface Learner {
  readonly kind: 'learner';
  readonly learnerId: string;
  readonly groupId: string;
  readonly name: string;
  /** As it is stored. */
  readonly tokenHash: string;
}

export type Person = Nobody | Staff | Learner;

const NOBODY: Nobody = { kind: 'nobody' };

/** Who sends these headers. Asks the database each time, so that a session ended elsewhere is over at once. */
export async function whoIs(headers: Headers): Promise<Person> {
  if (cookieOf(headers, DESK_COOKIE)) {
    const staff = await staffOf(headers);
    if (staff) return staff;
  }
  const token = cookieOf(headers, LEARNER_COOKIE);
  if (!token) return NOBODY;
  const tokenHash = hashOf(token);
  const learner = await learnerOf((await store()).db, tokenHash, Date.now());
  return learner ? { kind: 'learner', ...learner, tokenHash } : NOBODY;
}

async function staffOf(headers: Headers): Promise<Staff | undefined> {
  const found = await (await accounts()).api.getSession({ headers });
  if (!found) return undefined;
  const session = { id: found.session.id, begun: found.session.createdAt.getTime() };
  if (Date.now() - session.begun > LONGEST_SESSION_MS) return undefined;
  const { id, name, email, role } = found.user;
  return { kind: role === 'owner' ? 'owner' : 'instructor', userId: id, name, email, session };
}
