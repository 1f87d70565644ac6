import type { FaultChoice } from '../../../../components/practice/part-facts';
import type { ExplainedFinding } from '../../../../components/practise/explained-finding';
import type { Brief } from '../../../../lib/generate/brief';
import { TOPIC_FAULTS } from '../../../../lib/generate/topics';
import { CATALOGUE } from '../../../../lib/inspect/catalogue';
import { CHECKS, type CheckId } from '../../../../lib/inspect/finding';
import { inspect } from '../../../../lib/inspect/inspect';
import { namesFor } from '../../../../lib/practice/guided-steps';
import type { Wall } from '../../../../lib/wall/model';
import { grade } from '../../../grading';
import { FAULT_CHOICES } from '../../../walls/fault-choices';
import { explainedFinding } from '../../explained';
import { partNames } from '../../part-names-of';

/** What a guided wall shows of its key. */
export interface GuidedRow extends ExplainedFinding {
  /** The fault as it is marked: on what sort of part. */
  readonly choice: FaultChoice | undefined;
  readonly whereToLook: string;
  /** Names to choose from, the right one among them. */
  readonly names: readonly { readonly id: CheckId; readonly name: string }[];
}

export function guidedRows(wall: Wall, { rules, topic, seed }: Brief): readonly GuidedRow[] {
  const nameOf = partNames(wall);
  return inspect(wall, rules).map((finding, index) => {
    const { mistakenFor, whereToLook } = CATALOGUE[finding.check];
    const near = CHECKS.filter((check) => mistakenFor.includes(check));
    const names = namesFor(finding.check, near, TOPIC_FAULTS[topic], CHECKS, seed + index);
    return {
      ...explainedFinding(finding, index + 1, rules, nameOf),
      whereToLook,
      choice: FAULT_CHOICES.find(({ id }) => id === finding.check),
      names: names.map((id) => ({ id, name: CATALOGUE[id].name })),
    };
  });
}

/** Which findings were found by the parts pointed to, one for each finding in order; null where none was. */
export function foundBy(
  wall: Wall,
  { rules }: Brief,
  rows: readonly GuidedRow[],
  places: readonly (string | null)[],
): readonly boolean[] {
  const marks = rows.flatMap(({ finding }, index) => {
    const part = places[index];
    return part ? [{ part, fault: finding.check }] : [];
  });
  return grade(wall, rules, marks).findings.map(({ outcome }) => outcome === 'found');
}
