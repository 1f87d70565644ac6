/**
 * Places on a line moved until each lies at least `least` from the next: upward from the lowest, and down again below `most`. Their
 * order stays: the lowest wish is the lowest place.
 */
export function spacedOut(
  wished: readonly number[],
  least: number,
  most = Number.POSITIVE_INFINITY,
): readonly number[] {
  const order = wished.map((_, index) => index).sort((a, b) => (wished[a] ?? 0) - (wished[b] ?? 0));
  const placed = [...wished];
  let low = Number.NEGATIVE_INFINITY;
  for (const index of order) {
    placed[index] = Math.max(placed[index] ?? 0, low);
    low = (placed[index] ?? 0) + least;
  }
  let high = most;
  for (const index of order.reverse()) {
    placed[index] = Math.min(placed[index] ?? 0, high);
    high = (placed[index] ?? 0) - least;
  }
  return placed;
}

/** The middle one of some values, or the mean of the middle two: a single odd one does not move it. 0 of none. */
export function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? 0) + upper) / 2;
}
