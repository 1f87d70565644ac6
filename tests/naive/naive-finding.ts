import type { CheckId, Region } from '../../lib/inspect/finding';

/** What the second measurer says: enough to be held against a Finding, and no more. */
export interface NaiveFinding {
  readonly check: CheckId;
  /** Ids, sorted as text. */
  readonly parts: readonly string[];
  readonly measured: number;
  readonly limit: number;
  /** Left out where the parts say it: see regions.ts. */
  readonly region?: Region;
}

export function found(
  check: CheckId,
  parts: readonly string[],
  measured: number,
  limit: number,
  region?: Region,
): NaiveFinding {
  return { check, parts: [...parts].sort(), measured, limit, ...(region && { region }) };
}

// Shares and slopes come out a last bit off: a value that is on its bound on paper must pass here too.
const SAME = 1e-9;

export function isOver(measured: number, most: number): boolean {
  return measured - most > SAME * Math.max(1, Math.abs(most));
}

export function isUnder(measured: number, least: number): boolean {
  return least - measured > SAME * Math.max(1, Math.abs(least));
}
