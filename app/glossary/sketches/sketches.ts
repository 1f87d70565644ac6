import { FACES } from './faces';
import { SECTIONS } from './sections';
import { sheet } from './strokes';
import { TOOLS } from './tools';

const SKETCHES = { ...FACES, ...SECTIONS, ...TOOLS };

/** The sketch of a word, as an SVG file; undefined for a word that has none. */
export function sketchOf(id: string, title: string): string | undefined {
  const drawn = SKETCHES[id];
  return drawn === undefined ? undefined : sheet(title, drawn);
}
