import { type Box, gapBetween } from '../geometry/box';
import type { Finding } from '../inspect/finding';
import type { PlacedMark } from './mark';
import type { MatchResult } from './match';

/** The parts of a wall as far as marking looks at them: joints are beds and heads. */
export type Joints = ReadonlyMap<string, Box & { readonly kind: string }>;

/**
 * Marks that are the right place, one joint off. A false mark is one when it names the fault of a finding that no mark found, on a joint
 * that meets a joint of that finding: the boxes of the two lie no more than `slack` mm apart (ends belong), as a bed and the head over its
 * end, or two beds side by side. It is then no false mark, and the finding earns what a right place earns. A finding takes one such
 * mark, the first handed in; a mark goes to one finding, the first in order.
 */
export function withOneJointOff(
  match: MatchResult,
  findings: readonly Finding[],
  marks: readonly PlacedMark[],
  joints: Joints,
  slack: number,
): MatchResult {
  const results = [...match.marks];
  const outcomes = match.findings.map((result, index) => {
    const finding = findings[index];
    if (result.outcome !== 'missed' || finding === undefined) return result;
    const mark = marks.findIndex(
      (each, at) =>
        results[at]?.outcome === 'false' &&
        each.fault === finding.check &&
        each.panel === finding.region.panel &&
        meets(each.part, finding.parts, joints, slack),
    );
    if (mark < 0) return result;
    results[mark] = { outcome: 'one joint off', finding: index };
    return { ...result, outcome: 'one joint off' as const, mark };
  });
  return {
    findings: outcomes,
    marks: results,
    falseMarks: results.filter(({ outcome }) => outcome === 'false').length,
  };
}

function meets(part: string, others: readonly string[], joints: Joints, slack: number): boolean {
  const box = jointOf(part, joints);
  if (box === undefined) return false;
  return others.some((other) => {
    const beside = jointOf(other, joints);
    return beside !== undefined && gapBetween(box, beside) <= slack;
  });
}

function jointOf(part: string, joints: Joints): Box | undefined {
  const found = joints.get(part);
  return found?.kind === 'bed' || found?.kind === 'head' ? found : undefined;
}
