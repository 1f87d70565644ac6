import type { RuleSetId } from '../limits/limit';
import { limitsUnder, sourceOf } from '../limits/limits';
import type { PartId } from '../wall/part-id';
import type { Survey } from '../wall/survey';
import type { SurveyedWall } from '../wall/surveyed';
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

/** A mark to be explained. */
export interface Marked {
  readonly part: PartId;
  readonly fault: CheckId;
}

/**
 * Explains false marks, one for one: the measurement nearest its limit at that part, and the look-alike it may have been. A measurement is at
 * a part when it was taken there, at a joint of the unit marked, or at the panel the part belongs to. Each check named is run once,
 * however many marks name it.
 */
export function explainMarks(
  surveyed: SurveyedWall,
  rules: RuleSetId,
  marks: readonly Marked[],
): readonly Explanation[] {
  const nearest = new Map(
    [...new Set(marks.map(({ fault }) => fault))].map((fault) => {
      const marked = new Set(marks.filter((mark) => mark.fault === fault).map(({ part }) => part));
      return [fault, nearestAt(surveyed, rules, fault, marked)] as const;
    }),
  );
  return marks.map(({ part: id, fault }) => {
    const measurement = nearest.get(fault)?.get(id);
    const part = surveyed.parts.get(id);
    return {
      measured: measurement === undefined ? null : shown(measurement),
      lookAlike: part === undefined ? null : lookAlikeAt(surveyed, part, fault),
    };
  });
}

/** Of the measurements of one check that pass, for each part the one nearest its limit; the first taken of equal ones. */
function nearestAt(
  survey: Survey,
  rules: RuleSetId,
  fault: CheckId,
  marked: ReadonlySet<PartId>,
): ReadonlyMap<PartId, Measurement> {
  const nearest = new Map<PartId, Measurement>();
  CATALOGUE[fault].measure(survey, limitsUnder(rules), (measurement) => {
    if (!passes(measurement)) return;
    for (const part of new Set([measurement.at, ...measurement.place().parts])) {
      if (!marked.has(part)) continue;
      const known = nearest.get(part);
      if (known === undefined || severityOf(measurement) > severityOf(known)) nearest.set(part, measurement);
    }
  });
  return nearest;
}

/** A measurement as it is told. */
export function shown(measurement: Measurement): NonNullable<Explanation['measured']> {
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
