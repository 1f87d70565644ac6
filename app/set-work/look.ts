import type { Look } from '../../lib/classes/forms';
import type { Brief } from '../../lib/generate/brief';
import { layWall } from '../../lib/generate/generate';
import { planOf } from '../../lib/generate/planner';
import { TOPIC_FAULTS, TOPICS, type Topic } from '../../lib/generate/topics';
import type { CheckId } from '../../lib/inspect/finding';
import { inspect } from '../../lib/inspect/inspect';

/** Families of faults by which forms are matched: the topics of the lessons. A fault of two topics counts with the first. */
const FAMILIES = TOPICS.filter((topic) => topic !== 'mixed');

/** Looks at walls for lib/classes, which may neither lay nor inspect one. */
export const LOOK: Look = {
  planned: (brief) => familiesOf(planOf(brief).spoils.map(({ fault }) => fault)),
  measured: (brief) => measuredFamilies(brief),
};

export function familyOf(check: CheckId): Topic {
  return FAMILIES.find((topic) => TOPIC_FAULTS[topic].includes(check)) ?? 'mixed';
}

function measuredFamilies(brief: Brief): readonly string[] {
  return familiesOf(inspect(layWall(brief), brief.rules).map(({ check }) => check));
}

function familiesOf(checks: readonly CheckId[]): readonly string[] {
  return checks.map(familyOf).sort();
}
