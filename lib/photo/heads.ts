import { type FoundBeds, THICK, THIN } from './beds';
import type { Fitted } from './joint';
import { fitJoint } from './joint-fit';
import type { Square } from './picture';
import { levelled, lineThrough, meanOf, medianOf, peaksOf } from './rows';

/** The middle share of a course's height that is looked at: beds and their smears stay out. */
const MIDDLE = 0.6;
const BANDS = 5;
/** How far either side of a head joint the fit looks, in courses. */
const REACH = 0.4;
const SHADE = 400;

/** The head joints of each course between two beds, from left to right; of each, one fit for every band of the course's height. */
export function headsOf(square: Square, found: FoundBeds): readonly (readonly (readonly Fitted[])[])[] {
  return found.beds.slice(1).map((under, index) => {
    const over = found.beds[index] ?? under;
    return headsBetween(square, found, over, under);
  });
}

function headsBetween(
  square: Square,
  { course, step, soft, sign }: FoundBeds,
  over: readonly Fitted[],
  under: readonly Fitted[],
): readonly (readonly Fitted[])[] {
  const { width, scale } = square;
  const top = edgeOf(over, 1);
  const bottom = edgeOf(under, -1);
  const bandTone = (x: number, from: number, to: number) => {
    const mm = (x + 0.5) / scale;
    const [y0, y1] = [top(mm), bottom(mm)];
    return toneBetween(square, x, (y0 + (y1 - y0) * from) * scale, (y0 + (y1 - y0) * to) * scale);
  };
  const margin = (1 - MIDDLE) / 2;
  const profile = Float64Array.from({ length: width }, (_, x) => bandTone(x, margin, 1 - margin));
  const flat = levelled(profile, Math.round((SHADE / 2) * scale)).map((value) => sign * value);
  const units = medianOf(flat);
  const smooth = levelled(
    flat.map((value) => value - units),
    width,
  ).map((_, at) => meanNear(flat, at, scale * soft) - units);
  const columns = peaksOf(smooth, 0.25 * course * scale, 0.4 * Math.abs(step));
  const thick = medianOf([...over, ...under].map((each) => each.width));
  const reach = Math.round(REACH * course * scale);
  return columns.flatMap((column) => {
    const [from, to] = [Math.max(0, column - reach), Math.min(width, column + reach + 1)];
    if (column - from < 1.1 * thick * scale || to - column < 1.1 * thick * scale) return [];
    const fits = Array.from({ length: BANDS }, (_, band) => {
      const [start, end] = [margin + (MIDDLE * band) / BANDS, margin + (MIDDLE * (band + 1)) / BANDS];
      const tones = Float64Array.from({ length: to - from }, (_, at) => bandTone(from + at, start, end));
      const fit = fitJoint(tones, { middle: column - from, width: thick * scale, soft: soft * scale }, true);
      if (fit === undefined || fit.step * sign < 0.4 * Math.abs(step)) return [];
      if (fit.width < THIN * course * scale || fit.width > THICK * course * scale) return [];
      if (fit.left > 0.35 * Math.abs(fit.step)) return [];
      const middle = (from + fit.middle + 0.5) / scale;
      const y = heightAt(top(middle), bottom(middle), (start + end) / 2);
      return [{ along: y, middle, width: fit.width / scale, step: fit.step, soft }];
    }).flat();
    return isHead(fits, thick) ? [fits] : [];
  });
}

/** At least half of the bands agree on one upright joint. */
function isHead(fits: readonly Fitted[], thick: number): boolean {
  const middles = fits.map(({ middle }) => middle);
  const widths = fits.map(({ width }) => width);
  return (
    fits.length > BANDS / 2 &&
    Math.max(...middles) - Math.min(...middles) < thick &&
    Math.max(...widths) - Math.min(...widths) < thick &&
    meanOf(widths) < 3 * thick
  );
}

/** The height of a bed's lower (+1) or upper (−1) edge along the wall. */
function edgeOf(bed: readonly Fitted[], way: 1 | -1): (x: number) => number {
  const line = lineThrough(bed.map(({ along, middle }) => ({ x: along, y: middle })));
  const half = meanOf(bed.map(({ width }) => width)) / 2;
  return (x) => line.y + line.slope * (x - line.x) + way * half;
}

function heightAt(top: number, bottom: number, share: number): number {
  return top + (bottom - top) * share;
}

function toneBetween({ width, height, tone }: Square, x: number, from: number, to: number): number {
  const first = Math.max(0, Math.round(from));
  const last = Math.min(height - 1, Math.max(first, Math.round(to) - 1));
  const column = new Float64Array(last - first + 1);
  for (let y = first; y <= last; y++) column[y - first] = tone[y * width + x] ?? 0;
  return medianOf(column);
}

function meanNear(values: Float64Array, at: number, half: number): number {
  const reach = Math.max(1, Math.round(half));
  return meanOf([...values.subarray(Math.max(0, at - reach), at + reach + 1)]);
}
