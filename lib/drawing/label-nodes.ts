import type { Label } from './shape';
import { type PaintOf, type SvgNode, tenth, turned } from './svg-nodes';

const SIZE = 13;
/** On paper that is drawn: what was filled in, and what was printed there before. */
const FILLED_IN = '#22272b';
const PRINTED = '#574a35';
/** Height of a text as a share of what is drawn across, on the narrowest screen: 13 px in 350, and a tenth for the margins. */
export const TEXT_SHARE = 0.041;
/** Mean width of a letter, as a share of the size; a little wide, so that texts never touch. */
const LETTER = 0.6;

/** Texts at one size on the screen, or as large as they are written; a text with too little room for it is left out until the reader zooms in. */
export function labelNodes(labels: readonly Label[], mmPerPx: number, paintOf: PaintOf): readonly SvgNode[] {
  return labels.flatMap((label) => {
    const size = Math.max(SIZE * mmPerPx, label.written ?? 0);
    const wide = wideOf(label, size);
    if (!hasRoom(label, size) || (label.standsFor && hasRoom(label.standsFor, size))) return [];
    const x = tenth(label.at[0]);
    const y = tenth(turned(label.at[1] + (label.rise ?? 0) * size));
    const text: SvgNode = {
      tag: 'text',
      attributes: {
        x,
        y: tenth(y + size * 0.35),
        fontSize: tenth(size),
        textAnchor: label.anchor,
        fill: inkOf(label, paintOf),
        ...(label.strong ? { fontWeight: 650 } : {}),
        ...(label.upright ? { transform: `rotate(-90 ${x} ${y})` } : {}),
      },
      text: label.text,
    };
    if (!label.plate) return [text];
    const shift = label.anchor === 'start' ? 0 : label.anchor === 'middle' ? wide / 2 : wide;
    const plate: SvgNode = {
      tag: 'rect',
      attributes: {
        x: tenth(x - shift - size * 0.25),
        y: tenth(y - size * 0.68),
        width: tenth(wide + size * 0.5),
        height: tenth(size * 1.36),
        rx: tenth(size * 0.2),
        fill: paintOf('--raised'),
        fillOpacity: 0.92,
        ...(label.upright ? { transform: `rotate(-90 ${x} ${y})` } : {}),
      },
    };
    return [plate, text];
  });
}

function inkOf({ written, plate, strong }: Label, paintOf: PaintOf): string {
  if (written !== undefined) return strong ? FILLED_IN : PRINTED;
  return paintOf(plate || strong ? '--ink' : '--slate');
}

function wideOf({ text }: Label, size: number): number {
  return text.length * LETTER * size;
}

function hasRoom(label: Label, size: number): boolean {
  return label.room === undefined || label.room >= wideOf(label, size);
}
