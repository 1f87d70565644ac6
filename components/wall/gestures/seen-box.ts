import type { Box } from '../../../lib/geometry/box';
import type { Point } from '../../../lib/geometry/polygon';
import type { View } from '../../../lib/views/view';

/** Nearest that one may look: this share of the whole drawing's width. */
const NEAREST = 1 / 40;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** `box` made longer or higher about its middle until it has the shape of the screen, and with it no more than the whole. */
export function fitted(whole: Box, box: Box, screen: Size): Box {
  if (screen.width <= 0 || screen.height <= 0) return box;
  const scale = Math.max(box.width / screen.width, box.height / screen.height);
  return ofSize(whole, box, Math.min(scale * screen.width, furthest(whole, screen)), screen);
}

/**
 * Where a wall is first seen from: near enough that `core` (the wall without what stands round it) just fits, and nearer if the sheet
 * would leave blank paper beside it. A long wall on a narrow screen then goes on past both sides.
 */
export function firstSeen(whole: Box, core: Box, screen: Size): Box {
  if (screen.width <= 0 || screen.height <= 0) return whole;
  const fits = Math.max(core.width / screen.width, core.height / screen.height);
  const fills = Math.min(whole.width / screen.width, whole.height / screen.height);
  return ofSize(whole, core, Math.min(fits, fills) * screen.width, screen);
}

/** A box about the middle of another, so wide and of the shape of a screen. */
function ofSize(whole: Box, about: Box, width: number, screen: Size): Box {
  const height = (width * screen.height) / screen.width;
  const [x, y] = middleOf(about);
  return kept(whole, { x: x - width / 2, y: y - height / 2, width, height });
}

/** How wide a box of this shape is when all of the whole just fits in. */
function furthest(whole: Box, { width, height }: Size): number {
  return Math.max(whole.width, (whole.height * width) / height);
}

/** `seen` magnified by `factor` (over 1: nearer) about a point that stays where it is. */
export function zoomed(whole: Box, seen: Box, factor: number, [x, y]: Point): Box {
  const width = Math.min(furthest(whole, seen), Math.max(whole.width * NEAREST, seen.width / factor));
  const scale = width / seen.width;
  return kept(whole, {
    x: x - (x - seen.x) * scale,
    y: y - (y - seen.y) * scale,
    width,
    height: seen.height * scale,
  });
}

/** `seen` moved by (x, y) mm, never off the drawing. */
export function panned(whole: Box, seen: Box, x: number, y: number): Box {
  return kept(whole, { ...seen, x: seen.x + x, y: seen.y + y });
}

/** `seen` moved just far enough that `target` is in view, with a little room round it. */
export function brought(whole: Box, seen: Box, target: Box): Box {
  return kept(whole, {
    ...seen,
    x: nudged(seen.x, seen.width, target.x, target.width),
    y: nudged(seen.y, seen.height, target.y, target.height),
  });
}

/** A part of the drawing with `target` in its middle: three times as large as that, but at least an eighth of the whole. */
export function closeUp(whole: Box, target: Box): Box {
  const share = Math.max(target.width / whole.width, target.height / whole.height) * 3;
  const scale = Math.min(1, Math.max(0.125, share));
  const width = whole.width * scale;
  const height = whole.height * scale;
  return kept(whole, {
    x: target.x + target.width / 2 - width / 2,
    y: target.y + target.height / 2 - height / 2,
    width,
    height,
  });
}

function nudged(from: number, size: number, start: number, length: number): number {
  const room = Math.min(size * 0.08, Math.max(0, (size - length) / 2));
  if (length > size) return start + length / 2 - size / 2;
  return Math.min(start - room, Math.max(from, start + length + room - size));
}

/** Never off the drawing; what is larger than it has it in its middle. */
function kept(whole: Box, box: Box): Box {
  return {
    ...box,
    x: within(whole.x, whole.width, box.x, box.width),
    y: within(whole.y, whole.height, box.y, box.height),
  };
}

function within(start: number, length: number, from: number, size: number): number {
  if (size >= length) return start + (length - size) / 2;
  return Math.min(start + length - size, Math.max(start, from));
}

/** Sums of lengths are rounded: so much less still is the whole. */
const HAIR = 1e-6;

export function isWhole(whole: Box, seen: Box): boolean {
  return seen.width >= whole.width * (1 - HAIR) && isAllHigh(whole, seen);
}

/** Nothing lies above or below what is seen. */
export function isAllHigh(whole: Box, seen: Box): boolean {
  return seen.height >= whole.height * (1 - HAIR);
}

/** Views on one sheet share the place one has come to: the front in any light, a cut wherever it is made. */
export function sheetOf(view: View): string {
  switch (view.kind) {
    case 'side-section':
    case 'above':
      return `${view.kind} ${view.panel}`;
    case 'section':
      return `${view.kind} ${view.support}`;
    case 'below':
      return `${view.kind} ${view.at}`;
    default:
      return view.kind;
  }
}

export function middleOf({ x, y, width, height }: Box): [number, number] {
  return [x + width / 2, y + height / 2];
}
