import type { Box } from '../../../lib/geometry/box';
import type { Point } from '../../../lib/geometry/polygon';
import type { View } from '../../../lib/views/view';

/** Nearest that one may look: this share of the whole drawing's width. */
const NEAREST = 1 / 40;

/** `seen` magnified by `factor` (over 1: nearer) about a point that stays where it is. */
export function zoomed(whole: Box, seen: Box, factor: number, [x, y]: Point): Box {
  const width = Math.min(whole.width, Math.max(whole.width * NEAREST, seen.width / factor));
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

function kept(whole: Box, box: Box): Box {
  return {
    ...box,
    x: Math.min(whole.x + whole.width - box.width, Math.max(whole.x, box.x)),
    y: Math.min(whole.y + whole.height - box.height, Math.max(whole.y, box.y)),
  };
}

export function isWhole(whole: Box, seen: Box): boolean {
  return seen.width >= whole.width;
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
