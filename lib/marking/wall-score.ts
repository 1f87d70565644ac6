import type { Finding } from '../inspect/finding';
import { HAZARD_WEIGHT } from './hazard-weight';
import { MarkingError, requireCount } from './marking-error';
import type { MatchedFinding, MatchResult } from './match';

/** The most that a wall scores when something that could fall was not found: at most half. Ours. */
export const CAP = 0.5;

/** Halves of a fault's weight earned: 2 place and name right, 1 place right (or one joint off, and the name right), 0 not found. */
export type Halves = 0 | 1 | 2;

export interface Credit {
  /** Positive whole number; only the ratios between the faults of a wall matter. */
  readonly weight: number;
  readonly halves: Halves;
}

export interface WallScore {
  /** 0 to 1, both possible. */
  readonly score: number;
  /** The score without the cap. */
  readonly uncapped: number;
  readonly capped: boolean;
  /** Why it is capped, in words for the learner; null when it is not. */
  readonly reason: string | null;
}

/**
 * Score of one wall for feedback: max(0, sum of weight times credit - fee times false marks), weights
 * normalised to 1, credit 1, 1/2 or 0, fee 0.5 / number of faults. On a sound wall max(0, 1 - 0.5 times false
 * marks). It is one fraction of whole numbers, divided once, so equal hand-ins score exactly equal.
 *
 * Throws MarkingError for a weight that is not a positive whole number or a count that is not whole.
 */
export function creditScore(credits: readonly Credit[], falseMarks: number): number {
  requireCount('false marks', falseMarks);
  const faults = credits.length;
  if (faults === 0) return Math.max(0, 2 - falseMarks) / 2;
  let weight = 0;
  let halves = 0;
  credits.forEach((credit, index) => {
    requireCount(`credits.${index}.weight`, credit.weight);
    if (credit.weight === 0) throw new MarkingError(`credits.${index}.weight: 0 is not positive`);
    weight += credit.weight;
    halves += credit.weight * credit.halves;
  });
  return Math.max(0, halves * faults - falseMarks * weight) / (2 * weight * faults);
}

/**
 * Score of a matched wall: creditScore with the hazard weights, held down to CAP while a finding that could
 * fall is missed. `match` must belong to these findings, in this order; throws MarkingError when their numbers
 * differ.
 */
export function scoreWall(findings: readonly Finding[], match: MatchResult): WallScore {
  if (findings.length !== match.findings.length) {
    throw new MarkingError(
      `match.findings: ${match.findings.length} results for ${findings.length} findings`,
    );
  }
  let missedFalls = 0;
  const credits = findings.map((finding, index): Credit => {
    const result = match.findings[index];
    const isFound = result?.outcome === 'found';
    if (!isFound && finding.hazard === 'could fall') missedFalls += 1;
    return { weight: HAZARD_WEIGHT[finding.hazard], halves: halvesOf(result) };
  });
  const uncapped = creditScore(credits, match.falseMarks);
  const capped = missedFalls > 0 && uncapped > CAP;
  return {
    score: capped ? CAP : uncapped,
    uncapped,
    capped,
    reason: capped ? capReason(missedFalls) : null,
  };
}

function halvesOf(result: MatchedFinding | undefined): Halves {
  if (result?.outcome === 'found') return result.rightName ? 2 : 1;
  return result?.outcome === 'one joint off' ? 1 : 0;
}

function capReason(missed: number): string {
  const what = missed === 1 ? 'A fault' : `${missed} faults`;
  return `${what} that could make part of the wall fall ${missed === 1 ? 'was' : 'were'} not found, so the score stops at half.`;
}
