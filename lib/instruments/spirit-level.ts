import { reversalOf } from '../trade/spirit-level';
import { MM_PER_M } from '../units';
import { facePlaneOf } from '../wall/face-plane';
import { INSTRUMENT } from './instrument-list';
import { type Place, type ReadingContext, readOff, shareOf, worked } from './read-off';
import type { Reading } from './reading';

const { resolution, error } = INSTRUMENT['spirit-level'];
/** The level's own error: from the least to the most, mm per m, one way or the other. Our proposal, within the ±0.5 it is sold with. */
const OWN_LEAST = 0.15;
const OWN_MOST = 0.35;
/** What is left when its own error is taken off: the eye on the bubble, mm per m. */
const EYE = 0.15;

/** What this wall's level adds to every slope, mm per m, with its first end to the left (or at the foot). */
export function ownErrorOf(seed: number): number {
  const size = OWN_LEAST + shareOf('own error', seed) * (OWN_MOST - OWN_LEAST);
  return shareOf('own way', seed) < 0.5 ? -size : size;
}

/**
 * Slope in mm per m, + when the right end is high, or when the top leans out. A course is read end to end by stepping the level along.
 * Turned end for end: the second reading, and what the two tell together.
 */
export function readSpiritLevel({ part, panel, survey }: Place, context: ReadingContext): readonly Reading[] {
  if (part.kind === 'support') {
    // Supports are laid level in the model: what shows is the level's own error.
    const support = survey.wall.supports.find(({ id }) => id === part.id);
    return support ? slopeReadings(context, 'Slope along the top', 0, 'level') : [];
  }
  if (part.kind === 'panel') {
    const plane = facePlaneOf(panel.placed);
    return plane === null ? [] : slopeReadings(context, 'Lean of the face', plane.up * MM_PER_M, 'plumb');
  }
  const course = panel.courses[(part.course ?? 0) - 1] ?? [];
  const first = course[0]?.unit;
  const last = course[course.length - 1]?.unit;
  if (first === undefined || last === undefined) return [];
  const run = last.x + last.length - first.x;
  const rise = last.y - last.fall - first.y;
  const readings = slopeReadings(context, 'Slope, end to end', (rise / run) * MM_PER_M, 'level');
  const best = readings[context.turned ? 1 : 0];
  if (best === undefined) return readings;
  return [
    ...readings,
    worked(context, 'That is, over the whole course', {
      value: (Math.abs(best.value ?? 0) * run) / MM_PER_M,
      unit: 'mm',
      resolution: 0.5,
      error: (best.error * run) / MM_PER_M + 0.25,
    }),
  ];
}

function slopeReadings(
  context: ReadingContext,
  what: string,
  slope: number,
  way: 'level' | 'plumb',
): readonly Reading[] {
  const own = ownErrorOf(context.seed);
  const seen = (turned: boolean) => {
    const at = { ...context, turned };
    const value = slope + (turned ? -own : own);
    const reading = readOff(at, what, { value, unit: 'mm per m', resolution, error: EYE });
    return { ...reading, error, words: wayOf(reading.value ?? 0, way) };
  };
  const first = seen(false);
  if (!context.turned) return [first];
  const second = { ...seen(true), what: `${what}, level turned` };
  const { slope: mean, error: half } = reversalOf(first.value ?? 0, second.value ?? 0);
  const both = { unit: 'mm per m', resolution: resolution / 2, error: EYE } as const;
  return [
    second,
    worked(context, 'Both readings, half the sum', { ...both, value: mean, words: wayOf(mean, way) }),
    worked(context, 'The level’s own error, half the difference', { ...both, value: half }),
  ];
}

function wayOf(slope: number, way: 'level' | 'plumb'): string {
  if (slope === 0) return way;
  if (way === 'plumb') return slope > 0 ? 'top leans out' : 'top leans back';
  return slope > 0 ? 'right end high' : 'right end low';
}
