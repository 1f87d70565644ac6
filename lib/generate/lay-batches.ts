import { boundAt } from '../limits/bound';
import { limitOf } from '../limits/limits';
import type { Batch } from '../wall/model';
import { batchId } from '../wall/part-id';
import type { Draft } from './draft';

/** Cement : lime : sand by volume, none over 2.7 parts of sand to one of cement and lime. */
const MIXES = [
  { portland: 1, lime: 1, sand: 5 },
  { portland: 1, lime: 1, sand: 5.25 },
  { portland: 1, lime: 0.5, sand: 4 },
] as const;
/** Air temperatures, °C, none near the 25 at which the clock changes. */
const MILD = [8, 12, 15, 18, 21] as const;
const HOT = [28, 30, 32] as const;

/** Two or three mixings, each for some courses, used well within their life. */
export function layBatches(draft: Draft, courses: number): readonly Batch[] {
  const { chance, plan } = draft;
  const count = chance.whole(2, 3);
  const mix = chance.pick(MIXES);
  const hot = plan.lookAlikes.includes('hot-day-mortar');
  const life = limitOf(plan.rules, 'mortar-life');
  return Array.from({ length: count }, (_, index) => {
    const air = chance.pick(hot ? HOT : MILD);
    const limit = life ? boundAt(life, { air }) : 90;
    return {
      id: batchId(index + 1),
      fromCourse: Math.floor((index * courses) / count) + 1,
      toCourse: Math.floor(((index + 1) * courses) / count),
      ...mix,
      air,
      minutes: Math.floor(limit * (hot ? 0.8 : 0.4)) + chance.whole(0, 8),
    };
  });
}
