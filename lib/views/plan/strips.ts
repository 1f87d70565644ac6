import { lengthDimension } from '../../drawing/dimension';
import { type Drawing, type Label, moved, type Shape, type Spot } from '../../drawing/shape';
import type { Mm } from '../../units';
import type { Placed } from '../../wall/survey';

/** A plan is broken where it is longer than this, mm: in one piece it would be a thread on a phone. */
const MOST: Mm = 1500;
/** Beside a strip, mm. */
const MARGIN: Mm = 60;

/** What a plan is made of, each piece where it lies along the wall: x along, out of the wall down (y = −z). */
export interface PlanPiece {
  /** Where its middle lies along the wall, mm: it decides the strip. */
  readonly middle: Mm;
  readonly shapes: readonly Shape[];
  readonly labels?: readonly Label[];
  readonly spots?: readonly Spot[];
}

export interface Strip {
  readonly from: Mm;
  readonly to: Mm;
}

/** A length in about equal parts, none much longer than a strip may be, broken at the nearest of the places where it may be. */
export function stripsOf(from: Mm, to: Mm, breaks: readonly Mm[]): readonly Strip[] {
  const count = Math.max(1, Math.ceil((to - from) / MOST));
  const ends = Array.from({ length: count }, (_, index): Mm => {
    if (index === count - 1) return to;
    const wanted = from + ((index + 1) * (to - from)) / count;
    return breaks.reduce(
      (best, each) => (Math.abs(each - wanted) < Math.abs(best - wanted) ? each : best),
      breaks[0] ?? wanted,
    );
  });
  return ends.map((end, index) => ({ from: ends[index - 1] ?? from, to: end }));
}

/** Where a plan may be broken: in the middle of each head joint of a course. */
export function breaksIn(course: readonly Pick<Placed, 'unit' | 'right'>[]): readonly Mm[] {
  return course.flatMap(({ unit, right }) =>
    right === null ? [] : [(unit.x + unit.length + right.unit.x) / 2],
  );
}

/** A plan in strips one under another, the leftmost at the top; `backing` draws what runs along a whole strip, behind all else. */
export function planInStrips(plan: {
  readonly strips: readonly Strip[];
  /** Depth of the plan: from the back of the wall to what stands out in front of the face. */
  readonly behind: Mm;
  readonly before: Mm;
  readonly backing: (strip: Strip) => readonly Shape[];
  readonly pieces: readonly PlanPiece[];
  readonly title: string;
  readonly from: (x: Mm) => string;
}): Omit<Drawing, 'frames'> {
  const { strips, behind, before, backing, pieces, title, from } = plan;
  const long = Math.max(...strips.map((strip) => strip.to - strip.from));
  // A line of text on a phone.
  const line = long * 0.06;
  const pitch = behind + before + 3 * line;
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  const spots: Spot[] = [];
  for (const [index, strip] of strips.entries()) {
    const dx = 0 - strip.from;
    const dy = 0 - index * pitch;
    shapes.push(...backing(strip).map((shape) => moved(shape, dx, dy)));
    const last = index === strips.length - 1;
    const here = pieces.filter(
      ({ middle }) => (index === 0 || middle >= strip.from) && (last || middle < strip.to),
    );
    for (const piece of here) {
      shapes.push(...piece.shapes.map((shape) => moved(shape, dx, dy)));
      spots.push(...(piece.spots ?? []).map((spot) => ({ ...spot, x: spot.x + dx, y: spot.y + dy })));
      labels.push(
        ...(piece.labels ?? []).map((label) => ({
          ...label,
          at: [label.at[0] + dx, label.at[1] + dy] as const,
        })),
      );
    }
    const low = dy - before - line * 0.4;
    shapes.push(...lengthDimension(0, strip.to - strip.from, low, line * 0.2, 0, 'mm').shapes);
    labels.push(
      { at: [0, low - line * 0.8], text: from(strip.from), anchor: 'start' },
      { at: [strip.to - strip.from, low - line * 0.8], text: from(strip.to), anchor: 'end' },
    );
  }
  const high = behind + 1.7 * line;
  labels.push({ at: [0, behind + 0.9 * line], text: title, anchor: 'start', strong: true, ofLook: true });
  const low = 0 - (strips.length - 1) * pitch - before - 2 * line;
  return {
    box: { x: -MARGIN, y: low, width: long + 2 * MARGIN, height: high - low },
    shapes,
    labels,
    spots,
  };
}
