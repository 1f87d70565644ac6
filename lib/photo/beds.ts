import type { Fitted } from './joint';
import { fitJoint } from './joint-fit';
import type { Square } from './picture';
import { inliers, levelled, lineThrough, medianOf, peaksOf, periodOf, signOf } from './rows';

/** Courses are looked for from this high to this high, mm. */
const LEAST_COURSE = 25;
const MOST_COURSE = 400;
/** What is longer than this in the picture is light and shade, not joints, mm. */
const SHADE = 400;
/** The strip of a bed that is fitted at once, in courses. */
const STRIP = 0.27;
/** How far either side of the middle of a joint the fit looks, in courses. */
const REACH = 0.42;
/** A joint is between so thick and so thick, in courses. */
export const THIN = 0.02;
export const THICK = 0.4;

export interface FoundBeds {
  readonly course: number;
  /** +1 where mortar is the lighter, −1 where it is the darker. */
  readonly sign: 1 | -1;
  readonly likeness: number;
  readonly beds: readonly (readonly Fitted[])[];
  /** Strips that were fitted, over all that were tried. */
  readonly share: number;
  /** Typical step of tone from unit to mortar, and softness (mm). */
  readonly step: number;
  readonly soft: number;
}

/** The beds of a wall seen square on, from the top down; undefined where nothing repeats up the wall. */
export function bedsOf(square: Square): FoundBeds | undefined {
  const { width, height, scale, tone } = square;
  const profile = new Float64Array(height);
  for (let row = 0; row < height; row++)
    profile[row] = medianOf(tone.subarray(row * width, (row + 1) * width));
  const flat = levelled(profile, Math.round(Math.min((SHADE / 2) * scale, height / 4)));
  const sign = signOf(flat);
  const period = periodOf(flat, LEAST_COURSE * scale, Math.min(MOST_COURSE * scale, height / 2.5));
  if (period === undefined) return undefined;
  const course = period.lag;
  const rising = flat.map((value) => sign * value);
  const top = medianOf(peaksOf(rising, 0.6 * course, 0).map((at) => rising[at] ?? 0));
  const rows = peaksOf(rising, 0.6 * course, 0.4 * top).filter(
    (row) => row > 0.15 * course && row < height - 0.15 * course,
  );
  const strip = Math.max(4, Math.round(STRIP * course));
  const free = rows.map((row) => stripsAt(square, row, course, strip, sign));
  const all = free.flat();
  if (all.length === 0) return undefined;
  const soft = medianOf(all.map((each) => each.soft));
  const step = medianOf(all.map((each) => each.step));
  const held = rows.map((row) => stripsAt(square, row, course, strip, sign, soft * scale, step));
  const tried = rows.length * Math.floor(width / strip);
  return {
    course: course / scale,
    sign,
    likeness: period.likeness,
    beds: held.map(straight).filter((bed) => bed.length >= Math.max(4, (0.35 * width) / strip)),
    share: held.flat().length / tried,
    step,
    soft,
  };
}

/** Fits of one bed, strip by strip from the middle outwards, each looked for where the last one was. */
function stripsAt(
  square: Square,
  row: number,
  course: number,
  strip: number,
  sign: 1 | -1,
  soft?: number,
  step = 0,
): readonly Fitted[] {
  const count = Math.floor(square.width / strip);
  const middle = count >> 1;
  const found: Fitted[] = [];
  for (const way of [1, -1]) {
    let near = row;
    for (let index = way === 1 ? middle : middle - 1; index >= 0 && index < count; index += way) {
      const fitted = fitStrip(square, index * strip, strip, near, course, soft);
      if (fitted === undefined || fitted.step * sign < 0.4 * Math.abs(step)) continue;
      const at = fitted.middle * square.scale - 0.5;
      if (fitted.step * sign <= 0 || Math.abs(at - near) > 0.12 * course) continue;
      found.push(fitted);
      near += (at - near) / 2;
    }
  }
  return found.sort((a, b) => a.along - b.along);
}

function fitStrip(
  { width, height, scale, tone }: Square,
  left: number,
  strip: number,
  near: number,
  course: number,
  soft?: number,
): Fitted | undefined {
  const from = Math.max(0, Math.round(near - REACH * course));
  const to = Math.min(height, Math.round(near + REACH * course) + 1);
  const tones = new Float64Array(to - from);
  for (let row = from; row < to; row++) {
    const start = row * width + left;
    tones[row - from] = medianOf(tone.subarray(start, start + strip));
  }
  const fit = fitJoint(
    tones,
    { middle: near - from, width: 0.13 * course, soft: soft ?? Math.max(1, 0.02 * course) },
    soft !== undefined,
  );
  if (fit === undefined || fit.width < THIN * course || fit.width > THICK * course) return undefined;
  if (fit.left > 0.35 * Math.abs(fit.step)) return undefined;
  return {
    along: (left + strip / 2) / scale,
    middle: (from + fit.middle + 0.5) / scale,
    width: fit.width / scale,
    step: fit.step,
    soft: fit.soft / scale,
  };
}

/** The strips that lie in one line and are about as thick as the others. */
export function straight(strips: readonly Fitted[]): readonly Fitted[] {
  let kept = strips;
  for (let turn = 0; turn < 3 && kept.length > 3; turn++) {
    const line = lineThrough(kept.map(({ along, middle }) => ({ x: along, y: middle })));
    const off = inliers(kept.map(({ along, middle }) => middle - line.y - line.slope * (along - line.x)));
    const thick = inliers(kept.map(({ width }) => width));
    kept = kept.filter((_, index) => off[index] && thick[index]);
  }
  return kept;
}
