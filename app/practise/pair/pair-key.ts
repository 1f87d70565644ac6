import { PairResult } from '../../../components/drills/pair/pair-result';
import type { PairRow, PairRows } from '../../../components/drills/pair/pair-rows';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { explainMark } from '../../../lib/inspect/explain';
import type { CheckId } from '../../../lib/inspect/finding';
import { inspect } from '../../../lib/inspect/inspect';
import { grade } from '../../grading';
import { explainedFinding } from '../explained';
import { partNames } from '../part-names-of';
import type { Pair } from './measured-pair';

export interface PairMark {
  readonly part: string;
  readonly fault: CheckId;
}

/** What differs, measured on both walls, and what shows it: fetched once the reader asks. */
export const PAIR_KEY = { pairRows, PairResult };

/** What differs; and what of it was found. Marks count on the spoiled wall only. */
function pairRows(
  { brief: { rules }, sound, spoiled }: Pair,
  marks: readonly PairMark[],
  rightSide: boolean,
): PairRows {
  const nameOf = partNames(spoiled);
  const result = rightSide ? grade(spoiled, rules, marks) : null;
  const findings = inspect(spoiled, rules).map((finding, index): PairRow => {
    const [part] = finding.parts;
    const onSound = part === undefined ? null : explainMark(sound, rules, part, finding.check).measured;
    return {
      ...explainedFinding(finding, index + 1, rules, nameOf),
      outcome: result?.findings[index]?.outcome ?? 'missed',
      onSound: onSound?.value ?? null,
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
