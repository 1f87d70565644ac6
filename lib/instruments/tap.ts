import { inWords, type Place, type ReadingContext, shareOf } from './read-off';
import type { Reading } from './reading';
import { unitAt } from './unit-at';

/** A back with this share of it bare in one patch sounds hollow (our proposal; the ear is no gauge). */
const HOLLOW_SHARE = 0.08;
/** One sound unit in so many sounds hollow all the same: a mat, a soft backing, an edge. */
const FALSE_ALARM = 0.04;

/** Taps a unit. The sound is a sign to look further, never a finding: some sound units ring hollow too. */
export function readTap({ part, panel }: Place, context: ReadingContext): readonly Reading[] {
  const placed = unitAt(part, panel);
  if (placed === null) return [];
  const { back } = placed;
  const bare = back !== null && back.largestBare > HOLLOW_SHARE * back.area;
  const alarm = back !== null && shareOf(`tap ${part.id}`, context.seed) < FALSE_ALARM;
  return [inWords(context, 'Sound', bare || alarm ? 'hollow: lift it and look' : 'solid')];
}
