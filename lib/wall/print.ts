import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** A wall, of any version of the model. */
type AnyWall = { readonly version: number };

/** Canonical JSON of a wall: keys in alphabetical order at every level, no white space. The same wall gives the same text everywhere. */
export function printWall(wall: AnyWall): string {
  return JSON.stringify(sorted(wall, new Map()));
}

/** First 16 hex digits of the SHA-256 of the canonical JSON: it travels with every attempt. */
export function fingerprintOf(wall: AnyWall): string {
  return bytesToHex(sha256(utf8ToBytes(printWall(wall)))).slice(0, 16);
}

/** `orders`: alphabetical orders by the keys as they stand. Hundreds of units have the same ones, and sorting is slow. */
function sorted(value: unknown, orders: Map<string, readonly string[]>): unknown {
  if (Array.isArray(value)) return value.map((each) => sorted(each, orders));
  if (value === null || typeof value !== 'object') return value;
  const keys = Object.keys(value);
  const asTheyStand = keys.join();
  const order = orders.get(asTheyStand) ?? keys.sort();
  orders.set(asTheyStand, order);
  const copy: Record<string, unknown> = {};
  for (const key of order) copy[key] = sorted((value as Record<string, unknown>)[key], orders);
  return copy;
}
