import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** A wall, of any version of the model. */
type AnyWall = { readonly version: number };

/** Canonical JSON of a wall: keys in alphabetical order at every level, no white space. The same wall gives the same text everywhere. */
export function printWall(wall: AnyWall): string {
  return JSON.stringify(sorted(wall));
}

/** First 16 hex digits of the SHA-256 of the canonical JSON: it travels with every attempt. */
export function fingerprintOf(wall: AnyWall): string {
  return bytesToHex(sha256(utf8ToBytes(printWall(wall)))).slice(0, 16);
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (value === null || typeof value !== 'object') return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, each]) => [key, sorted(each)]));
}
