import { expect, test } from 'vitest';
import { layPlan } from '../../../lib/generate/generate';
import { planWith } from '../../../lib/generate/planner';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { CHECKS, type CheckId } from '../../../lib/inspect/finding';
import { inspect } from '../../../lib/inspect/inspect';
import { RULE_SETS, type RuleSetId } from '../../../lib/limits/limit';
import { WALL_KINDS } from '../../../lib/wall/model';

/** Findings of one fault, laid on the first kind of wall that can bear it. */
function findingsOf(check: CheckId, rules: RuleSetId) {
  for (const masonry of ['anchored', 'adhered'] as const) {
    for (const kind of WALL_KINDS) {
      try {
        const wall = layPlan(planWith(kind, masonry, rules, [{ fault: check, severity: 2 }], 3));
        const findings = inspect(wall, rules).filter((each) => each.check === check);
        if (findings.length > 0) return findings;
      } catch {
        // This wall cannot bear the fault: the next one may.
      }
    }
  }
  return [];
}

test.each(CHECKS)('%s is asked in the unit in which it is found, under every rule set', (check) => {
  const found = RULE_SETS.flatMap((rules) => findingsOf(check, rules));
  expect(found.length).toBeGreaterThan(0);
  expect([...new Set(found.map(({ unit }) => unit))]).toEqual([CATALOGUE[check].asks.unit]);
});
