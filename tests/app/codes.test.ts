import { expect, test } from 'vitest';
import { hashOf, makeCode, makeJoinCode, makeToken, tidyCode } from '../../app/accounts/codes';

test('codes are made of signs that cannot be taken for one another', () => {
  for (let count = 0; count < 500; count += 1) {
    expect(makeJoinCode()).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/);
  }
  expect(makeCode(4)).toMatch(/^(\w{4}-){3}\w{4}$/);
});

test.each([
  ['7KQ2-M9TX', '7KQ2-M9TX'],
  ['7kq2m9tx', '7KQ2-M9TX'],
  ['  7kq2 – m9tx. ', '7KQ2-M9TX'],
  ['OIl1-0000', '0111-0000'],
  ['7KQ2-M9T', '7KQ2-M9T'],
  ['', ''],
  ['–', ''],
])('%j is read as %j', (typed, code) => {
  expect(tidyCode(typed)).toBe(code);
});

test('no two tokens are alike; 256 bits are 43 signs', () => {
  const tokens = Array.from({ length: 1000 }, makeToken);
  expect(new Set(tokens).size).toBe(1000);
  expect(tokens.every((token) => /^[\w-]{43}$/.test(token))).toBe(true);
});

test('a hash is SHA-256, as published for "abc" (FIPS 180-4, B.1)', () => {
  const hex = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
  expect(Buffer.from(hashOf('abc'), 'base64url').toString('hex')).toBe(hex);
});
