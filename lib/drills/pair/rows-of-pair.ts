import { PairResult } from '../../../components/drills/pair/pair-result';
import type { PairRow, PairRows } from './pair-rows';
import { grade } from '../../exercise/grade';
import { keyOf } from '../../exercise/key';
import { surveyed } from '../../exercise/surveyed';
import { CATALOGUE } from '../../inspect/catalogue';
import { explainMarks } from '../../inspect/explain';
import type { CheckId } from '../../inspect/finding';
import { explainedFinding } from '../explained-finding';
import { partNames } from '../../wall/part-names-of';
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
  const key = keyOf(surveyed(spoiled), rules);
  const result = rightSide ? grade(key, marks) : null;
  const { survey, parts } = surveyed(sound);
  const findings = key.findings.map((finding, index): PairRow => {
    const places = finding.parts.slice(0, 1).map((part) => ({ part, fault: finding.check }));
    const [onSound] = explainMarks(survey, parts, rules, places);
    return {
      ...explainedFinding(finding, index + 1, rules, nameOf),
      outcome: result?.findings[index]?.outcome ?? 'missed',
      onSound: onSound?.measured?.value ?? null,
    };
  });
  const falseMarks = (result?.marks ?? [])
    .filter(({ outcome }) => outcome === 'false')
    .map(({ mark, explanation }) => ({
      name: CATALOGUE[mark.fault].name,
      place: nameOf(mark.part),
      within: explanation?.measured ?? null,
    }));
  return { rightSide, findings, falseMarks };
}
