import type { RuleSetId } from '../limits/limit';
import { sourceOf } from '../limits/limits';
import type { Wall } from '../wall/model';
import { partsOf } from '../wall/parts';
import { surveyOf } from '../wall/survey';
import { CHECK_LIST } from './check-list';
import type { CheckId } from './finding';
import type { LookAlikeId } from './look-alikes';
import { lookAlikeAt } from './recognise';
import { passes, type Sight, severityOf } from './sight';

/** What was measured where a learner marked a fault that is not there. */
export interface Explanation {
  /** Null where this fault is not measured at this part. */
  readonly measured: {
    readonly value: number;
    readonly limit: number;
    readonly end: 'at most' | 'at least';
    readonly unit: string;
    /** Name of the limit. */
    readonly limitId: string;
    readonly title: string;
    readonly clause: string;
    readonly rules: RuleSetId;
  } | null;
  readonly lookAlike: LookAlikeId | null;
}

/** Explains a false mark: the measurement nearest its limit at that part, and the look-alike it may have been. */
export function explainMark(wall: Wall, rules: RuleSetId, partId: string, fault: CheckId): Explanation {
  const survey = surveyOf(wall);
  const part = partsOf(wall).get(partId);
  const check = CHECK_LIST.find(({ id }) => id === fault);
  let nearest: Sight | null = null;
  check?.measure(survey, rules, (sight) => {
    if (!passes(sight) || !touches(sight, partId)) return;
    if (nearest === null || severityOf(sight) > severityOf(nearest)) nearest = sight;
  });
  return {
    measured: nearest === null ? null : shown(nearest),
    lookAlike: part === undefined ? null : lookAlikeAt(survey, part, fault),
  };
}

/** Taken at the part, at a joint of the unit marked, or at the panel the part belongs to. */
function touches({ at, place }: Sight, part: string): boolean {
  return at === part || place().parts.includes(part);
}

function shown(sight: Sight): NonNullable<Explanation['measured']> {
  return {
    value: sight.measured,
    limit: sight.bound,
    end: sight.end,
    unit: sight.unit ?? sight.limit.unit,
    limitId: sight.limit.id,
    title: sourceOf(sight.limit).title,
    clause: sight.limit.clause,
    rules: sight.limit.rules,
  };
}
