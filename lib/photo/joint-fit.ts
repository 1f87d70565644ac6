import { solved } from './matrix';

/** A joint in a row of tones: its middle and width in samples, how much lighter it is than the units, and how soft its edges are. */
export interface JointFit {
  readonly middle: number;
  readonly width: number;
  readonly step: number;
  readonly soft: number;
  /** Root mean square of what the fit leaves, in tones. */
  readonly left: number;
}

const TURNS = 25;

/** The error function: formula 7.1.26 of Abramowitz and Stegun, wrong by less than 1.5e−7. */
export function erf(x: number): number {
  const t = 1 / (1 + 0.3275911 * Math.abs(x));
  const tail =
    t *
    (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) *
    Math.exp(-x * x);
  return Math.sign(x) * (1 - tail);
}

/**
 * Fits two edges softened alike between a unit, the mortar and the next unit, which may each have a tone of their own:
 * one · (1 − Φ₁) + mortar · (Φ₁ − Φ₂) + next · Φ₂ with Φ the normal distribution about an edge and `soft` its spread. By Levenberg
 * and Marquardt; with `soft` held, the other five move. Undefined where it does not settle.
 */
export function fitJoint(
  tones: ArrayLike<number>,
  first: { readonly middle: number; readonly width: number; readonly soft: number },
  holdSoft: boolean,
): JointFit | undefined {
  const count = tones.length;
  if (count < 8) return undefined;
  const end = Math.max(2, count >> 3);
  const start = Math.round(Math.min(Math.max(first.middle, 0), count - 1));
  let best: readonly number[] = [
    mean(tones, 0, end),
    tones[start] ?? 0,
    mean(tones, count - end, count),
    first.middle,
    first.width,
    first.soft,
  ];
  const size = holdSoft ? 5 : 6;
  let { error, normal, right } = equationsOf(tones, best, size);
  let damp = 1e-2;
  for (let turn = 0; turn < TURNS && damp < 1e6; turn++) {
    const step = solved(
      normal.map((row, at) => [
        ...row.map((value, to) => (to === at ? value * (1 + damp) + 1e-12 : value)),
        right[at] ?? 0,
      ]),
    );
    if (step === undefined) return undefined;
    const next = best.map((value, at) => value + (step[at] ?? 0));
    next[4] = Math.max(next[4] ?? 0, 0.5);
    next[5] = Math.max(next[5] ?? 0, 0.3);
    const there = equationsOf(tones, next, size);
    if (there.error >= error) {
      damp *= 8;
      continue;
    }
    const gain = (error - there.error) / error;
    best = next;
    ({ error, normal, right } = there);
    damp *= 0.3;
    if (gain < 1e-5) break;
  }
  const [one = 0, mortar = 0, next = 0, middle = 0, width = 0, soft = 0] = best;
  return { middle, width, step: mortar - (one + next) / 2, soft, left: Math.sqrt(error / count) };
}

/** The sum of squares that a choice leaves, and the normal equations of the next step for its first `size` numbers. */
function equationsOf(
  tones: ArrayLike<number>,
  [one = 0, mortar = 0, next = 0, middle = 0, width = 0, soft = 1]: readonly number[],
  size: number,
): { readonly error: number; readonly normal: readonly Float64Array[]; readonly right: Float64Array } {
  const normal = Array.from({ length: size }, () => new Float64Array(size));
  const right = new Float64Array(size);
  const slopes = new Float64Array(6);
  let error = 0;
  for (let y = 0; y < tones.length; y++) {
    const [before, after] = [(y - middle + width / 2) / soft, (y - middle - width / 2) / soft];
    const [into, out] = [(1 + erf(before / Math.SQRT2)) / 2, (1 + erf(after / Math.SQRT2)) / 2];
    const first = ((one - mortar) * bell(before)) / soft;
    const last = ((mortar - next) * bell(after)) / soft;
    slopes[0] = 1 - into;
    slopes[1] = into - out;
    slopes[2] = out;
    slopes[3] = first + last;
    slopes[4] = (last - first) / 2;
    slopes[5] = first * before + last * after;
    const off = (tones[y] ?? 0) - one * (1 - into) - mortar * (into - out) - next * out;
    error += off * off;
    for (const [row, line] of normal.entries()) {
      const slope = slopes[row] ?? 0;
      right[row] = (right[row] ?? 0) + slope * off;
      for (let column = 0; column < size; column++)
        line[column] = (line[column] ?? 0) + slope * (slopes[column] ?? 0);
    }
  }
  return { error, normal, right };
}

function bell(u: number): number {
  return Math.exp((-u * u) / 2) / Math.sqrt(2 * Math.PI);
}

function mean(tones: ArrayLike<number>, from: number, to: number): number {
  let sum = 0;
  for (let at = from; at < to; at++) sum += tones[at] ?? 0;
  return sum / (to - from);
}
