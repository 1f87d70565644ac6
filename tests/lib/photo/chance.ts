import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

export interface Chance {
  /** Even between the two. */
  readonly even: (least: number, most: number) => number;
  /** About zero, with this standard deviation. */
  readonly normal: (sd: number) => number;
  readonly happens: (share: number) => boolean;
  readonly pick: <T>(from: readonly [T, ...T[]]) => T;
}

export function chanceOf(seed: number): Chance {
  const generator = xoroshiro128plus(Math.imul(seed + 1, 0x9e3779b1));
  for (let warmUp = 0; warmUp < 8; warmUp++) generator.next();
  const share = () => ((generator.next() >>> 0) + 0.5) / 2 ** 32;
  return {
    even: (least, most) => least + share() * (most - least),
    normal: (sd) => sd * Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share()),
    happens: (part) => share() < part,
    pick: (from) => from[Math.floor(share() * from.length)] ?? from[0],
  };
}
