import { ARCHES } from './arches';
import { FACES } from './faces';
import { FRAMES } from './frames';
import { JOINTS } from './joints';
import { OPENINGS } from './openings';
import { SECTIONS } from './sections';
import { type Sketch, svgOfSketch } from './sketch';
import { TOOLS } from './tools';
import { TOPS } from './tops';
import { UNITS } from './units';

export const SKETCHES: Readonly<Record<string, Sketch>> = {
  ...ARCHES,
  ...FACES,
  ...FRAMES,
  ...JOINTS,
  ...OPENINGS,
  ...SECTIONS,
  ...TOOLS,
  ...TOPS,
  ...UNITS,
};

/** The sketch of a word, as an SVG file; undefined for a word that has none. */
export function sketchOf(id: string): string | undefined {
  const drawn = SKETCHES[id];
  return drawn === undefined ? undefined : svgOfSketch(drawn);
}
