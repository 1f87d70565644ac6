import type { FalseRow, FindingRow, ResultRows } from '../../components/result/result-rows';
import { CATALOGUE } from '../../lib/inspect/catalogue';
import { LOOK_ALIKE_TEXTS } from '../../lib/inspect/look-alikes';
import type { RuleSetId } from '../../lib/limits/limit';
import { ruleSetTitle } from '../../lib/limits/limits';
import type { Wall } from '../../lib/wall/model';
import type { Part } from '../../lib/wall/parts';
import type { FindingResult, MarkResult, Result } from '../grading';
import { faultName } from './fault-choices';
import { partName } from './part-names';

/** A result in the order and words the reader sees: what could fall and was missed first; false marks last. */
export function rowsOf(
  result: Result,
  wall: Wall,
  rules: RuleSetId,
  parts: ReadonlyMap<string, Part>,
): ResultRows {
  const nameOf = (id: string) => {
    const part = parts.get(id);
    return part ? partName(part, wall) : id;
  };
  const findings = [...result.findings].sort((a, b) => urgencyOf(a) - urgencyOf(b));
  const falseMarks = result.marks.filter(({ outcome }) => outcome === 'false');
  return {
    score: result.score,
    capped: result.capped,
    findings: findings.map((each, index) => findingRow(each, index + 1, result, rules, nameOf)),
    falseMarks: falseMarks.map((each, index) => falseRow(each, findings.length + index + 1, nameOf)),
    repeats: result.marks.filter(({ outcome }) => outcome === 'repeat').length,
    marked: result.marks.length,
  };
}

function urgencyOf({ outcome, finding }: FindingResult): number {
  if (outcome === 'missed') return finding.hazard === 'could fall' ? 0 : 1;
  return outcome === 'wrong name' ? 2 : 3;
}

function findingRow(
  { finding, outcome, mark }: FindingResult,
  number: number,
  result: Result,
  rules: RuleSetId,
  nameOf: (id: string) => string,
): FindingRow {
  const named = mark === null ? undefined : result.marks[mark]?.mark.fault;
  const { rules: from } = finding.source;
  return {
    number,
    finding,
    outcome,
    texts: CATALOGUE[finding.check],
    place: placeOf(finding.parts, nameOf),
    namedAs: outcome === 'wrong name' && named !== undefined ? faultName(named) : null,
    ...(finding.check === 'tapering-bed' && (named === 'thick-joint' || named === 'thin-joint')
      ? { note: 'This bed tapers. The mean of its two ends is within the limits for thickness.' }
      : {}),
    rulesTitle: ruleSetTitle(from),
    standsIn: from !== rules,
  };
}

function placeOf(parts: readonly string[], nameOf: (id: string) => string): string {
  const [first, ...others] = parts;
  if (first === undefined) return '';
  const beds = parts.filter((part) => part.endsWith('-bed'));
  const course = /^[A-Z](\d+)\./.exec(first)?.[1];
  if (beds.length > 1 && course !== undefined) {
    // What the wall is called, where there are several, stands after the name of any part of it.
    const panel = /, wall [A-Z]$/.exec(nameOf(first))?.[0] ?? '';
    return `Bed joint of course ${course} (${beds.length} units)${panel}`;
  }
  return others.length > 0 ? `${nameOf(first)}, and what touches it` : nameOf(first);
}

function falseRow(
  { mark, explanation }: MarkResult,
  number: number,
  nameOf: (id: string) => string,
): FalseRow {
  const measured = explanation?.measured ?? null;
  const lookAlike = explanation?.lookAlike ? LOOK_ALIKE_TEXTS[explanation.lookAlike] : null;
  return {
    number,
    faultName: faultName(mark.fault),
    place: nameOf(mark.part),
    part: mark.part,
    within: measured && {
      value: measured.value,
      limit: measured.limit,
      end: measured.end,
      unit: measured.unit,
      isMean: mark.part.endsWith('-bed') && (mark.fault === 'thick-joint' || mark.fault === 'thin-joint'),
      source: [ruleSetTitle(measured.rules), measured.title, measured.clause]
        .filter((each) => each !== '')
        .join(' · '),
    },
    lookAlike: lookAlike && `${lookAlike.name}. ${lookAlike.looksWrong} ${lookAlike.isRight}`,
  };
}
