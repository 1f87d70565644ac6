import type { Store } from '../../lib/store/database';
import { countTry, forgetTries, mayTry, sweepTries, type TryKind } from '../../lib/store/throttle';
import { addressOf } from '../request/address';
import { tooManyTries } from '../request/refusal';

/**
 * Evaluates one guess at a secret. Counted first, by what is guessed at (all `kinds`), so that of a thousand guesses at once only
 * so many are looked at; by address only when it was wrong. A right one ends its counts. @throws Refusal beyond the counts.
 */
export async function rateLimited<T>(
  guess: {
    readonly store: Store;
    readonly headers: Headers;
    readonly kinds: readonly TryKind[];
    readonly of: string;
    readonly at: number;
    /** What to say beyond the counts. */
    readonly problem?: string;
  },
  evaluate: () => Promise<T | undefined>,
): Promise<T | undefined> {
  const { store, headers, kinds, of, at, problem } = guess;
  const address = addressOf(headers);
  if (!(await mayTry(store.db, 'address', address, at))) throw tooManyTries();
  for (const kind of kinds) {
    if (!(await countTry(store.db, kind, of, at))) throw tooManyTries(problem);
  }
  const right = await evaluate();
  if (right === undefined) {
    await countTry(store.db, 'address', address, at);
    return undefined;
  }
  await forgetTries(store.db, kinds, of);
  await sweepTries(store.db, at);
  return right;
}
