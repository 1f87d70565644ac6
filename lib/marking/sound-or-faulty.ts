import { MarkingError } from './marking-error';
import { normalDensity, normalQuantile } from './normal';
import { requireVerdictCounts, type VerdictCounts } from './verdict-counts';
import { type ShareLimits, shareWithLimits } from './wilson';

/** Sound walls, and faulty walls, from which d' is worth showing. */
export const ENOUGH_WALLS = 20;

export interface SoundOrFaulty {
  /** Plain shares with 95 % limits: what to show while `enough` is false. */
  readonly hitShare: ShareLimits;
  readonly falseAlarmShare: ShareLimits;
  /** True from ENOUGH_WALLS sound and ENOUGH_WALLS faulty walls. */
  readonly enough: boolean;
  /** How well faulty and sound walls are told apart, in standard deviations. 0 is chance. */
  readonly dPrime: number;
  /** Standard error of d'. */
  readonly standardError: number;
  /** c: above 0 cautious (misses faults), below 0 cries wolf. */
  readonly criterion: number;
  /** ln beta = d' times c. */
  readonly logBeta: number;
}

/**
 * Signal detection figures of "sound or faulty?" answers. The rates carry the log-linear correction always,
 * not only at 0 and 1: H = (hits + .5) / (faulty walls + 1), F = (false alarms + .5) / (sound walls + 1);
 * d' = z(H) - z(F), c = -(z(H) + z(F)) / 2. Rule after Hautus (1995), as in the manual of the open package
 * statpsych; standard error of d' in the form of Gourevitch and Galanter, with the same H and F.
 *
 * Throws MarkingError for counts that are negative or not whole, and when there is no faulty or no sound wall.
 */
export function soundOrFaulty(counts: VerdictCounts): SoundOrFaulty {
  requireVerdictCounts(counts);
  const faultyWalls = counts.hits + counts.misses;
  const soundWalls = counts.falseAlarms + counts.soundCalls;
  if (faultyWalls === 0) throw new MarkingError('hits, misses: no faulty wall was judged');
  if (soundWalls === 0) throw new MarkingError('falseAlarms, soundCalls: no sound wall was judged');
  const hitRate = correctedRate(counts.hits, faultyWalls);
  const falseRate = correctedRate(counts.falseAlarms, soundWalls);
  const zHit = normalQuantile(hitRate);
  const zFalse = normalQuantile(falseRate);
  const dPrime = zHit - zFalse;
  const criterion = -(zHit + zFalse) / 2;
  return {
    hitShare: shareWithLimits(counts.hits, faultyWalls),
    falseAlarmShare: shareWithLimits(counts.falseAlarms, soundWalls),
    enough: faultyWalls >= ENOUGH_WALLS && soundWalls >= ENOUGH_WALLS,
    dPrime,
    standardError: Math.sqrt(variance(hitRate, zHit, faultyWalls) + variance(falseRate, zFalse, soundWalls)),
    criterion,
    logBeta: dPrime * criterion,
  };
}

/** Log-linear correction: half a "faulty" more in one wall more. Always strictly between 0 and 1. */
export function correctedRate(count: number, walls: number): number {
  return (count + 0.5) / (walls + 1);
}

function variance(rate: number, z: number, walls: number): number {
  const density = normalDensity(z);
  return (rate * (1 - rate)) / (walls * density * density);
}
