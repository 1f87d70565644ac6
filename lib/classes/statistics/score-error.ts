import { requireCount, requireFinite } from '../../marking/marking-error';

/**
 * Standard error of a score (0 to 1) that is the mean of `walls` wall scores: the standard deviation of the Beta
 * distribution with one wall right and one wall wrong added, ((s+1)(n-s+1) / ((n+2)^2 (n+3)))^1/2 with s = score times n.
 * Wall scores lie between 0 and 1, so they cannot spread more than right-or-wrong answers do: it is the most the error
 * can be, and never 0 for a clean sheet. Throws MarkingError for a count that is not whole.
 */
export function scoreError(score: number, walls: number): number {
  requireFinite('score', score);
  requireCount('walls', walls);
  const right = score * walls + 1;
  const wrong = (1 - score) * walls + 1;
  const all = walls + 2;
  return Math.sqrt((right * wrong) / (all * all * (all + 1)));
}
