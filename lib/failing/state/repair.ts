import type { Mm } from '../../units';

/**
 * What it takes to make good a crack in a house that has settled, by its width: the classes of BRE Digest 251, in our words, from pages that print
 * them. They speak of repair: never of a cause, of whether it still moves, or of the danger of one loose unit.
 */
export interface Repair {
  readonly category: 0 | 1 | 2 | 3 | 4 | 5;
  readonly words: string;
}

/** To this width, mm, that width included but for the first. */
const CLASSES: readonly (readonly [upTo: Mm, words: string])[] = [
  [0.1, 'nothing to make good'],
  [1, 'covered when it is next painted'],
  [5, 'filled; perhaps pointed outside'],
  [15, 'opened up and patched; pointed; a few units laid anew'],
  [25, 'broken out and laid anew, over openings above all'],
];

export function repairOf(width: Mm): Repair {
  const at = CLASSES.findIndex(([upTo], index) => (index === 0 ? width < upTo : width <= upTo));
  const category = (at < 0 ? CLASSES.length : at) as Repair['category'];
  return { category, words: CLASSES[at]?.[1] ?? 'part of the wall rebuilt, and shored till then' };
}
