import { MORTAR, RED_BRICK } from '../../../lib/drawing/colours';
import { callout } from '../../../lib/drawing/note';
import { ring } from '../../../lib/drawing/rings';
import { lines, type Shape } from '../../../lib/drawing/shape';
import { svgFile } from '../../../lib/drawing/svg-file';
import { type Box, grown } from '../../../lib/geometry/box';
import { type Point, type Ring, rectRing } from '../../../lib/geometry/polygon';
import type { Mm } from '../../../lib/units';

/** A word, where it stands, and the place on the drawing it names. */
export type Word = readonly [text: string, at: Point, to: Point];

/** A picture of a word that no generated wall shows: a sheet twice as wide as it is high, its lower left corner at 0, in mm at true size. */
export interface Sketch {
  readonly wide: Mm;
  readonly shapes: readonly Shape[];
  readonly words: readonly Word[];
}

/** Texts are as large as on any drawing of ours where the sheet is this wide: on a phone, px. */
const WIDTH = 360;
const TEXT = 13;
const COLOURS = { units: RED_BRICK, quoins: RED_BRICK, mortar: MORTAR };

export function sketch(wide: Mm, shapes: readonly Shape[], ...words: readonly Word[]): Sketch {
  return { wide, shapes, words };
}

export function svgOfSketch({ wide, shapes, words }: Sketch): string {
  const notes = words.map(([text, at, to]) => callout(text, at, to, (wide * TEXT) / WIDTH));
  const drawing = {
    box: { x: 0, y: 0, width: wide, height: wide / 2 },
    shapes: [...shapes, ...notes.flatMap((note) => note.shapes)],
    labels: notes.map(({ label }) => label),
    frames: [],
    spots: [],
  };
  return svgFile(drawing, COLOURS, WIDTH);
}

/** What the picture is about, ringed in the blue of a chalk line. */
export function ringed(box: Box, room: Mm = 8): readonly Shape[] {
  const { x, y, width, height } = grown(box, room);
  const outline = rectRing(x, y, width, height);
  return [
    { kind: 'area', rings: [outline], pen: { paint: '--raised', width: 6, thin: true } },
    outlined(outline),
  ];
}

/** The outline of a thing in the same blue. */
export function outlined(points: Ring): Shape {
  return { kind: 'area', rings: [points], pen: { paint: '--chalk', width: 3, thin: true } };
}

/** A line in chalk blue: the mason's line, a plumb line, what a thing is measured from. */
export function chalk(...points: Ring): Shape {
  return lines([points], { paint: '--chalk', width: 2.4, thin: true });
}

export function dashed(...points: Ring): Shape {
  return lines([points], { paint: '--chalk', width: 2, thin: true, dash: [6, 5] });
}

/** From one end of a length to the other, with a stroke across each end. */
export function measured([x1, y1]: Point, [x2, y2]: Point, reach: Mm): Shape {
  const [across, up] = y1 === y2 ? [0, reach] : [reach, 0];
  const end = (x: Mm, y: Mm) => ring(x - across, y - up, x + across, y + up);
  return lines([ring(x1, y1, x2, y2), end(x1, y1), end(x2, y2)], {
    paint: '--chalk',
    width: 2.4,
    thin: true,
  });
}
