import type { Drawing } from '../../../lib/drawing/shape';
import { distanceTo, grown } from '../../../lib/geometry/box';
import type { Mm } from '../../../lib/units';
import { type Picked, pickAt } from '../../../lib/views/pointing/pick';
import type { Part } from '../../../lib/wall/parts';

/** How a finger points: bare, or in a glove. */
export type Touch = 'bare' | 'gloved';

/** A finger needs courses at least this high to tell parts apart; a first tap brings them to the working height, px. A glove needs more. */
const COURSES: Readonly<Record<Touch, { readonly least: number; readonly working: number }>> = {
  bare: { least: 44, working: 84 },
  gloved: { least: 64, working: 108 },
};

/** How far a pointer strays from what it is meant to touch, px: a finger by a finger's breadth, a mouse by hardly anything. */
const STRAYS = { touch: 16, other: 6 };

/** Whether courses stand high enough on the screen to be told apart by a bare finger. */
export function isNear(courseHigh: Mm, mmPerPx: Mm): boolean {
  return courseHigh / mmPerPx >= COURSES.bare.least;
}

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
    // Beside its edge a large part may well not be what was meant.
    const isLarge =
      picked !== null &&
      parts.get(picked.part)?.kind !== 'panel' &&
      Math.min(picked.spot.width, picked.spot.height) / mmPerPx >= least &&
      distanceTo(grown(picked.spot, -reach), x, y) === 0;
    if (high < least && !isLarge) return { kind: 'nearer', by: working / high };
  }
  return picked && { kind: 'part', picked };
}

/** How the reader's finger points, as set for the site. */
export function touchOf(): Touch {
  return document.documentElement.dataset.targets === 'gloves' ? 'gloved' : 'bare';
}
