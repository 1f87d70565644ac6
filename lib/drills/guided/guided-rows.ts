import { TOPIC_FAULTS } from '../../generate/topics';
import { CATALOGUE } from '../../inspect/catalogue';
import { CHECKS, type CheckId } from '../../inspect/finding';
import { namesOf } from '../../wall/part-names';
import type { FaultChoice } from '../../wall-page/fault-choices';
import { FAULT_CHOICES } from '../../wall-page/fault-choices';
import type { ExplainedFinding } from '../explained-finding';
import { explainedFinding } from '../explained-finding';
import { seedAfter } from '../faulty-brief';
import { type FaultyWall, faultyWall } from '../faulty-wall';
import { type GuidedStep, halfOf, namesFor } from './guided-steps';

/** What a guided wall shows of its key. Plain data: the server measures, so that the browser need not fetch what does. */
export interface GuidedRow extends ExplainedFinding {
  /** The fault as it is marked: on what sort of part. */
  readonly choice: FaultChoice | undefined;
  readonly whereToLook: string;
  /** Names to choose from, the right one among them. */
  readonly names: readonly { readonly id: CheckId; readonly name: string }[];
}

export function guidedRows(faulty: FaultyWall): readonly GuidedRow[] {
  const { rules, topic, seed } = faulty.brief;
  const nameOf = namesOf(faulty);
  return faulty.findings.map((finding, index) => {
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

/**
 * The wall of each step: of the same family of faults, each with another number. Where the reader has to find the place, the second
 * wall has the fault that the first one showed first; where the reader has to find the name, any of the family.
 */
export function guidedWall(first: FaultyWall, step: GuidedStep): FaultyWall {
  if (step === 1) return first;
  const shown = first.findings.slice(0, 1).map(({ check }) => check);
  const second = faultyWall(seedAfter(first.brief), halfOf(first.brief.seed) === 'place' ? shown : []);
  return step === 2 ? second : faultyWall(seedAfter(second.brief));
}
