import { seedAfter } from '../faulty-brief';
import { type FaultyWall, faultyWall } from '../faulty-wall';
import { type GuidedStep, halfOf } from './guided-steps';

/**
 * The wall of each step: of the same family of faults, each with another number. Where the reader has to find the place, the second
 * wall has the fault that the first one showed first; where the reader has to find the name, any of the family.
 */
export function guidedWall(first: FaultyWall, step: GuidedStep): FaultyWall {
  if (step === 1) return first;
  const shown = first.findings.slice(0, 1).map(({ check }) => check);
  const second = faultyWall(seedAfter(first.brief), halfOf(first.brief.seed) === 'place' ? shown : []);
  return step === 2 ? second : faultyWall(seedAfter(second.brief));
}
