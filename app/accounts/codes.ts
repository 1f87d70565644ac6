import { createHash, randomBytes, randomInt } from 'node:crypto';

/** Digits and letters that cannot be taken for one another when read out: no I, L, O, U. */
const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** A code to read out or type: groups of four signs, 5 bits a sign. */
export function makeCode(groups: number): string {
  return Array.from({ length: groups }, () =>
    Array.from({ length: 4 }, () => SIGNS[randomInt(SIGNS.length)]).join(''),
  ).join('-');
}

/** A group's code: 40 bits, and guesses are counted. */
export function makeJoinCode(): string {
  return makeCode(2);
}

/** The word with which one learner chooses a new PIN: 20 bits, and guesses are counted as those at a PIN are. */
export function makeWord(): string {
  return makeCode(1);
}

/** What was typed, as makeCode writes it: any case, with or without dashes; O read as 0, I and L as 1. */
export function tidyCode(typed: string): string {
  const signs = typed
    .toUpperCase()
    .replaceAll(/[^0-9A-Z]/g, '')
    .replaceAll('O', '0')
    .replaceAll(/[IL]/g, '1');
  return signs.match(/.{1,4}/g)?.join('-') ?? '';
}

/** A secret for a link or a cookie: 256 bits. */
export function makeToken(): string {
  return randomBytes(32).toString('base64url');
}

/** What is stored in place of a token or code: whoever reads the database cannot use it. */
export function hashOf(secret: string): string {
  return createHash('sha256').update(secret).digest('base64url');
}
