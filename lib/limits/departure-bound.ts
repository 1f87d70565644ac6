import type { Mm } from '../units';
import type { Bound } from './limit';

/**
 * How far a face may stand off a straight line over a run (mm), for line bounds: the value of the shortest run named that is at
 * least as long, else the overall value; in proportion for pro-rata bounds. Throws a RangeError for other forms.
 */
export function departureBound(bound: Bound, run: Mm): Mm {
  if (bound.form === 'pro-rata') return run <= bound.run ? (bound.value * run) / bound.run : bound.beyond;
  if (bound.form !== 'any-run')
    throw new RangeError(`a bound of the form ${bound.form} does not judge a line`);
  return bound.runs.find((each) => each.run >= run)?.value ?? bound.overall;
}
