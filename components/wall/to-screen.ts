import { turned } from '../../lib/drawing/svg-nodes';
import type { Box } from '../../lib/geometry/box';
import type { Point } from '../../lib/geometry/polygon';

/** A box on the screen, in client pixels. */
export interface ScreenBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Millimetres of the sheet to one pixel when `seen` is fitted whole into the screen box; 4 while the screen has no size yet. */
export function mmPerPixel(seen: Box, screen: { readonly width: number; readonly height: number }): number {
  if (screen.width <= 0 || screen.height <= 0) return 4;
  return Math.max(seen.width / screen.width, seen.height / screen.height);
}

/** The point of the sheet (mm, y up) under a client point. The drawing is centred in its box, as SVG does by itself. */
export function sheetPoint(seen: Box, screen: ScreenBox, clientX: number, clientY: number): Point {
  const scale = mmPerPixel(seen, screen);
  const right = clientX - screen.left - screen.width / 2;
  const down = clientY - screen.top - screen.height / 2;
  return [seen.x + seen.width / 2 + right * scale, seen.y + seen.height / 2 + turned(down) * scale];
}
