import type { Ring } from '../geometry/polygon';
import { formatLength, type LengthSystem, type Mm } from '../units';
import type { Area, Label, Shape } from './shape';

const LINE = { paint: '--slate', width: 1, thin: true } as const;

/** From here up a length is taken with a tape, mm. */
const TAPE_FROM: Mm = 500;

/** A dimension line with ticks and its text, in the reader's system. */
export interface Dimension {
  readonly shapes: readonly Shape[];
  readonly label: Label;
}

/** Along x at height y; `reach` is half the length of a tick, `rise` the gap from the line to the middle of the text. */
export function lengthDimension(
  from: Mm,
  to: Mm,
  y: Mm,
  reach: Mm,
  rise: Mm,
  system: LengthSystem,
): Dimension {
  return {
    shapes: [
      plain([
        [from, y],
        [to, y],
      ]),
      plain(
        [
          [from - reach * 0.6, y - reach * 0.6],
          [from + reach * 0.6, y + reach * 0.6],
        ],
        1.8,
      ),
      plain(
        [
          [to - reach * 0.6, y - reach * 0.6],
          [to + reach * 0.6, y + reach * 0.6],
        ],
        1.8,
      ),
      plain([
        [from, y - reach],
        [from, y + reach],
      ]),
      plain([
        [to, y - reach],
        [to, y + reach],
      ]),
    ],
    label: { at: [(from + to) / 2, y + rise], text: lengthText(to - from, system), anchor: 'middle' },
  };
}

/** Along y at x; the text reads upward, `away` to the left of the line. */
export function heightDimension(
  from: Mm,
  to: Mm,
  x: Mm,
  reach: Mm,
  away: Mm,
  system: LengthSystem,
): Dimension {
  return {
    shapes: [
      plain([
        [x, from],
        [x, to],
      ]),
      plain(
        [
          [x - reach * 0.6, from - reach * 0.6],
          [x + reach * 0.6, from + reach * 0.6],
        ],
        1.8,
      ),
      plain(
        [
          [x - reach * 0.6, to - reach * 0.6],
          [x + reach * 0.6, to + reach * 0.6],
        ],
        1.8,
      ),
      plain([
        [x - reach, from],
        [x + reach, from],
      ]),
      plain([
        [x - reach, to],
        [x + reach, to],
      ]),
    ],
    label: {
      at: [x - away, (from + to) / 2],
      text: lengthText(to - from, system),
      anchor: 'middle',
      upright: true,
    },
  };
}

/** Long lengths to the millimetre, as a tape is read; short ones to a tenth. */
function lengthText(long: Mm, system: LengthSystem): string {
  return formatLength(system === 'mm' && long >= TAPE_FROM ? Math.round(long) : long, system);
}

function plain(points: Ring, width = 1): Area {
  return { kind: 'area', rings: [points], open: true, pen: { ...LINE, width } };
}
