import { createHmac } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { secretDraws } from '../../../lib/classes/secret-draws';

/** The first number 0 to 2^27 - 1 of a run, worked out with another implementation of HMAC-SHA-256 (RFC 2104). */
function firstSeed(secret: string, name: string): number {
  return createHmac('sha256', secret).update(`${name}\n0`).digest().readUInt32BE(0) % 134_217_728;
}

describe('draws from a secret', () => {
  test.each([
    ['Jefe', 'what do ya want for nothing?'],
    ['', ''],
    ['é', 'wall 3'],
  ])('secret %j and name %j begin with the word HMAC-SHA-256 begins with', (secret, name) => {
    expect(secretDraws(secret, name).seed()).toBe(firstSeed(secret, name));
  });

  test('the ninth word is of the second block: a block has eight', () => {
    const draws = secretDraws('s', 'n');
    const ninth = Array.from({ length: 9 }, () => draws.seed()).at(-1);
    expect(ninth).toBe(createHmac('sha256', 's').update('n\n1').digest().readUInt32BE(0) % 134_217_728);
  });

  test('the same secret and name repeat the run; another name or secret gives another', () => {
    const run = (secret: string, name: string) => {
      const draws = secretDraws(secret, name);
      return Array.from({ length: 20 }, () => draws.seed()).join();
    };
    expect(run('a', 'b')).toBe(run('a', 'b'));
    expect(run('a', 'c')).not.toBe(run('a', 'b'));
    expect(run('d', 'b')).not.toBe(run('a', 'b'));
  });

  test('each of six numbers comes up about as often as the others', () => {
    const draws = secretDraws('dice', 'throws');
    const tally = [0, 0, 0, 0, 0, 0];
    for (let n = 0; n < 6000; n++) {
      const thrown = draws.whole(0, 5);
      tally[thrown] = (tally[thrown] ?? 0) + 1;
    }
    // 1000 each; the standard deviation is sqrt(6000 · 1/6 · 5/6) = 28.9, so four of them are 116.
    for (const count of tally) expect(Math.abs(count - 1000)).toBeLessThan(116);
  });

  test('a shuffled list holds the same things', () => {
    const list = ['a', 'b', 'c', 'd', 'e'];
    expect([...secretDraws('x', 'y').shuffled(list)].sort()).toEqual(list);
    expect(secretDraws('x', 'y').shuffled([])).toEqual([]);
  });
});
