import { requireCount, requireFinite } from '../../marking/marking-error';

/**
 * The most that the standard error of a score (0 to 1) can be, given that it is the mean of `walls` wall scores of 0 to 1: no such
 * scores with mean p have a variance over p(1-p) (Bhatia and Davis, "A Better Bound on the Variance", American Mathematical Monthly
 * 107, 2000), so none have a standard error over (p(1-p) / (walls - 1))^1/2. For p stands (s+1)/(n+2), one wall right and one wrong
 * added: nearer one half, so never less, and never 0 for a clean sheet. Throws MarkingError for a count that is not whole.
 */
export function scoreError(score: number, walls: number): number {
  requireFinite('score', score);
  requireCount('walls', walls);
  const middle = (score * walls + 1) / (walls + 2);
  return Math.sqrt((middle * (1 - middle)) / Math.max(1, walls - 1));
}
