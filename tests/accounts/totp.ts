import { createHmac } from 'node:crypto';

const BASE32 = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ234567';

/** The key of RFC 6238, appendix B, and what its table gives for SHA-1: seconds since 1970, eight digits. */
export const RFC_KEY = '12345678901234567890';
export const RFC_CODES = [
  [59, '94287082'],
  [1_111_111_109, '07081804'],
  [1_111_111_111, '14050471'],
  [1_234_567_890, '89005924'],
  [2_000_000_000, '69279037'],
  [20_000_000_000, '65353130'],
] as const;

/** What the app on a phone shows: written from RFC 6238 and RFC 4226, 5.3, apart from the library that the site uses. */
export function totpOf(key: Buffer, at: number, digits = 6): string {
  const counter = Buffer.alloc(8);
  counter.writeBigUInt64BE(BigInt(Math.floor(at / 30_000)));
  const hash = createHmac('sha1', key).update(counter).digest();
  const offset = (hash.at(-1) ?? 0) & 0xf;
  const number = (hash.readUInt32BE(offset) & 0x7fff_ffff) % 10 ** digits;
  return String(number).padStart(digits, '0');
}

/** A key as it is typed: base32 in groups of four. */
export function keyOf(typed: string): Buffer {
  const bits = [...typed.replaceAll(' ', '')]
    .map((sign) => BASE32.indexOf(sign).toString(2).padStart(5, '0'))
    .join('');
  return Buffer.from((bits.match(/.{8}/g) ?? []).map((byte) => Number.parseInt(byte, 2)));
}
