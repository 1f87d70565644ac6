import type { Drawing, Label, Shape } from '../drawing/shape';
import { pathText } from '../drawing/svg-nodes';
import type { Box } from '../geometry/box';
import type { Point, Ring } from '../geometry/polygon';
import { isRecord, readJson } from '../json/read-json';

/** An area as it is sent: its rings as the path that is drawn, in tenths of a millimetre. */
type SentShape =
  | (Omit<Extract<Shape, { kind: 'area' }>, 'rings'> & { readonly path: string })
  | Extract<Shape, { kind: 'dot' }>;

/** A drawing on its way to a device. */
export interface SentLook {
  readonly box: Box;
  readonly shapes: readonly SentShape[];
  readonly labels: readonly Label[];
  readonly frames: Drawing['frames'];
  readonly spots: Drawing['spots'];
  readonly haze?: NonNullable<Drawing['haze']>;
}

/** What is `seen` of a wall, with what one points at in the drawing of its `bare` wall: words that a drawing says of the work stay behind. */
export function sentLook(seen: Drawing, bare: Drawing): SentLook {
  return {
    box: bare.box,
    shapes: seen.shapes.map((shape) => {
      if (shape.kind === 'dot') return shape;
      const { rings, ...look } = shape;
      return { ...look, path: pathText(rings, shape.open === true) };
    }),
    labels: seen.labels.filter(({ ofLook }) => ofLook === true),
    frames: bare.frames,
    spots: bare.spots,
    ...(seen.haze && { haze: seen.haze }),
  };
}

/** Reads a look as the site sent it. @throws TypeError for anything else, such as the answer of a network that wants one to sign in first. */
export function parseLook(text: string): Drawing {
  const loose = readJson(text);
  if (!isLook(loose)) throw new TypeError('this is no look of the site');
  return drawingOfLook(loose);
}

export function drawingOfLook({ shapes, ...look }: SentLook): Drawing {
  return {
    ...look,
    shapes: shapes.map((shape) => {
      if (shape.kind === 'dot') return shape;
      const { path, ...area } = shape;
      return { ...area, rings: ringsOf(path) };
    }),
  };
}

/** Its lists are not gone through: the site made it. */
export function isLook(value: unknown): value is SentLook {
  return (
    isRecord(value) &&
    isRecord(value.box) &&
    ['shapes', 'labels', 'frames', 'spots'].every((list) => Array.isArray(value[list]))
  );
}

/** The inverse of pathText. */
function ringsOf(path: string): readonly Ring[] {
  const rings: Point[][] = [];
  let [x, y] = [0, 0];
  for (const [, step = '', rest = ''] of path.matchAll(/([Mhvl])([^Mhvlz]*)/g)) {
    const [one = 0, two = 0] = rest.split(' ').map((each) => Math.round(Number(each) * 10));
    if (step === 'M') {
      [x, y] = [one, two];
      rings.push([]);
    } else {
      x += step === 'v' ? 0 : one;
      y += step === 'h' ? 0 : step === 'v' ? one : two;
    }
    // Up on the wall is down in a path.
    rings.at(-1)?.push([x / 10, 0 - y / 10]);
  }
  return rings;
}
