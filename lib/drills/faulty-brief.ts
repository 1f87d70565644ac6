import { plannedFaults } from '../engines/engines';
import { type Brief, MAX_SEED } from '../generate/brief';
import type { CheckId } from '../inspect/finding';

/** A wall of another family of units when it is laid without it, and so no pair. */
const LAID_OTHERWISE: CheckId = 'raked-thin-veneer';

/** A plan that measures otherwise than it says has not been met: so many in a row are a flaw of ours. */
const MOST_TRIES = 20;

/** The first brief from this one on, seed by seed, that plans a fault, one of these if any are named. */
export function faultyBrief(brief: Brief, wanted: readonly CheckId[] = []): Brief {
  for (let tries = 0; tries <= MAX_SEED; tries++) {
    const next = { ...brief, seed: (brief.seed + tries) % (MAX_SEED + 1) };
    const faults = plannedFaults(next);
    const fits = wanted.length === 0 || faults.some((fault) => wanted.includes(fault));
    if (faults.length > 0 && !faults.includes(LAID_OTHERWISE) && fits) return next;
  }
  return brief;
}

/**
 * What is laid and measured from the first of these briefs that measures as it should: a plan is quick to draw, but what stands on
 * the wall decides. `measured` gives null where it does not, and the next brief is tried.
 */
export function firstMeasured<T>(
  asked: Brief,
  wanted: readonly CheckId[],
  measured: (brief: Brief) => T | null,
): T {
  let brief = faultyBrief(asked, wanted);
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const laid = measured(brief);
    if (laid !== null) return laid;
    brief = faultyBrief(seedAfter(brief), wanted);
  }
  throw new RangeError(`none of ${MOST_TRIES} walls measures as it is planned`);
}

/** The brief with the next seed. */
export function seedAfter(brief: Brief): Brief {
  return { ...brief, seed: brief.seed === MAX_SEED ? 0 : brief.seed + 1 };
}
