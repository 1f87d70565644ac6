import type { Point, Ring } from '../geometry/polygon';
import { formatLength, type LengthSystem, type Mm } from '../units';
import { type Area, type Label, lines, type Shape } from './shape';

const LINE = { paint: '--slate', width: 1, thin: true } as const;

/** From here up a length is taken with a tape, mm. */
const TAPE_FROM: Mm = 500;

/** A dimension line with ticks and its text, in the reader's system. */
export interface Dimension {
  readonly shapes: readonly Shape[];
  readonly label: Label;
}

/** Along x at height y, between two places in either order; `reach` is half the length of a tick, `rise` the gap from the line to the middle of the text. */
export function lengthDimension(
  one: Mm,
  other: Mm,
  y: Mm,
  reach: Mm,
  rise: Mm,
  system: LengthSystem,
): Dimension {
  const [from, to] = [Math.min(one, other), Math.max(one, other)];
  return {
    shapes: ticked(from, to, reach, (along, aside) => [along, y + aside]),
    label: { at: [(from + to) / 2, y + rise], text: lengthText(to - from, system), anchor: 'middle' },
  };
}

/** Along y at x, between two places in either order; the text reads upward, `away` to the left of the line. */
export function heightDimension(
  one: Mm,
  other: Mm,
  x: Mm,
  reach: Mm,
  away: Mm,
  system: LengthSystem,
): Dimension {
  const [from, to] = [Math.min(one, other), Math.max(one, other)];
  return {
    shapes: ticked(from, to, reach, (along, aside) => [x + aside, along]),
    label: {
      at: [x - away, (from + to) / 2],
      text: lengthText(to - from, system),
      anchor: 'middle',
      upright: true,
    },
  };
}

/** Level or upright between two points of a sheet that is not to scale, with what is written on it: above the line, or to its right. */
export function writtenDimension([x1, y1]: Point, [x2, y2]: Point, text: string): Dimension {
  if (y1 === y2) {
    return {
      shapes: ticked(x1, x2, 6, (along, aside) => [along, y1 + aside]),
      label: { at: [(x1 + x2) / 2, y1 + 14], text, anchor: 'middle' },
    };
  }
  return {
    shapes: ticked(y1, y2, 6, (along, aside) => [x1 + aside, along]),
    label: { at: [x1 + 10, (y1 + y2) / 2], text, anchor: 'start' },
  };
}

/** The line, a stroke across it at 45° and a square one at each end. `at` turns a place along and beside the line to the sheet. */
function ticked(from: Mm, to: Mm, reach: Mm, at: (along: Mm, aside: Mm) => Point): readonly Shape[] {
  const slant = reach * 0.6;
  return [
    plain([at(from, 0), at(to, 0)]),
    ...[from, to].map((end) => plain([at(end - slant, -slant), at(end + slant, slant)], 1.8)),
    ...[from, to].map((end) => plain([at(end, -reach), at(end, reach)])),
  ];
}

/** Long lengths to the millimetre, as a tape is read; short ones to a tenth. */
function lengthText(long: Mm, system: LengthSystem): string {
  return formatLength(system === 'mm' && long >= TAPE_FROM ? Math.round(long) : long, system);
}

function plain(points: Ring, width = 1): Area {
  return lines([points], { ...LINE, width });
}
