import type { Result } from '../exercise/result';
import { severityOf } from '../inspect/check';
import { type Explanation, shown } from '../inspect/explain';
import type { CheckId } from '../inspect/finding';
import { measureAll } from '../inspect/inspect';
import { LOOK_ALIKE_TEXTS, type LookAlikeId } from '../inspect/look-alikes';
import { lookAlikesOn } from '../inspect/recognise';
import type { RuleSetId } from '../limits/limit';
import { ruleSetTitle } from '../limits/limits';
import { isOfKind } from '../wall/part-id';
import type { Survey } from '../wall/survey';
import type { SurveyedWall } from '../wall/surveyed';
import { faultName } from './fault-choices';
import type { LeftRow, TightestRow, Within } from './result-rows';

/** All of it, %. */
const WHOLE = 100;

/** What looks wrong on a wall and is right, where the reader marked none of it. */
export function temptingOn(
  surveyed: SurveyedWall,
  { marks, findings }: Pick<Result, 'marks' | 'findings'>,
  nameOf: (id: string) => string,
): readonly LeftRow[] {
  const marked = new Set(marks.map(({ explanation }) => explanation?.lookAlike));
  const there = findings.map(({ finding }) => finding);
  return lookAlikesOn(surveyed, there)
    .filter(({ lookAlike }) => !marked.has(lookAlike))
    .map(({ lookAlike, part, fault }) => ({
      faultName: faultName(fault),
      place: nameOf(part),
      part,
      lookAlike: wordsOf(lookAlike),
    }));
}

/** Of all measurements of a wall the one that came nearest to its limit; of equal ones the first taken. */
export function tightestOf(
  survey: Survey,
  rules: RuleSetId,
  nameOf: (id: string) => string,
): TightestRow | null {
  let tightest: TightestRow | null = null;
  let most = 0;
  measureAll(survey, rules, (check, measurement) => {
    const severity = severityOf(measurement);
    const { unit, ...measured } = shown(measurement);
    // Beyond its limit it is a finding; what is there or not, or has to be whole, is not near it.
    const isWhole = unit === 'there or not' || (unit === '%' && measured.limit === WHOLE);
    if (severity <= most || severity > 1 || isWhole) return;
    const part = measurement.at;
    most = severity;
    tightest = {
      faultName: faultName(check),
      place: nameOf(part),
      part,
      within: withinOf({ unit, ...measured }, part, check),
    };
  });
  return tightest;
}

/** A measurement within its limit, as it is told. */
export function withinOf(
  measured: NonNullable<Explanation['measured']>,
  part: string,
  fault: CheckId,
): Within {
  const { value, limit, end, unit, limitId, rules, title, clause } = measured;
  return {
    ...{ value, limit, end, unit },
    offMean: limitId === 'bed-from-mean-of-eight',
    isMean: isOfKind(part, 'bed') && (fault === 'thick-joint' || fault === 'thin-joint'),
    source: [ruleSetTitle(rules), title, clause].filter((text) => text !== '').join(' · '),
  };
}

/** What a look-alike is, what it may be taken for, and why it is right. */
export function wordsOf(lookAlike: LookAlikeId): string {
  const { name, looksWrong, isRight } = LOOK_ALIKE_TEXTS[lookAlike];
  return `${name}. ${looksWrong} ${isRight}`;
}
