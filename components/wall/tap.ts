import type { Drawing } from '../../lib/drawing/shape';
import type { Mm } from '../../lib/units';
import { type Picked, pickAt } from '../../lib/views/pointing/pick';
import type { Part } from '../../lib/wall/parts';

/** How a finger points: bare, or in a glove. */
export type Touch = 'bare' | 'gloved';

/** A finger needs courses at least this high to tell parts apart; a first tap brings them to the working height, px. A glove needs more. */
const COURSES: Readonly<Record<Touch, { readonly least: number; readonly working: number }>> = {
  bare: { least: 44, working: 72 },
  gloved: { least: 64, working: 100 },
};

/** How far a pointer strays from what it is meant to touch, px: a finger by a finger's breadth, a mouse by hardly anything. */
const STRAYS = { touch: 20, other: 6 };

/** What a tap comes to: the drawing comes nearer by this factor first, or it means a part. */
export type Tap =
  | { readonly kind: 'nearer'; readonly by: number }
  | { readonly kind: 'part'; readonly picked: Picked };

/**
 * A tap at a point of the sheet. A finger comes nearer first where courses (`courseHigh` mm) are too low on the screen to aim at, unless
 * what lies under it is large enough by itself. Null where there is nothing to mean.
 */
export function tapAt(
  drawing: Pick<Drawing, 'spots' | 'frames'>,
  parts: ReadonlyMap<string, Part>,
  at: { readonly x: Mm; readonly y: Mm; readonly mmPerPx: number; readonly courseHigh: Mm },
  by: Touch | 'mouse',
): Tap | null {
  const { x, y, mmPerPx, courseHigh } = at;
  const reach = (by === 'mouse' ? STRAYS.other : STRAYS.touch) * mmPerPx;
  const picked = pickAt(drawing, parts, x, y, reach);
  if (by !== 'mouse') {
    const { least, working } = COURSES[by];
    const high = courseHigh / mmPerPx;
    const isLarge =
      picked !== null &&
      parts.get(picked.part)?.kind !== 'panel' &&
      Math.min(picked.spot.width, picked.spot.height) / mmPerPx >= least;
    if (high < least && !isLarge) return { kind: 'nearer', by: working / high };
  }
  return picked && { kind: 'part', picked };
}

/** How the reader's finger points, as set for the site. */
export function touchOf(): Touch {
  return document.documentElement.dataset.targets === 'gloves' ? 'gloved' : 'bare';
}
