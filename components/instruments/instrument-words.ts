import type { Instrument } from '../../lib/instruments/instrument';
import type { PartKind } from '../../lib/wall/part-id';

/** What a reader calls a kind of part, with more than one of it. */
export const KIND_WORDS: Readonly<Record<PartKind, string>> = {
  unit: 'units',
  bed: 'bed joints',
  head: 'head joints',
  course: 'whole courses',
  panel: 'the whole panel',
  corner: 'corners',
  edge: 'free ends',
  support: 'ledges and lintels',
  opening: 'openings',
  tie: 'ties',
  batch: 'mixings',
};

/** Why nothing is read: the instrument does not fit the part, needs two points, or finds nothing there. */
export function whyNot({ on, between }: Instrument, kind: PartKind): string {
  if (on.includes(kind)) return 'It finds nothing to read here.';
  if (between.includes(kind))
    return 'It needs two points. Press “Measure from here”, then pick another part.';
  return `It does not read this part. It reads ${joined(on.map((each) => KIND_WORDS[each]))}.`;
}

export function joined(words: readonly string[]): string {
  const last = words[words.length - 1] ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}
