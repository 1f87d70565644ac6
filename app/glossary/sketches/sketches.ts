import { FACES } from './faces';
import { JOINTS } from './joints';
import { OPENINGS } from './openings';
import { SECTIONS } from './sections';
import { sheet } from './strokes';
import { TOOLS } from './tools';
import { UNITS } from './units';

const SKETCHES = { ...FACES, ...JOINTS, ...OPENINGS, ...SECTIONS, ...TOOLS, ...UNITS };

/** The sketch of a word, as an SVG file; undefined for a word that has none. */
export function sketchOf(id: string, title: string): string | undefined {
  const drawn = SKETCHES[id];
  return drawn === undefined ? undefined : sheet(title, drawn);
}
