import type { WallProbe } from '../classes/forms';
import type { Brief } from '../generate/brief';
import { layWall } from '../generate/generate';
import { planOf } from '../generate/planner';
import { TOPIC_FAULTS, TOPICS, type Topic } from '../generate/topics';
import type { CheckId } from '../inspect/finding';
import { inspect } from '../inspect/inspect';

/** Families of faults by which forms are matched: the topics of the lessons. A fault of two topics counts with the first. */
const FAMILIES = TOPICS.filter((topic) => topic !== 'mixed');

/** Looks at walls for lib/classes, which may neither lay nor inspect one. */
export const WALL_PROBE: WallProbe = {
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
