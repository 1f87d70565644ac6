import type { Box } from '../geometry/box';
import { type Point, type Ring, rectRing } from '../geometry/polygon';
import type { Mm } from '../units';

/** '#rrggbb', a colour of the page ('--slate'), or a shared fill of the drawing ('url:fleck'). */
export type Paint = string;

export interface Pen {
  readonly paint: Paint;
  /** Width in mm; with `thin` in screen pixels at every zoom. */
  readonly width: number;
  readonly thin?: boolean;
  readonly dash?: readonly number[];
  readonly opacity?: number;
}

/** Polygons (or open lines) drawn as one path. */
export interface Area {
  readonly kind: 'area';
  readonly rings: readonly Ring[];
  readonly fill?: Paint;
  readonly opacity?: number;
  readonly pen?: Pen;
  /** Lines are left open. */
  readonly open?: boolean;
}

export interface Dot {
  readonly kind: 'dot';
  readonly at: Point;
  readonly radius: Mm;
  readonly fill: Paint;
  readonly pen?: Pen;
}

export type Shape = Area | Dot;

/** Text of one size on the screen, whatever the zoom, unless it is written on a thing. Left out while there is less than `room` mm for it. */
export interface Label {
  readonly at: Point;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Reads upward. */
  readonly upright?: boolean;
  readonly room?: Mm;
  /** How far above `at` its middle stands, in sizes of the text. */
  readonly rise?: number;
  /** Shown only while that label has too little room. */
  readonly standsFor?: Label;
  readonly strong?: boolean;
  /** Stands on a plate of paper, for text over a drawing. */
  readonly plate?: boolean;
  /** Says which look this is, or its scale, and nothing of the work. No other label goes to the learner of a test. */
  readonly ofLook?: true;
  /** Written on paper that is drawn: this large on the sheet, mm, but never smaller than other texts; dark by night too. */
  readonly written?: Mm;
}

/** Part of a drawing, with its words. */
export interface Pieces {
  readonly shapes: readonly Shape[];
  readonly labels: readonly Label[];
}

/** Where the face of a panel lies on the sheet: sheet = origin + scale × face. */
export interface Frame {
  readonly panel: string;
  readonly x: Mm;
  readonly y: Mm;
  readonly scale: number;
}

/** A part of the wall that can be pointed at, and its box on the sheet. */
export interface Spot extends Box {
  readonly part: string;
}

/** One view of a wall, ready to be drawn: shapes from back to front. */
export interface Drawing {
  readonly box: Box;
  readonly shapes: readonly Shape[];
  readonly labels: readonly Label[];
  readonly frames: readonly Frame[];
  readonly spots: readonly Spot[];
  /** The shapes from `first` on are the faces of these parts, one each: on a page they may be what one points at. */
  readonly faces?: { readonly first: number; readonly parts: readonly string[] };
  /** Seen from afar: the first `shapes` shapes are blurred by this standard deviation, mm. */
  readonly haze?: { readonly blur: Mm; readonly shapes: number };
}

/** Where a box on the face of a frame's panel lies on the sheet. */
export function onSheet({ x, y, scale }: Frame, box: Box): Box {
  return {
    x: x + scale * box.x,
    y: y + scale * box.y,
    width: scale * box.width,
    height: scale * box.height,
  };
}

export function rect(box: Box, fill: Paint, opacity?: number): Area {
  const rings = [rectRing(box.x, box.y, box.width, box.height)];
  return opacity === undefined ? { kind: 'area', rings, fill } : { kind: 'area', rings, fill, opacity };
}

export function polygon(points: Ring, fill: Paint, opacity?: number): Area {
  return opacity === undefined
    ? { kind: 'area', rings: [points], fill }
    : { kind: 'area', rings: [points], fill, opacity };
}

/** A thing with its outline. */
export function solid(points: Ring, fill: Paint, pen: Pen, opacity = 1): Area {
  return { kind: 'area', rings: [points], fill, opacity, pen };
}

export function lines(rings: readonly Ring[], pen: Pen): Area {
  return { kind: 'area', rings, pen, open: true };
}

export function labelAt(x: Mm, y: Mm, text: string, anchor: Label['anchor'] = 'middle'): Label {
  return { at: [x, y], text, anchor };
}

/** The shapes moved by (x, y) on the sheet. */
export function moved(shape: Shape, x: Mm, y: Mm): Shape {
  const move = ([px, py]: Point): Point => [px + x, py + y];
  return shape.kind === 'dot'
    ? { ...shape, at: move(shape.at) }
    : { ...shape, rings: shape.rings.map((ring) => ring.map(move)) };
}

/** A shape of a panel of this length, left and right changed over. */
export function flipped(shape: Shape, length: Mm): Shape {
  const flip = ([x, y]: Point): Point => [length - x, y];
  return shape.kind === 'dot'
    ? { ...shape, at: flip(shape.at) }
    : { ...shape, rings: shape.rings.map((ring) => ring.map(flip)) };
}
