import { type Brief, MAX_SEED } from '../../lib/generate/brief';
import { layPlan } from '../../lib/generate/generate';
import { planOf } from '../../lib/generate/planner';
import type { CheckId } from '../../lib/inspect/finding';
import { mixed } from '../../lib/practice/mixing';
import type { Wall } from '../../lib/wall/model';

/** A wall of another family of units when it is laid without it, and so no pair. */
const LAID_OTHERWISE: CheckId = 'raked-thin-veneer';

/** The same wall twice: as laid, and as spoiled. */
export interface Pair {
  readonly sound: Wall;
  readonly spoiled: Wall;
  /** Which of the two walls shown is spoiled, drawn from the seed. */
  readonly spoiledIs: 1 | 2;
}

/** Both walls from one plan: the sound one is laid without its faults, by the same chance. Takes a brief that faultyBrief gives. */
export function pairOf(brief: Brief): Pair {
  const plan = planOf(brief);
  return {
    sound: layPlan({ ...plan, spoils: [] }),
    spoiled: layPlan(plan),
    spoiledIs: mixed(brief.seed, 0) % 2 === 0 ? 1 : 2,
  };
}

/** The first brief from this one on, seed by seed, whose wall is spoiled, with one of these faults if any are named. */
export function faultyBrief(brief: Brief, wanted: readonly CheckId[] = []): Brief {
  for (let tries = 0; tries <= MAX_SEED; tries++) {
    const next = { ...brief, seed: (brief.seed + tries) % (MAX_SEED + 1) };
    const faults = planOf(next).spoils.map(({ fault }) => fault);
    const fits = wanted.length === 0 || faults.some((fault) => wanted.includes(fault));
    if (faults.length > 0 && !faults.includes(LAID_OTHERWISE) && fits) return next;
  }
  return brief;
}

/** The brief with the next seed. */
export function seedAfter(brief: Brief): Brief {
  return { ...brief, seed: brief.seed === MAX_SEED ? 0 : brief.seed + 1 };
}
