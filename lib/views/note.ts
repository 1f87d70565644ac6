import type { Mm } from '../units';
import { type Label, lines, type Point, type Shape } from './shape';

/** A text with a thin line from it to what it speaks of. */
export interface Note {
  readonly shapes: readonly Shape[];
  readonly label: Label;
}

/** A note to the right of a section: its text starts at (x, y), its line runs to `target`. */
export function noteTo(target: Point, x: Mm, y: Mm, text: string): Note {
  return {
    shapes: [
      lines([[target, [x - 26, y], [x - 8, y]]], { paint: '--slate', width: 1, thin: true }),
      { kind: 'dot', at: target, radius: 3, fill: '--slate' },
    ],
    label: { at: [x, y], text, anchor: 'start' },
  };
}
