/**
 * A whole number from 0 to 2^32 − 1 that looks like chance and is the same everywhere for the same two numbers: integer steps only.
 * The steps are the finishing ones of MurmurHash3 (Austin Appleby, in the public domain).
 */
export function hash32(seed: number, place: number): number {
  let bits = (seed ^ Math.imul(place + 1, 0x9e3779b1)) | 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return (bits ^ (bits >>> 16)) >>> 0;
}
