import type { BuildVerdict, Compared } from '../../../components/practise/build-verdict';
import type { ExplainedFinding } from '../../../components/practise/explained-finding';
import { type Slider, spoilByHand } from '../../../lib/generate/by-hand/spoil-by-hand';
import { CHECK_LIST } from '../../../lib/inspect/check-list';
import type { CheckId } from '../../../lib/inspect/finding';
import { inspect, seeAll } from '../../../lib/inspect/inspect';
import { marginOf, passes, type Sight } from '../../../lib/inspect/sight';
import { RULE_SETS, type RuleSetId } from '../../../lib/limits/limit';
import { ruleSetTitle, sourceOf } from '../../../lib/limits/limits';
import type { Wall } from '../../../lib/wall/model';
import { type Survey, surveyOf } from '../../../lib/wall/survey';
import { explainedFinding } from '../explained';
import { partNames } from '../part-names-of';

/** What is measured on a wall spoiled by hand, and what of it is beyond a limit. */
export interface BuildMeasures {
  readonly findings: readonly ExplainedFinding[];
  /** By slider. */
  readonly verdicts: Readonly<Record<string, readonly BuildVerdict[]>>;
}

export function measuresOf(wall: Wall, sliders: readonly Slider[], rules: RuleSetId): BuildMeasures {
  const nameOf = partNames(wall);
  const sights: (readonly [CheckId, Sight])[] = [];
  seeAll(surveyOf(wall), rules, (check, sight) => sights.push([check, sight]));
  return {
    findings: inspect(wall, rules).map((finding, index) =>
      explainedFinding(finding, index + 1, rules, nameOf),
    ),
    verdicts: Object.fromEntries(
      sliders.map(({ id, checks, fitted }) => [
        id,
        sights
          .filter(([check, { at }]) => at === fitted.at && checks.includes(check))
          .map(([, sight]) => verdictOf(sight)),
      ]),
    ),
  };
}

/** What every rule set says of one slider on this wall, and at which value of the slider its limit is crossed. */
export function comparedFor(wall: Wall, base: Wall, slider: Slider): readonly Compared[] {
  const survey = surveyOf(wall);
  const atMost = surveyOf(spoilByHand(base, [slider], { [slider.id]: slider.fitted.most }));
  return RULE_SETS.map((rules) => {
    const most = sightsOf(slider, atMost, rules);
    return {
      rules,
      title: ruleSetTitle(rules),
      verdicts: sightsOf(slider, survey, rules).map((sight) => ({
        ...verdictOf(sight),
        crossedAt: crossingOf(sight, most, slider.fitted.most),
      })),
    };
  });
}

/** Measures grow in proportion with their slider: over what run a lean is measured differs from one rule set to another. */
function crossingOf({ end, bound, limit }: Sight, atMost: readonly Sight[], most: number): number {
  const same = atMost.find((each) => each.limit.id === limit.id);
  return end === 'at least' || !same || same.measured <= 0 ? bound : (most * same.bound) / same.measured;
}

function sightsOf({ checks, fitted }: Slider, survey: Survey, rules: RuleSetId): readonly Sight[] {
  const sights: Sight[] = [];
  for (const { id, measure } of CHECK_LIST) {
    if (!checks.includes(id)) continue;
    measure(survey, rules, (sight) => {
      if (sight.at === fitted.at) sights.push(sight);
    });
  }
  return sights;
}

function verdictOf(sight: Sight): BuildVerdict {
  const { limit, end, measured, bound } = sight;
  return {
    limit: limit.id,
    end,
    measured,
    bound,
    margin: marginOf(sight),
    passes: passes(sight),
    unit: sight.unit ?? limit.unit,
    kind: limit.kind,
    source: [ruleSetTitle(limit.rules), sourceOf(limit).title, limit.clause]
      .filter((each) => each !== '')
      .join(' · '),
  };
}
