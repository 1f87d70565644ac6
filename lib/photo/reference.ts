import type { Mm } from '../units';
import { aspectOf } from './aspect';
import { type Corners, homographyOf } from './homography';
import { type Frame, unbent } from './lens';
import { type Matrix, mapped, type Spot } from './matrix';
import { PhotoError } from './photo-error';
import type { Parameter } from './propagate';

/** A length on the wall between two points of the picture. */
export interface Length {
  readonly from: Spot;
  readonly to: Spot;
  readonly mm: Mm;
}

/** What says how large the wall is: always four corners of a rectangle on it, and what is known of its size. */
export type Reference = { readonly corners: Corners } & (
  | { readonly kind: 'rectangle'; readonly width: Mm; readonly height: Mm }
  | { readonly kind: 'two lengths'; readonly across: Length; readonly up: Length }
  /** The focal length in pixels. */
  | { readonly kind: 'one length'; readonly length: Length; readonly focal: number }
  /** So many units and so many courses, each with a joint, of units of a known size. */
  | {
      readonly kind: 'counts';
      readonly units: number;
      readonly courses: number;
      readonly unit: { readonly length: Mm; readonly height: Mm };
      readonly joint: Mm;
    }
);

/** Standard deviations: a corner pointed out in the picture (px), a length by tape, the lens's bending, the reference off the face (mm). */
export const SD = { corner: 1.5, tape: 1, lens: 0.01, offFace: 3, focal: 0.03, unit: 0.02 } as const;

/** From the picture to the wall, for one choice of all parameters. */
export interface Mapping {
  readonly width: Mm;
  readonly height: Mm;
  readonly lens: number;
  /** Straightened pixels to mm from the rectangle's top left corner. */
  readonly matrix: Matrix;
  readonly toWall: (pixel: Spot) => Spot;
}

const CORNERS = 8;

/** Everything the mapping hangs on: the corners, what is known of the size, the lens, and how far the reference stands off the face. */
export function parametersOf(reference: Reference): readonly Parameter[] {
  return [
    ...reference.corners.flatMap(({ x, y }) => [at(x, SD.corner), at(y, SD.corner)]),
    at(0, SD.lens),
    at(0, SD.offFace),
    ...sizeParameters(reference),
  ];
}

function sizeParameters(reference: Reference): readonly Parameter[] {
  switch (reference.kind) {
    case 'rectangle':
      return [at(reference.width, SD.tape), at(reference.height, SD.tape)];
    case 'two lengths':
      return [...ends(reference.across), ...ends(reference.up)];
    case 'one length':
      return [...ends(reference.length), at(reference.focal, SD.focal * reference.focal)];
    case 'counts': {
      const { units, courses, unit, joint } = reference;
      const [width, height] = [units * (unit.length + joint), courses * (unit.height + joint)];
      return [at(width, SD.unit * width), at(height, SD.unit * height)];
    }
  }
}

function ends({ from, to, mm }: Length): readonly Parameter[] {
  return [...[from.x, from.y, to.x, to.y].map((value) => at(value, SD.corner)), at(mm, SD.tape)];
}

function at(value: number, sd: number): Parameter {
  return { value, sd };
}

/**
 * The mapping for one value of each parameter, in their order.
 * @param distance of the camera from the wall, mm, roughly: a reference that stands off the face is seen larger by their ratio.
 */
export function mappingAt(
  kind: Reference['kind'],
  frame: Frame,
  distance: Mm,
  values: readonly number[],
): Mapping {
  const [lens = 0, offFace = 0, ...size] = values.slice(CORNERS);
  const straight = (x = 0, y = 0) => unbent(frame, lens, { x, y });
  const [x1, y1, x2, y2, x3, y3, x4, y4] = values;
  const corners: Corners = [straight(x1, y1), straight(x2, y2), straight(x3, y3), straight(x4, y4)];
  const [width, height] = sizeOf(kind, frame, corners, size, straight);
  const by = 1 + offFace / distance;
  const matrix = homographyOf(corners, rectangle(width * by, height * by));
  return {
    width,
    height,
    lens,
    matrix,
    toWall: (pixel) => mapped(matrix, unbent(frame, lens, pixel)),
  };
}

export function rectangle(width: number, height: number): Corners {
  return [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
}

function sizeOf(
  kind: Reference['kind'],
  frame: Frame,
  corners: Corners,
  size: readonly number[],
  straight: (x?: number, y?: number) => Spot,
): readonly [width: Mm, height: Mm] {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, ...more] = size;
  if (kind === 'rectangle' || kind === 'counts') return [a, b];
  const toUnit = homographyOf(corners, rectangle(1, 1));
  const first = run(mapped(toUnit, straight(a, b)), mapped(toUnit, straight(c, d)));
  if (kind === 'one length') {
    const aspect = aspectOf(frame, corners, more[0] ?? 0);
    const height = e / Math.sqrt(first.x * aspect * aspect + first.y);
    return [aspect * height, height];
  }
  const [f, g, h, i, other = 0] = more;
  const second = run(mapped(toUnit, straight(f, g)), mapped(toUnit, straight(h, i)));
  const under = first.x * second.y - first.y * second.x;
  const [width, height] = [
    (e * e * second.y - other * other * first.y) / under,
    (other * other * first.x - e * e * second.x) / under,
  ];
  if (!(width > 0 && height > 0))
    throw new PhotoError('the two lengths: one must run along the wall and the other up it');
  return [Math.sqrt(width), Math.sqrt(height)];
}

/** The squares of how far two points lie apart along and up. */
function run(from: Spot, to: Spot): Spot {
  return { x: (to.x - from.x) ** 2, y: (to.y - from.y) ** 2 };
}
