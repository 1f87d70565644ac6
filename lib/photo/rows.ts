/** Rows of numbers: their middle, their period, their peaks. */

export function medianOf(values: ArrayLike<number>): number {
  const sorted = Float64Array.from(values).sort();
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? (sorted[half] ?? 0) : ((sorted[half - 1] ?? 0) + (sorted[half] ?? 0)) / 2;
}

/** The values less their mean within `half` places either way. */
export function levelled(values: ArrayLike<number>, half: number): Float64Array {
  const sums = new Float64Array(values.length + 1);
  for (let at = 0; at < values.length; at++) sums[at + 1] = (sums[at] ?? 0) + (values[at] ?? 0);
  return Float64Array.from(values, (value, at) => {
    const [from, to] = [Math.max(0, at - half), Math.min(values.length, at + half + 1)];
    return value - ((sums[to] ?? 0) - (sums[from] ?? 0)) / (to - from);
  });
}

/** +1 where the few stand out upwards, −1 where they stand out downwards: joints take less of a wall than units. */
export function signOf(values: Float64Array): 1 | -1 {
  return values.reduce((sum, value) => sum + value ** 3, 0) < 0 ? -1 : 1;
}

/** How far along the row repeats itself, and how well (1 for exactly); undefined where it does not. Lags between the two bounds, in places. */
export function periodOf(
  values: Float64Array,
  least: number,
  most: number,
): { readonly lag: number; readonly likeness: number } | undefined {
  const likenessAt = (lag: number) => {
    let [product, before, after] = [0, 0, 0];
    for (let at = 0; at + lag < values.length; at++) {
      const [here, there] = [values[at] ?? 0, values[at + lag] ?? 0];
      product += here * there;
      before += here * here;
      after += there * there;
    }
    return product / Math.sqrt(before * after || 1);
  };
  const likeness = new Float64Array(Math.floor(most) + 2);
  for (let lag = Math.floor(least) - 1; lag < likeness.length; lag++) likeness[lag] = likenessAt(lag);
  let best = 0;
  const tops: number[] = [];
  for (let lag = Math.floor(least); lag <= most; lag++) {
    const here = likeness[lag] ?? 0;
    if (here < (likeness[lag - 1] ?? 0) || here < (likeness[lag + 1] ?? 0)) continue;
    tops.push(lag);
    best = Math.max(best, here);
  }
  const lag = tops.find((each) => (likeness[each] ?? 0) >= 0.75 * best);
  if (lag === undefined || best <= 0) return undefined;
  return { lag, likeness: likeness[lag] ?? 0 };
}

/** Places of the highest values at least `apart` from each other and at least `least` high, in order. */
export function peaksOf(values: Float64Array, apart: number, least: number): readonly number[] {
  const tops: number[] = [];
  for (let at = 0; at < values.length; at++) {
    const here = values[at] ?? 0;
    if (here >= least && here >= (values[at - 1] ?? -Infinity) && here > (values[at + 1] ?? -Infinity))
      tops.push(at);
  }
  tops.sort((a, b) => (values[b] ?? 0) - (values[a] ?? 0));
  const kept: number[] = [];
  for (const top of tops) if (kept.every((other) => Math.abs(other - top) >= apart)) kept.push(top);
  return kept.sort((a, b) => a - b);
}

/** Which values lie no further from the median than three times the spread that the median of distances gives (3 × 1.48 MAD). */
export function inliers(values: readonly number[]): readonly boolean[] {
  const middle = medianOf(values);
  const away = values.map((value) => Math.abs(value - middle));
  const most = 3 * 1.4826 * medianOf(away) + 1e-9;
  return away.map((each) => each <= most);
}

export function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** The standard deviation of a sample (n − 1). */
export function spreadOf(values: readonly number[]): number {
  const middle = meanOf(values);
  return Math.sqrt(
    values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / Math.max(1, values.length - 1),
  );
}

/** The straight line y = at + slope · (x − x̄) of least squares. */
export function lineThrough(spots: readonly { readonly x: number; readonly y: number }[]): {
  readonly x: number;
  readonly y: number;
  readonly slope: number;
} {
  const x = meanOf(spots.map((spot) => spot.x));
  const y = meanOf(spots.map((spot) => spot.y));
  let [product, square] = [0, 0];
  for (const spot of spots) {
    product += (spot.x - x) * (spot.y - y);
    square += (spot.x - x) ** 2;
  }
  return { x, y, slope: square > 0 ? product / square : 0 };
}
