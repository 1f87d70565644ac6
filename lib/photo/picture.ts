import { bent, type Frame } from './lens';
import { inverse, mapped, type Spot } from './matrix';
import type { Mapping } from './reference';

/** A picture as a canvas gives it: red, green, blue and opacity of each pixel, from the top left, row by row. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array | Uint8ClampedArray;
}

/** A part of the wall seen square on, in one tone: `scale` pixels to a mm. */
export interface Square {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly tone: Float32Array;
  /** From a point of this picture (mm on the wall) to the photograph's pixels. */
  readonly toPixel: (wall: Spot) => Spot;
}

const MOST_PIXELS = 2_500_000;
const SAMPLES = 4000;
/** Where in the rectangle the fineness of the picture is tried. */
const PLACES = [0.05, 0.5, 0.95] as const;

/** The rectangle of the reference, square on, as fine as the photograph is where it is finest. */
export function squareOn(picture: Picture, mapping: Mapping): Square {
  const toPixel = backFrom(picture, mapping);
  const { most } = densityOf(picture, mapping);
  const scale = Math.min(most, Math.sqrt(MOST_PIXELS / (mapping.width * mapping.height)));
  const width = Math.floor(mapping.width * scale);
  const height = Math.floor(mapping.height * scale);
  const tones = tonesOf(picture, weightsOf(picture, mapping, toPixel));
  const tone = new Float32Array(width * height);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const pixel = toPixel({ x: (column + 0.5) / scale, y: (row + 0.5) / scale });
      tone[row * width + column] = toneAt(tones, picture, pixel);
    }
  }
  return { width, height, scale, tone, toPixel };
}

/** Pixels of the photograph to a mm of the wall, along it or up it, where they are fewest and where they are most. */
export function densityOf(
  frame: Frame,
  mapping: Mapping,
): { readonly fewest: number; readonly most: number } {
  const toPixel = backFrom(frame, mapping);
  const all = PLACES.flatMap((across) =>
    PLACES.flatMap((down) => {
      const [x, y] = [across * mapping.width, down * mapping.height];
      const here = toPixel({ x, y });
      return [toPixel({ x: x + 1, y }), toPixel({ x, y: y + 1 })].map((near) =>
        Math.hypot(near.x - here.x, near.y - here.y),
      );
    }),
  );
  return { fewest: Math.min(...all), most: Math.max(...all) };
}

/** From the wall (mm) back to the photograph's pixels. */
export function backFrom(frame: Frame, mapping: Mapping): (wall: Spot) => Spot {
  const back = inverse(mapping.matrix);
  return (wall) => bent(frame, mapping.lens, mapped(back, wall));
}

type Weights = readonly [red: number, green: number, blue: number];

/** How much each colour counts, so that mortar and units differ most: the first principal component of the colours between the corners. */
function weightsOf(picture: Picture, { width, height }: Mapping, toPixel: (wall: Spot) => Spot): Weights {
  const across = Math.round(Math.sqrt((SAMPLES * width) / height));
  const down = Math.ceil(SAMPLES / across);
  const colours: Weights[] = [];
  for (let column = 0; column < across; column++) {
    for (let row = 0; row < down; row++) {
      const spot = toPixel({ x: ((column + 0.5) / across) * width, y: ((row + 0.5) / down) * height });
      const [x, y] = [Math.floor(spot.x), Math.floor(spot.y)];
      if (x < 0 || y < 0 || x >= picture.width || y >= picture.height) continue;
      const at = 4 * (y * picture.width + x);
      colours.push([picture.data[at] ?? 0, picture.data[at + 1] ?? 0, picture.data[at + 2] ?? 0]);
    }
  }
  const mean = [0, 1, 2].map(
    (band) => colours.reduce((sum, each) => sum + (each[band] ?? 0), 0) / colours.length,
  );
  let weights: Weights = [1 / 3, 1 / 3, 1 / 3];
  for (let turn = 0; turn < 20; turn++) {
    const next: [number, number, number] = [0, 0, 0];
    for (const each of colours) {
      const away = each.map((value, band) => value - (mean[band] ?? 0));
      const along = away.reduce((sum, value, band) => sum + value * (weights[band] ?? 0), 0);
      for (const band of [0, 1, 2] as const) next[band] += along * (away[band] ?? 0);
    }
    const size = Math.abs(next[0]) + Math.abs(next[1]) + Math.abs(next[2]);
    if (size === 0) break;
    weights = [next[0] / size, next[1] / size, next[2] / size];
  }
  return weights;
}

/** The picture in one tone. */
function tonesOf({ width, height, data }: Picture, [red, green, blue]: Weights): Float32Array {
  const tones = new Float32Array(width * height);
  for (let at = 0; at < tones.length; at++) {
    tones[at] = red * (data[4 * at] ?? 0) + green * (data[4 * at + 1] ?? 0) + blue * (data[4 * at + 2] ?? 0);
  }
  return tones;
}

/** The tone at a point between pixels, whose middles lie at whole numbers and a half. */
function toneAt(tones: Float32Array, { width, height }: Frame, { x, y }: Spot): number {
  const left = Math.min(Math.max(x - 0.5, 0), width - 1.001);
  const top = Math.min(Math.max(y - 0.5, 0), height - 1.001);
  const [column, row] = [Math.floor(left), Math.floor(top)];
  const [right, under] = [left - column, top - row];
  const at = row * width + column;
  return (
    ((tones[at] ?? 0) * (1 - right) + (tones[at + 1] ?? 0) * right) * (1 - under) +
    ((tones[at + width] ?? 0) * (1 - right) + (tones[at + width + 1] ?? 0) * right) * under
  );
}
