import type { CheckId } from '../inspect/finding';
import type { Wall } from '../wall/model';
import type { Brief } from './brief';
import { layPlan } from './generate';
import { planOf } from './planner';

/**
 * All that a wall code needs of the program that laid it. When ENGINE is raised, `tests/commands/freeze-engine.mjs` makes one file of what stands
 * behind these three, and codes of that engine are opened with it from then on.
 */

export function lay(brief: Brief): Wall {
  return layPlan(planOf(brief));
}

/** The same wall by the same chance, but for its faults. */
export function layWithoutFaults(brief: Brief): Wall {
  return layPlan(planOf(brief), 'without');
}

/** What the plan asks for; quick, and right but for a fault that finds no room. */
export function plannedFaults(brief: Brief): readonly CheckId[] {
  return planOf(brief).spoils.map(({ fault }) => fault);
}
