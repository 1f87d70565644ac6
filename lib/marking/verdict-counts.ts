import { requireCount } from './marking-error';

/** "Sound or faulty?" answers over many walls, counted by truth and answer. Whole numbers. */
export interface VerdictCounts {
  /** Faulty walls called faulty. */
  readonly hits: number;
  /** Faulty walls called sound. */
  readonly misses: number;
  /** Sound walls called faulty. */
  readonly falseAlarms: number;
  /** Sound walls called sound. */
  readonly soundCalls: number;
}

export interface Verdict {
  readonly faulty: boolean;
  readonly saidFaulty: boolean;
}

/** Counts verdicts. No verdicts give four zeros. */
export function countVerdicts(verdicts: readonly Verdict[]): VerdictCounts {
  const count = (faulty: boolean, saidFaulty: boolean) =>
    verdicts.filter((verdict) => verdict.faulty === faulty && verdict.saidFaulty === saidFaulty).length;
  return {
    hits: count(true, true),
    misses: count(true, false),
    falseAlarms: count(false, true),
    soundCalls: count(false, false),
  };
}

/** Throws MarkingError unless all four are whole numbers, none negative. */
export function requireVerdictCounts(counts: VerdictCounts): void {
  requireCount('hits', counts.hits);
  requireCount('misses', counts.misses);
  requireCount('falseAlarms', counts.falseAlarms);
  requireCount('soundCalls', counts.soundCalls);
}
