import { boundAt } from '../limits/bound';
import { limitOf } from '../limits/limits';
import type { Batch } from '../wall/model';
import { batchId } from '../wall/part-id';
import type { Draft } from './draft';

/** Cement and lime by volume. */
const BINDERS = [
  { portland: 1, lime: 1 },
  { portland: 1, lime: 0.5 },
] as const;
/** Volumes of sand to one of cement and lime, from and to: a box of sand too many would be seen (2¼ to 3 by volume is common practice). */
const LEAST_SAND = 2.25;
const MOST_SAND = 2.875;
/** Sand is measured in quarter boxes. */
const QUARTERS = 4;
/** Air temperatures, °C, none so near the 25 at which the clock changes that a thermometer could not tell. */
const MILD = [6, 22] as const;
const HOT = [28, 34] as const;
const HOT_PERCENT = 35;
/** The least that a batch has stood by the time it is used up, and how far it keeps from the end of its life, minutes. */
const LEAST_MINUTES = 35;
const CLEAR = 6;

/** Two or three mixings, each for some courses, of any age and on any day that their life allows. */
export function layBatches(draft: Draft, courses: number): readonly Batch[] {
  const { chance, plan } = draft;
  const count = chance.whole(2, 3);
  const hot = plan.lookAlikes.includes('hot-day-mortar');
  const life = limitOf(plan.rules, 'mortar-life');
  return Array.from({ length: count }, (_, index) => {
    const [coolest, warmest] = hot || chance.happens(HOT_PERCENT) ? HOT : MILD;
    const air = chance.whole(coolest, warmest);
    const limit = life ? boundAt(life, { air }) : 90;
    const most = Math.floor(Math.min(limit * plan.soundUpTo, limit - CLEAR));
    const binder = chance.pick(BINDERS);
    const parts = (binder.portland + binder.lime) * QUARTERS;
    const sand = chance.whole(Math.ceil(LEAST_SAND * parts), Math.floor(MOST_SAND * parts)) / QUARTERS;
    return {
      id: batchId(index + 1),
      fromCourse: Math.floor((index * courses) / count) + 1,
      toCourse: Math.floor(((index + 1) * courses) / count),
      ...binder,
      sand,
      air,
      // Late on a hot day looks late, and is not.
      minutes: chance.whole(hot ? Math.floor(most * LATE) : LEAST_MINUTES, most),
    };
  });
}

/** On a hot day that is to look wrong, the share of its time that a batch has stood at least. */
const LATE = 0.85;
