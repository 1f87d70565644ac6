import type { PairRow, PairRows } from '../../../components/practise/pair-rows';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { explainMark } from '../../../lib/inspect/explain';
import type { CheckId } from '../../../lib/inspect/finding';
import { inspect } from '../../../lib/inspect/inspect';
import type { RuleSetId } from '../../../lib/limits/limit';
import { grade } from '../../grading';
import { explainedFinding } from '../explained';
import type { Pair } from '../faulty-brief';
import { partNames } from '../part-names-of';

export interface PairMark {
  readonly part: string;
  readonly fault: CheckId;
}

/** What differs, measured on both walls; and what of it was found. Marks count on the spoiled wall only. */
export function pairRows(
  { sound, spoiled }: Pair,
  rules: RuleSetId,
  marks: readonly PairMark[],
  rightSide: boolean,
): PairRows {
  const nameOf = partNames(spoiled);
  const result = rightSide ? grade(spoiled, rules, marks) : null;
  const findings = inspect(spoiled, rules).map((finding, index): PairRow => {
    const [part = finding.region.panel] = finding.parts;
    const { measured } = explainMark(sound, rules, part, finding.check);
    return {
      ...explainedFinding(finding, index + 1, rules, nameOf),
      outcome: result?.findings[index]?.outcome ?? 'missed',
      onSound: measured?.value ?? null,
    };
  });
  const falseMarks = (result?.marks ?? [])
    .filter(({ outcome }) => outcome === 'false')
    .map(({ mark, explanation }) => ({
      name: CATALOGUE[mark.fault as CheckId].name,
      place: nameOf(mark.part),
      within: explanation?.measured ?? null,
    }));
  return { rightSide, findings, falseMarks };
}
