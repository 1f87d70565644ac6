import { type Algorithm, hash, verify } from '@node-rs/argon2';

/** The OWASP minimum for argon2id with two passes: 19 MiB, one lane. About 11 ms on a small machine. */
const COST = {
  algorithm: 2 satisfies Algorithm.Argon2id,
  memoryCost: 19 * 1024,
  timeCost: 2,
  parallelism: 1,
};

/** More than this at once would only push the machine into swapping: others wait their turn. */
const MOST_AT_ONCE = 4;
/** A queue longer than this is an attack or a machine too small; whoever comes is asked to come back. */
const MOST_WAITING = 1_000;

let running = 0;
const waiting: (() => void)[] = [];

/** Too many people sign in at once. */
export class BusyError extends Error {
  override name = 'BusyError';
}

/** Scrambles a password or PIN, so that it can be tried and not read. */
export function hashSecret(secret: string): Promise<string> {
  return inTurn(() => hash(secret, COST));
}

export function isSecretOf(hashed: string, secret: string): Promise<boolean> {
  return inTurn(() => verify(hashed, secret));
}

async function inTurn<T>(work: () => Promise<T>): Promise<T> {
  if (running >= MOST_AT_ONCE) {
    if (waiting.length >= MOST_WAITING) throw new BusyError('Too many people sign in at once.');
    await new Promise<void>((resolve) => waiting.push(resolve));
  } else {
    running += 1;
  }
  try {
    return await work();
  } finally {
    const next = waiting.shift();
    if (next) next();
    else running -= 1;
  }
}
