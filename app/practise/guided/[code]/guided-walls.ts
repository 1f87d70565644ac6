import type { Brief } from '../../../../lib/generate/brief';
import { planOf } from '../../../../lib/generate/planner';
import { type GuidedStep, halfOf } from '../../../../lib/practice/guided-steps';
import { faultyBrief, seedAfter } from '../../faulty-brief';

/**
 * The wall of each step: of the same family of faults, each with another number. Where the reader has to find the place, the second
 * wall has the fault that the first one showed; where the reader has to find the name, any of the family.
 */
export function guidedBrief(first: Brief, step: GuidedStep): Brief {
  if (step === 1) return first;
  const shown = planOf(first).spoils.slice(0, 1);
  const second = faultyBrief(
    seedAfter(first),
    halfOf(first.seed) === 'place' ? shown.map(({ fault }) => fault) : [],
  );
  return step === 2 ? second : faultyBrief(seedAfter(second));
}
