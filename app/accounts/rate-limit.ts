import type { Store } from '../../lib/store/database';
import { countTry, forgetTries, sweepTries, type TryKind } from '../../lib/store/throttle';
import { tooManyTries } from '../request/refusal';
import { log } from '../server/log';
import { knownDevice } from './known-device';

/**
 * Evaluates one guess at a secret. Counted first, by what is guessed at (all `kinds`), so that of a thousand guesses at once only
 * so many are looked at. A browser that `of` has signed in from before has a count of its own there, so that the wrong tries of
 * others shut nobody out. A right one ends its counts. @throws Refusal beyond the counts.
 */
export async function rateLimited<T>(
  guess: {
    readonly store: Store;
    readonly headers: Headers;
    readonly kinds: readonly TryKind[];
    readonly of: string;
    readonly at: number;
    /** Whom the log names: 'user ID', 'learner ID'. */
    readonly subject: string;
    /** What to say beyond the counts. */
    readonly problem?: string;
  },
  evaluate: () => Promise<T | undefined>,
): Promise<T | undefined> {
  const { store, headers, kinds, of, at, subject, problem } = guess;
  const device = knownDevice(headers, of);
  const counted = device === undefined ? of : `${of} ${device}`;
  for (const kind of kinds) {
    if (await countTry(store.db, kind, counted, at)) continue;
    log.warn({ subject, kind }, 'too many tries: refused unread');
    await countTry(store.db, 'refused', of, at);
    throw tooManyTries(problem);
  }
  const right = await evaluate();
  if (right === undefined) {
    log.warn({ subject, kind: kinds[0] }, 'a wrong try');
    await countTry(store.db, 'refused', of, at);
    return undefined;
  }
  log.info({ subject, kind: kinds[0] }, 'a right try');
  await forgetTries(store.db, kinds, counted);
  await sweepTries(store.db, at);
  return right;
}
