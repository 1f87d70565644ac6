import { hmac } from '@noble/hashes/hmac.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import { MAX_SEED } from '../generate/brief';

/** A run of numbers nobody can foretell without the secret, and anybody can repeat with it. */
export interface SecretDraws {
  /** A seed for a wall, 0 to MAX_SEED. */
  readonly seed: () => number;
  /** A whole number from `least` to `most`, both included. */
  readonly whole: (least: number, most: number) => number;
  /** The list in a drawn order. */
  readonly shuffled: <T>(list: readonly T[]) => readonly T[];
}

/**
 * HMAC-SHA-256 (RFC 2104, FIPS 180-4) of `name` and a counter under `secret`, read as 32-bit words, high byte first.
 * Different names give runs that tell nothing of one another.
 */
export function secretDraws(secret: string, name: string): SecretDraws {
  const key = utf8ToBytes(secret);
  let block = 0;
  let left: number[] = [];
  const word = (): number => {
    if (left.length === 0) {
      left = wordsOf(hmac(sha256, key, utf8ToBytes(`${name}\n${block}`)));
      block++;
    }
    return left.shift() ?? 0;
  };
  // Words beyond the last whole multiple of the range are thrown away, so that no number is likelier than another.
  const whole = (least: number, most: number): number => {
    const range = most - least + 1;
    const fair = WORDS - (WORDS % range);
    let drawn = word();
    while (drawn >= fair) drawn = word();
    return least + (drawn % range);
  };
  return {
    seed: () => whole(0, MAX_SEED),
    whole,
    shuffled: (list) => {
      const left = [...list];
      return list.flatMap(() => left.splice(whole(0, left.length - 1), 1));
    },
  };
}

const WORDS = 4_294_967_296;

function wordsOf(bytes: Uint8Array): number[] {
  const words: number[] = [];
  for (let at = 0; at + 3 < bytes.length; at += 4) {
    const [a = 0, b = 0, c = 0, d = 0] = bytes.subarray(at, at + 4);
    words.push(a * 16_777_216 + b * 65_536 + c * 256 + d);
  }
  return words;
}
