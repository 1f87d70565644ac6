import type { RuleSetId } from '../limits/limit';
import { limitsUnder, sourceOf } from '../limits/limits';
import type { Wall } from '../wall/model';
import type { PartId } from '../wall/part-id';
import { partsOf } from '../wall/parts';
import { surveyOf } from '../wall/survey';
import { CATALOGUE } from './catalogue';
import { type Measurement, passes, severityOf } from './check';
import type { CheckId } from './finding';
import type { LookAlikeId } from './look-alikes';
import { lookAlikeAt } from './recognise';

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
export function explainMark(wall: Wall, rules: RuleSetId, partId: PartId, fault: CheckId): Explanation {
  const survey = surveyOf(wall);
  const part = partsOf(wall).get(partId);
  let nearest: Measurement | null = null;
  CATALOGUE[fault].measure(survey, limitsUnder(rules), (measurement) => {
    if (!passes(measurement) || !touches(measurement, partId)) return;
    if (nearest === null || severityOf(measurement) > severityOf(nearest)) nearest = measurement;
  });
  return {
    measured: nearest === null ? null : shown(nearest),
    lookAlike: part === undefined ? null : lookAlikeAt(survey, part, fault),
  };
}

/** Taken at the part, at a joint of the unit marked, or at the panel the part belongs to. */
function touches({ at, place }: Measurement, part: PartId): boolean {
  return at === part || place().parts.includes(part);
}

function shown(measurement: Measurement): NonNullable<Explanation['measured']> {
  return {
    value: measurement.measured,
    limit: measurement.bound,
    end: measurement.end,
    unit: measurement.unit ?? measurement.limit.unit,
    limitId: measurement.limit.id,
    title: sourceOf(measurement.limit).title,
    clause: measurement.limit.clause,
    rules: measurement.limit.rules,
  };
}
