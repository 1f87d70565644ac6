import type { FalseCall, FaultMet } from '../learning/attempt';
import type { GradedFinding, GradedMark, Result } from './result';

/** What became of a wall, as a practice record keeps it. */
export interface MetOnWall {
  readonly faults: readonly FaultMet[];
  readonly falseCalls: readonly FalseCall[];
}

export function metOnWall({ findings, marks }: Result): MetOnWall {
  return {
    faults: findings.map((each) => faultMet(each, marks)),
    falseCalls: marks
      .filter(({ outcome }) => outcome === 'false')
      .map(({ mark: { fault, sure } }) => ({ fault, sure })),
  };
}

function faultMet(
  { finding: { check, hazard }, outcome, mark, verdicts }: GradedFinding,
  marks: readonly GradedMark[],
): FaultMet {
  const made = mark === null ? undefined : marks[mark]?.mark;
  const isPlaced = outcome === 'found' || outcome === 'wrong name';
  return {
    fault: check,
    hazard,
    outcome,
    named: isPlaced && made ? made.fault : null,
    sure: isPlaced && made ? made.sure : null,
    readRight: verdicts.measured === 'not given' ? null : verdicts.measured === 'right',
  };
}
