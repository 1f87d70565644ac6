import type { Point, Ring } from '../geometry/polygon';
import { inches, type LengthSystem, type Mm } from '../units';
import { lines, type Pieces, rect, type Shape } from './shape';

/** Marks of a tape: every step, a number at each fifth (mm) or fourth (inches, at the stud mark of sixteen). */
const STEPS: Readonly<
  Record<LengthSystem, { readonly step: Mm; readonly each: number; readonly unit: number }>
> = {
  mm: { step: 100, each: 5, unit: 100 },
  inches: { step: inches(4), each: 4, unit: 4 },
};
const WIDE: Mm = 52;
const BLADE = '#e8c65a';

/** A tape along the foot of a panel: zero at its left end, its upper edge at `y`. */
export function alongTape(x: Mm, long: Mm, y: Mm, system: LengthSystem): Pieces {
  const { step, each, unit } = STEPS[system];
  return {
    shapes: [
      rect({ x, y: y - WIDE, width: long, height: WIDE }, BLADE),
      marks(long, system, (along, aside) => [x + along, y - aside]),
    ],
    labels: numbered(long, system).map((mark) => ({
      at: [x + mark * step, y - WIDE],
      rise: -0.85,
      text: `${mark * unit}`,
      ofLook: true,
      anchor: 'middle',
      room: step * each * 0.9,
    })),
  };
}

/** A tape up the left side: zero at the ledge, its right edge at `x`. */
export function upTape(x: Mm, high: Mm, system: LengthSystem): Pieces {
  const { step, each, unit } = STEPS[system];
  return {
    shapes: [
      rect({ x: x - WIDE, y: 0, width: WIDE, height: high }, BLADE),
      marks(high, system, (along, aside) => [x - aside, along]),
    ],
    labels: numbered(high, system).map((mark) => ({
      at: [x - WIDE - 24, mark * step],
      text: `${mark * unit}`,
      ofLook: true,
      anchor: 'end',
      room: step * each,
    })),
  };
}

/** A stroke at each step, across the whole blade where a number stands. `at` turns a place along and across the blade to the sheet. */
function marks(long: Mm, system: LengthSystem, at: (along: Mm, aside: Mm) => Point): Shape {
  const { step, each } = STEPS[system];
  return lines(
    marksTo(long, step).map((mark): Ring => {
      const along = mark * step;
      return [at(along, 0), at(along, mark % each === 0 ? WIDE : WIDE * 0.42)];
    }),
    { paint: '#2a2410', width: 1.2, thin: true },
  );
}

function numbered(long: Mm, system: LengthSystem): readonly number[] {
  const { step, each } = STEPS[system];
  return marksTo(long, step).filter((mark) => mark % each === 0);
}

function marksTo(long: Mm, step: Mm): readonly number[] {
  return Array.from({ length: Math.floor(long / step) + 1 }, (_, index) => index);
}
