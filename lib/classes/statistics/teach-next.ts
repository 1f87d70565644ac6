import { HAZARD_WEIGHT } from '../../marking/hazard-weight';
import { shareWithLimits } from '../../marking/wilson';
import { confusionOf, swapsOf } from './confusion';
import { familyRates } from './family-rates';
import type { WallAnswer } from './wall-answer';

/** What a group needs most, and the figures that say so. */
export type Need =
  | { readonly kind: 'missed'; readonly fault: string; readonly missed: number; readonly met: number }
  | {
      readonly kind: 'swapped';
      readonly fault: string;
      readonly saidToBe: string;
      readonly times: number;
      readonly met: number;
    }
  | { readonly kind: 'cries wolf'; readonly fault: string; readonly walls: number; readonly of: number };

/** Under so many answers nothing is said: chance rules. */
const LEAST_ANSWERS = 5;
/** A need is real when even the lower 95 % limit of the share that went wrong is above this. */
const LEAST_SHARE = 0.05;

/**
 * The things this group most needs, most pressing first, at most one for each fault: what is missed, what is called
 * something else, what is marked where it is not. Pressing is the lower 95 % limit of the share that went wrong, times
 * the weight of the hazard; so a fault met twice does not lead because both were missed.
 */
export function needsOf(answers: readonly WallAnswer[], most: number): readonly Need[] {
  const weights = new Map(
    answers.flatMap(({ faults }) =>
      faults.map(({ fault, hazard }) => [fault, HAZARD_WEIGHT[hazard]] as const),
    ),
  );
  const rates = familyRates(answers);
  const needs: { readonly need: Need; readonly pressing: number }[] = [];
  const add = (need: Need, wrong: number, of: number) => {
    if (of < LEAST_ANSWERS) return;
    const { low } = shareWithLimits(wrong, of);
    if (low > LEAST_SHARE) needs.push({ need, pressing: low * (weights.get(need.fault) ?? 1) });
  };
  for (const { fault, met, found, wallsWithout, wallsFalse } of rates) {
    add({ kind: 'missed', fault, missed: met - found, met }, met - found, met);
    add({ kind: 'cries wolf', fault, walls: wallsFalse, of: wallsWithout }, wallsFalse, wallsWithout);
  }
  for (const { fault, saidToBe, times, met } of swapsOf(confusionOf(answers), Number.POSITIVE_INFINITY)) {
    add({ kind: 'swapped', fault, saidToBe, times, met }, times, met);
  }
  const seen = new Set<string>();
  return needs
    .sort((a, b) => b.pressing - a.pressing || (a.need.fault < b.need.fault ? -1 : 1))
    .filter(({ need }) => {
      if (seen.has(need.fault)) return false;
      seen.add(need.fault);
      return true;
    })
    .slice(0, most)
    .map(({ need }) => need);
}

/** Why, in words for the instructor. */
export function needWords(need: Need, nameOf: (fault: string) => string): string {
  const name = `“${nameOf(need.fault)}”`;
  switch (need.kind) {
    case 'missed':
      return `${name} was missed ${need.missed} times of ${need.met}.`;
    case 'swapped':
      return `${name} was called “${nameOf(need.saidToBe)}” ${need.times} times of ${need.met}.`;
    case 'cries wolf':
      return `${name} was marked where there was none, on ${need.walls} walls of ${need.of}.`;
    default: {
      const unknown: never = need;
      throw new RangeError(`need ${String(unknown)} has no words`);
    }
  }
}
