import { inches, type LengthSystem, type Mm } from '../units';
import { ring } from './rings';
import { type Label, lines, rect, type Shape } from './shape';

/** Lengths a scale bar may have, longest first: in mm, and in inches. */
const LENGTHS: Readonly<Record<LengthSystem, readonly { readonly long: Mm; readonly text: string }[]>> = {
  mm: [1000, 500, 200, 100, 50, 20].map((long) => ({ long, text: `${long} mm` })),
  inches: [36, 24, 12, 6, 4, 2, 1].map((inch) => ({ long: inches(inch), text: `${inch} in` })),
};

/** A bar of five light and dark parts, at most `room` long on the sheet, where 1 mm of the wall is `scale` mm of the sheet. */
export function scaleBar(
  x: Mm,
  y: Mm,
  room: Mm,
  high: Mm,
  system: LengthSystem,
  scale = 1,
): { readonly shapes: readonly Shape[]; readonly label: Label } {
  const choices = LENGTHS[system];
  const chosen = choices.find(({ long }) => long * scale <= room) ?? choices[choices.length - 1];
  const long = (chosen?.long ?? 20) * scale;
  const part = long / 5;
  return {
    shapes: [
      rect({ x, y, width: long, height: high }, '--raised'),
      ...[0, 2, 4].map((index) => rect({ x: x + index * part, y, width: part, height: high }, '--slate')),
      lines([ring(x, y, x + long, y, x + long, y + high, x, y + high, x, y)], {
        paint: '--slate',
        width: 1,
        thin: true,
      }),
    ],
    label: { at: [x + long + high, y + high / 2], text: chosen?.text ?? '', anchor: 'start', ofLook: true },
  };
}
