import { MarkingError, requireCount } from './marking-error';

/** Normal quantile at .975, for 95 % limits. */
export const Z95 = 1.959963984540054;

/** A share with its 95 % limits, all 0 to 1. */
export interface ShareLimits {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Share of `count` in `total` with the 95 % limits of E. B. Wilson (1927):
 * (p + z^2/2n -+ z sqrt(p(1-p)/n + z^2/4n^2)) / (1 + z^2/n). Throws MarkingError unless both are whole,
 * total > 0 and count <= total.
 */
export function shareWithLimits(count: number, total: number): ShareLimits {
  requireCount('count', count);
  requireCount('total', total);
  if (total === 0) throw new MarkingError('total: no cases, so no share');
  if (count > total) throw new MarkingError(`count: ${count} of only ${total}`);
  const p = count / total;
  const spread = (Z95 * Z95) / total;
  const half = Math.sqrt(spread * p * (1 - p) + (spread * spread) / 4);
  const limit = (side: number) => Math.min(1, Math.max(0, (p + spread / 2 + side * half) / (1 + spread)));
  // At the ends one limit is 0 or 1 by the formula; rounding must not move it.
  return { share: p, low: count === 0 ? 0 : limit(-1), high: count === total ? 1 : limit(1) };
}
