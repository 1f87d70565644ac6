import { type ShareLimits, shareWithLimits } from '../../marking/wilson';
import type { WallAnswer } from './wall-answer';

/** How well one fault is seen, and how often it is seen where it is not. */
export interface FamilyRates {
  readonly fault: string;
  readonly met: number;
  readonly found: number;
  readonly named: number;
  /** Found of met, with 95 % limits; null when it was never met. */
  readonly hit: ShareLimits | null;
  /** Found and called by its name, of met. */
  readonly nameRight: ShareLimits | null;
  /** Walls without this fault that were answered, each counted once a learner. */
  readonly wallsWithout: number;
  /** Of those, with a false mark of this name. */
  readonly wallsFalse: number;
  readonly falseAlarm: ShareLimits | null;
}

/** Rates of every fault met or falsely marked, in alphabetical order. Faults of one wall are not independent: the limits are a little too narrow. */
export function familyRates(answers: readonly WallAnswer[]): readonly FamilyRates[] {
  const faults = new Set(
    answers.flatMap((answer) => [...answer.faults, ...answer.falseMarks].map(({ fault }) => fault)),
  );
  return [...faults].sort().map((fault) => ratesOf(fault, answers));
}

function ratesOf(fault: string, answers: readonly WallAnswer[]): FamilyRates {
  const own = answers.flatMap((answer) => answer.faults.filter((each) => each.fault === fault));
  const without = answers.filter(
    (answer) => answer.answered && !answer.faults.some((each) => each.fault === fault),
  );
  const isFalse = ({ falseMarks }: WallAnswer) => falseMarks.some((mark) => mark.fault === fault);
  const found = own.filter((each) => each.found).length;
  const named = own.filter((each) => each.named === fault).length;
  const wallsFalse = without.filter(isFalse).length;
  return {
    fault,
    met: own.length,
    found,
    named,
    hit: share(found, own.length),
    nameRight: share(named, own.length),
    wallsWithout: without.length,
    wallsFalse,
    falseAlarm: share(wallsFalse, without.length),
  };
}

function share(count: number, total: number): ShareLimits | null {
  return total === 0 ? null : shareWithLimits(count, total);
}
