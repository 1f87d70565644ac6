import type { GradedFinding, GradedMark, Result } from '../exercise/result';
import { CATALOGUE } from '../inspect/catalogue';
import type { CheckId } from '../inspect/finding';
import type { RuleSetId } from '../limits/limit';
import { ruleSetTitle } from '../limits/limits';
import { isOfKind, parsePartId } from '../wall/part-id';
import { namesOf } from '../wall/part-names';
import type { SurveyedWall } from '../wall/surveyed';
import { faultName, passageOf } from './fault-choices';
import type { FalseRow, FaultTexts, FindingRow, LeftRow, ResultRows } from './result-rows';
import { temptingOn, tightestOf, withinOf, wordsOf } from './sound-rows';

/** Certain, in the words of a mark. */
const CERTAIN = 3;

/** A result in the order and words the reader sees: what could fall and was missed first, then what was said for certain and wrong; false marks last. */
export function rowsOf(result: Result, surveyed: SurveyedWall, rules: RuleSetId): ResultRows {
  const nameOf = namesOf(surveyed);
  const findings = [...result.findings].sort((a, b) => urgencyOf(a, result) - urgencyOf(b, result));
  const falseMarks = result.marks
    .filter(({ outcome }) => outcome === 'false')
    .sort((a, b) => Number(isCertain(b)) - Number(isCertain(a)));
  return {
    score: result.score,
    answered: result.answered,
    capped: result.capped,
    parts: result.parts,
    findings: findings.map((each, index) => findingRow(each, index + 1, result, { rules, nameOf })),
    falseMarks: falseMarks.map((each, index) => falseRow(each, findings.length + index + 1, nameOf)),
    left: result.marks.filter(({ outcome }) => outcome === 'left').map((each) => leftRow(each, nameOf)),
    tempting: temptingOn(surveyed, result, nameOf),
    tightest: findings.length === 0 ? tightestOf(surveyed, rules, nameOf) : null,
    repeats: result.marks.filter(({ outcome }) => outcome === 'repeat').length,
    marked: result.marks.length,
  };
}

function urgencyOf(each: GradedFinding, result: Result): number {
  const { outcome, finding } = each;
  if (outcome === 'missed' && finding.hazard === 'could fall') return 0;
  if (isCertainlyWrong(each, result)) return 1;
  if (outcome === 'missed' || outcome === 'one joint off') return 2;
  return outcome === 'wrong name' ? 3 : 4;
}

function isCertainlyWrong({ outcome, mark }: GradedFinding, { marks }: Result): boolean {
  const named = mark === null ? undefined : marks[mark];
  return outcome === 'wrong name' && named !== undefined && isCertain(named);
}

function isCertain({ mark }: GradedMark): boolean {
  return mark.sure === CERTAIN;
}

function findingRow(
  each: GradedFinding,
  number: number,
  result: Result,
  { rules, nameOf }: { readonly rules: RuleSetId; readonly nameOf: (id: string) => string },
): FindingRow {
  const { finding, outcome, mark, answer, verdicts, within, rightAct } = each;
  const named = mark === null ? undefined : result.marks[mark]?.mark.fault;
  const markedAt = mark === null ? undefined : result.marks[mark]?.mark.part;
  const { rules: from } = finding.source;
  return {
    ...{ number, finding, outcome, answer, verdicts, within, rightAct },
    texts: textsOf(finding.check),
    place: placeOf(finding.parts, nameOf),
    namedAs: outcome === 'wrong name' && named !== undefined ? faultName(named) : null,
    ...(outcome === 'one joint off' && markedAt !== undefined
      ? { note: `You marked it at ${inSentence(nameOf(markedAt))}: the right place, one joint off.` }
      : {}),
    ...(finding.check === 'tapering-bed' && (named === 'thick-joint' || named === 'thin-joint')
      ? { note: 'This bed tapers. The mean of its two ends is within the limits for thickness.' }
      : {}),
    rulesTitle: ruleSetTitle(from),
    standsIn: from !== rules,
    certainWrong: isCertainlyWrong(each, result),
    lesson: passageOf(finding.check),
  };
}

/** 'Bed joint under unit 4, course 5' in the middle of a sentence. */
function inSentence(name: string): string {
  return `the ${name.charAt(0).toLowerCase()}${name.slice(1)}`;
}

function textsOf(check: CheckId): FaultTexts {
  const { name, looksLike, measuredBy, whyItMatters, putsRight, caughtAt } = CATALOGUE[check];
  return { name, looksLike, measuredBy, whyItMatters, putsRight, caughtAt };
}

function placeOf(parts: readonly string[], nameOf: (id: string) => string): string {
  const [first, ...others] = parts;
  if (first === undefined) return '';
  const beds = parts.filter((part) => isOfKind(part, 'bed'));
  const name = parsePartId(first);
  if (beds.length > 1 && name?.kind === 'bed') {
    // What the wall is called, where there are several, stands after the name of any part of it.
    const panel = /, wall [A-Z]$/.exec(nameOf(first))?.[0] ?? '';
    return `Bed joint of course ${name.course} (${beds.length} units)${panel}`;
  }
  return others.length > 0 ? `${nameOf(first)}, and what touches it` : nameOf(first);
}

function falseRow(each: GradedMark, number: number, nameOf: (id: string) => string): FalseRow {
  const { mark, explanation } = each;
  const measured = explanation?.measured ?? null;
  return {
    number,
    faultName: faultName(mark.fault),
    place: nameOf(mark.part),
    part: mark.part,
    within: measured && withinOf(measured, mark.part, mark.fault),
    lookAlike: lookAlikeWords(each),
    certainWrong: isCertain(each),
  };
}

function leftRow(each: GradedMark, nameOf: (id: string) => string): LeftRow {
  const { fault, part } = each.mark;
  return { faultName: faultName(fault), place: nameOf(part), part, lookAlike: lookAlikeWords(each) ?? '' };
}

function lookAlikeWords({ explanation }: GradedMark): string | null {
  if (!explanation?.lookAlike) return null;
  return wordsOf(explanation.lookAlike);
}
