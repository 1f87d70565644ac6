import { boundsOf } from '../../../lib/photo/bounds';
import { measurePhotograph } from '../../../lib/photo/measure';
import { QUANTITIES, type QuantityName, valuesOf } from '../../../lib/photo/quantities';
import { type Case, LEVEL_SD } from './laid-picture';

/** 95 of 100 normal draws lie this many standard deviations about the mean. */
const SURE = 1.96;

interface Count {
  readonly n: number;
  /** Intervals of 95 % that hold the truth. */
  readonly holds: number;
  /** Errors in standard deviations: their sum and that of their squares. */
  readonly sum: number;
  readonly square: number;
  /** Verdicts other than "cannot tell", and those of them that the true value gainsays. */
  readonly decided: number;
  readonly wrong: number;
}

export type Tally = Readonly<Record<QuantityName, Count>>;

export function tallyOf(): Tally {
  const none: Count = { n: 0, holds: 0, sum: 0, square: 0, decided: 0, wrong: 0 };
  return Object.fromEntries(QUANTITIES.map((name) => [name, none])) as unknown as Tally;
}

const RULES = ['canada', 'good-practice', 'united-kingdom'] as const;

/** Measures one picture, and counts where its intervals and verdicts stand to the wall as it was laid. */
export function tallied(before: Tally, seed: number, { picture, reference, truth, unit }: Case): Tally {
  const rules = RULES[seed % RULES.length] ?? 'canada';
  const { quantities } = measurePhotograph(picture, reference, { rules, unit, level: LEVEL_SD });
  const trueValues = valuesOf(truth);
  const after = { ...before };
  for (const { name, value, sd, verdict, limit } of quantities) {
    const trueValue = trueValues[name]?.value;
    if (trueValue === undefined) continue;
    const seen = after[name];
    const z = (value - trueValue) / sd;
    const bounds =
      limit && boundsOf(name, trueValues, rules, reference.kind === 'rectangle' ? reference.width : 0, unit);
    const isWithin =
      bounds !== undefined &&
      trueValue >= (bounds.least ?? -Infinity) &&
      trueValue <= (bounds.most ?? Infinity);
    const isDecided = verdict !== 'cannot tell';
    after[name] = {
      n: seen.n + 1,
      holds: seen.holds + (Math.abs(z) <= SURE ? 1 : 0),
      sum: seen.sum + z,
      square: seen.square + z * z,
      decided: seen.decided + (isDecided ? 1 : 0),
      wrong: seen.wrong + (isDecided && (verdict === 'within') !== isWithin ? 1 : 0),
    };
  }
  return after;
}
