import type { RuleSetId } from '../limits/limit';
import { limitsUnder, sourceOf } from '../limits/limits';
import type { Wall } from '../wall/model';
import { type Survey, surveyOf } from '../wall/survey';
import { CATALOGUE, CHECK_LIST } from './catalogue';
import { type Measurement, marginOf, passes } from './check';
import type { CheckId, Finding } from './finding';

/** The answer key: everything wrong with a wall under a rule set, measured from its geometry. Ordered by panel, then upward, then to the right. */
export function inspect(wall: Wall, rules: RuleSetId): readonly Finding[] {
  return findingsOf(surveyOf(wall), rules);
}

/** The same of a wall that is surveyed already. */
export function findingsOf(survey: Survey, rules: RuleSetId): readonly Finding[] {
  const findings: Finding[] = [];
  measureAll(survey, rules, (check, measurement) => {
    if (!passes(measurement)) findings.push(findingOf(check, measurement));
  });
  return findings.sort(byPlace);
}

/** Reports every measurement that every check takes, sound ones too. */
export function measureAll(
  survey: Survey,
  rules: RuleSetId,
  report: (check: CheckId, measurement: Measurement) => void,
): void {
  const limits = limitsUnder(rules);
  for (const check of CHECK_LIST) {
    check.measure(survey, limits, (measurement) => report(check.id, measurement));
  }
}

function findingOf(check: CheckId, measurement: Measurement): Finding {
  const { limit } = measurement;
  const { parts, region } = measurement.place();
  return {
    check,
    parts,
    region,
    measured: measurement.measured,
    unit: measurement.unit ?? limit.unit,
    limit: measurement.bound,
    margin: marginOf(measurement),
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
