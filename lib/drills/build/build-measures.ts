import { adjusted, type Slider } from '../../generate/adjustable/sliders';
import { type Measurement, marginOf, passes } from '../../inspect/check';
import type { CheckId } from '../../inspect/finding';
import { findingsOf, measureAll } from '../../inspect/inspect';
import { type LimitKind, RULE_SETS, type RuleSetId } from '../../limits/limit';
import { ruleSetTitle, sourceOf } from '../../limits/limits';
import type { Wall } from '../../wall/model';
import { namesOf } from '../../wall/part-names';
import { type Survey, surveyOf } from '../../wall/survey';
import { surveyedWall } from '../../wall/surveyed';
import type { ExplainedFinding } from '../explained-finding';
import { explainedFinding } from '../explained-finding';

/** One measure held against one limit. */
export interface BuildVerdict {
  /** Name of the limit. */
  readonly limit: string;
  readonly end: 'at most' | 'at least';
  readonly measured: number;
  readonly bound: number;
  /** Negative: how far beyond. */
  readonly margin: number;
  readonly passes: boolean;
  readonly unit: string;
  readonly kind: LimitKind;
  readonly source: string;
}

/** What one rule set says of a slider. */
export interface Compared {
  readonly rules: string;
  readonly title: string;
  readonly verdicts: readonly (BuildVerdict & {
    /** Value of the slider at which the limit is met exactly: one step further it is crossed. */
    readonly crossedAt: number;
  })[];
}

/** What is measured on an adjusted wall, and what of it is beyond a limit. */
export interface BuildMeasures {
  readonly findings: readonly ExplainedFinding[];
  /** By slider. */
  readonly verdicts: Readonly<Record<string, readonly BuildVerdict[]>>;
}

export function measuresOf(wall: Wall, sliders: readonly Slider[], rules: RuleSetId): BuildMeasures {
  const surveyed = surveyedWall(wall);
  const nameOf = namesOf(surveyed);
  const measurements: (readonly [CheckId, Measurement])[] = [];
  measureAll(surveyed, rules, (check, measurement) => measurements.push([check, measurement]));
  return {
    findings: findingsOf(surveyed, rules).map((finding, index) =>
      explainedFinding(finding, index + 1, rules, nameOf),
    ),
    verdicts: Object.fromEntries(
      sliders.map(({ id, checks, fitted }) => [
        id,
        measurements
          .filter(([check, { at }]) => at === fitted.at && checks.includes(check))
          .map(([, measurement]) => verdictOf(measurement)),
      ]),
    ),
  };
}

/** What every rule set says of one slider on this wall, and at which value of the slider its limit is crossed. */
export function comparedFor(wall: Wall, base: Wall, slider: Slider): readonly Compared[] {
  const survey = surveyOf(wall);
  const atMost = surveyOf(adjusted(base, [slider], { [slider.id]: slider.fitted.most }));
  return RULE_SETS.map((rules) => {
    const most = measurementsOf(slider, atMost, rules);
    return {
      rules,
      title: ruleSetTitle(rules),
      verdicts: measurementsOf(slider, survey, rules).map((measurement) => ({
        ...verdictOf(measurement),
        crossedAt: crossingOf(measurement, most, slider.fitted.most),
      })),
    };
  });
}

/** Measures grow in proportion with their slider: over what run a lean is measured differs from one rule set to another. */
function crossingOf(
  { end, bound, limit }: Measurement,
  atMost: readonly Measurement[],
  most: number,
): number {
  const same = atMost.find((each) => each.limit.id === limit.id);
  return end === 'at least' || !same || same.measured <= 0 ? bound : (most * same.bound) / same.measured;
}

function measurementsOf(
  { checks, fitted }: Slider,
  survey: Survey,
  rules: RuleSetId,
): readonly Measurement[] {
  const measurements: Measurement[] = [];
  measureAll(survey, rules, (check, measurement) => {
    if (checks.includes(check) && measurement.at === fitted.at) measurements.push(measurement);
  });
  return measurements;
}

function verdictOf(measurement: Measurement): BuildVerdict {
  const { limit, end, measured, bound } = measurement;
  return {
    limit: limit.id,
    end,
    measured,
    bound,
    margin: marginOf(measurement),
    passes: passes(measurement),
    unit: measurement.unit ?? limit.unit,
    kind: limit.kind,
    source: [ruleSetTitle(limit.rules), sourceOf(limit).title, limit.clause]
      .filter((each) => each !== '')
      .join(' · '),
  };
}
