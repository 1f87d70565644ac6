import { spacedOut } from '../geometry/interval';
import type { Point } from '../geometry/polygon';
import type { Mm } from '../units';
import { type Label, lines, type Shape } from './shape';

/** A text with a thin line from it to what it speaks of. */
export interface Note {
  readonly shapes: readonly Shape[];
  readonly label: Label;
}

/** What a note is to say, and the height it would like to stand at. */
export interface NoteWish {
  readonly target: Point;
  readonly y: Mm;
  readonly text: string;
}

/** Least distance between two notes, mm on the sheet of a section: a line of text on a phone. */
const LINE: Mm = 50;

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

/** Notes one above another at x, each at its height or as far above it as the one below needs: none lies on another. */
export function notesApart(wishes: readonly NoteWish[], x: Mm): readonly Note[] {
  const sorted = [...wishes].sort((a, b) => a.y - b.y);
  const levels = spacedOut(
    sorted.map(({ y }) => y),
    LINE,
  );
  return sorted.map(({ target, y, text }, index) => noteTo(target, x, levels[index] ?? y, text));
}

/** A word on a sheet whose texts are `size` mm high, with a line to what it names: the line starts beside the word, where the thing lies. */
export function callout(text: string, at: Point, target: Point, size: Mm): Note {
  const [x, y] = at;
  const [dx, dy] = [target[0] - x, target[1] - y];
  const steep = Math.abs(dy) > Math.abs(dx);
  const foot: Point = steep ? [x, y + Math.sign(dy) * size * 0.72] : [x + Math.sign(dx) * size * 0.3, y];
  return {
    shapes: [
      lines([[foot, target]], { paint: '--raised', width: 4, thin: true }),
      lines([[foot, target]], { paint: '--ink', width: 1.4, thin: true }),
      { kind: 'dot', at: target, radius: size * 0.16, fill: '--ink' },
    ],
    label: { at, text, anchor: steep ? 'middle' : dx > 0 ? 'end' : 'start', strong: true, plate: true },
  };
}
