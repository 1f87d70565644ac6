import type { RuleSetId } from '../limits/limit';
import { sourceOf } from '../limits/limits';
import type { Wall } from '../wall/model';
import { type Survey, surveyOf } from '../wall/survey';
import { CATALOGUE } from './catalogue';
import { CHECK_LIST } from './check-list';
import type { CheckId, Finding } from './finding';
import { marginOf, passes, type Sight } from './sight';

/** The answer key: everything wrong with a wall under a rule set, measured from its geometry. Ordered by panel, then upward, then to the right. */
export function inspect(wall: Wall, rules: RuleSetId): readonly Finding[] {
  const findings: Finding[] = [];
  seeAll(surveyOf(wall), rules, (check, sight) => {
    if (!passes(sight)) findings.push(findingOf(check, sight));
  });
  return findings.sort(byPlace);
}

/** Every measurement that every check takes, sound ones too. */
export function seeAll(survey: Survey, rules: RuleSetId, see: (check: CheckId, sight: Sight) => void): void {
  for (const check of CHECK_LIST) check.measure(survey, rules, (sight) => see(check.id, sight));
}

function findingOf(check: CheckId, sight: Sight): Finding {
  const { limit } = sight;
  const { parts, region } = sight.place();
  return {
    check,
    parts,
    region,
    measured: sight.measured,
    unit: sight.unit ?? limit.unit,
    limit: sight.bound,
    margin: marginOf(sight),
    kind: limit.kind,
    hazard: CATALOGUE[check].hazard,
    source: {
      limit: limit.id,
      rules: limit.rules,
      title: sourceOf(limit).title,
      edition: limit.edition,
      clause: limit.clause,
      howSure: limit.howSure,
    },
  };
}

function byPlace(a: Finding, b: Finding): number {
  if (a.region.panel !== b.region.panel) return a.region.panel < b.region.panel ? -1 : 1;
  if (a.region.y !== b.region.y) return a.region.y - b.region.y;
  if (a.region.x !== b.region.x) return a.region.x - b.region.x;
  return a.check < b.check ? -1 : a.check > b.check ? 1 : 0;
}
