import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { type Mm, snap } from '../units';

/** Seeded chance. The same seed gives the same run of values in every engine: only integers are drawn. */
export interface Chance {
  /** A whole number from `least` to `most`, both included. */
  readonly whole: (least: number, most: number) => number;
  readonly pick: <T>(from: readonly T[]) => T;
  /** True in `percent` of a hundred draws. */
  readonly happens: (percent: number) => boolean;
  /** A length on the grid from `least` to `most`, even chances. */
  readonly length: (least: Mm, most: Mm) => Mm;
  /** Natural scatter about zero on the grid, never beyond `most`: the sum of three even draws, so small values are common. */
  readonly scatter: (most: Mm) => Mm;
}

/** @param seed 32-bit whole number. @param stream tells apart independent runs of one seed. */
export function chanceOf(seed: number, stream: number): Chance {
  const generator = xoroshiro128plus((seed ^ Math.imul(stream + 1, 0x9e3779b1)) | 0);
  for (let warmUp = 0; warmUp < 8; warmUp++) generator.next();
  const whole = (least: number, most: number) => uniformInt(generator, least, most);
  return {
    whole,
    pick: (from) => {
      const drawn = from[whole(0, from.length - 1)];
      if (drawn === undefined) throw new RangeError('chance: nothing to pick from');
      return drawn;
    },
    happens: (percent) => whole(1, 100) <= percent,
    length: (least, most) => whole(Math.round(least * 8), Math.round(most * 8)) / 8,
    scatter: (most) => {
      const bits = generator.next();
      const sum = (bits & 255) + ((bits >>> 8) & 255) + ((bits >>> 16) & 255);
      return snap(((sum - 382.5) / 382.5) * most);
    },
  };
}
