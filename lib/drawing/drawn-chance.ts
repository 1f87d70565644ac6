/**
 * A share from 0 up to (not with) 1 out of a name and a number: the same part always looks the same. For looks only; nothing
 * measured comes of it.
 */
export function shareOf(name: string, salt: number): number {
  let hash = 2166136261 ^ Math.imul(salt + 1, 0x9e3779b1);
  for (let index = 0; index < name.length; index++) {
    hash = Math.imul(hash ^ name.charCodeAt(index), 16777619);
  }
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  hash = Math.imul(hash ^ (hash >>> 12), 0x297a2d39);
  return ((hash ^ (hash >>> 15)) >>> 0) / 4294967296;
}

/** From −reach to +reach. */
export function scatterOf(name: string, salt: number, reach: number): number {
  return (shareOf(name, salt) * 2 - 1) * reach;
}
