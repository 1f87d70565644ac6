import { grade } from '../../exercise/grade';
import { keyOf } from '../../exercise/key';
import type { RuleSetId } from '../../limits/limit';
import type { SurveyedWall } from '../../wall/surveyed';
import type { GuidedRow } from './guided-rows';

/** Which findings were found by the parts pointed to, one for each finding in order; null where none was. */
export function foundBy(
  surveyed: SurveyedWall,
  rules: RuleSetId,
  rows: readonly GuidedRow[],
  places: readonly (string | null)[],
): readonly boolean[] {
  const marks = rows.flatMap(({ finding }, index) => {
    const part = places[index];
    return part ? [{ part, fault: finding.check }] : [];
  });
  return grade(keyOf(surveyed, rules), marks).findings.map(({ outcome }) => outcome === 'found');
}
