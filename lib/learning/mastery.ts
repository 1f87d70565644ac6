/**
 * The chance that a share is at least `least`, after so many of so many, when any share was as likely as any other before: 1 - I(hits + 1,
 * misses + 1) at `least`. For whole numbers the beta integral is a sum of binomial terms.
 */
export function chanceAtLeast(least: number, hits: number, of: number): number {
  let term = (1 - least) ** (of + 1);
  let sum = term;
  for (let count = 1; count <= hits; count++) {
    term *= ((of + 2 - count) / count) * (least / (1 - least));
    sum += term;
  }
  return sum;
}

/** One fresh wall that counts: the day on which it was read, and whether it was read rightly. */
export interface Trial {
  readonly day: number;
  readonly difficulty: number;
  readonly right: boolean;
}

export interface Evidence {
  readonly right: number;
  readonly of: number;
  readonly days: number;
  /** That the share is good enough, 0 to 1. */
  readonly chance: number;
  readonly isEnough: boolean;
}

export interface Mastery {
  /** Walls with a fault of the family, the last 10 to 30: how often it was found and named. */
  readonly hits: Evidence;
  /** Walls of the family with nothing wrong: how often nothing was called. */
  readonly sound: Evidence;
  readonly isMastered: boolean;
}

/** Proposals of ours, checked by simulated learners (tests/bench/learners.ts). */
const GATE = { least: 10, most: 30, days: 2 } as const;
const HIT_GATE = { share: 0.8, chance: 0.9 } as const;
const SOUND_GATE = { share: 0.8, chance: 0.85 } as const;

/** Mastered: what is wrong is found at least four times in five, and what is sound is left alone at least four times in five, both as good as certain. */
export function masteryOf(faulty: readonly Trial[], sound: readonly Trial[]): Mastery {
  const hits = evidenceOf(faulty, HIT_GATE);
  const left = evidenceOf(sound, SOUND_GATE);
  const isLongEnough = hits.of >= GATE.least && hits.days >= GATE.days;
  return { hits, sound: left, isMastered: isLongEnough && hits.isEnough && left.isEnough };
}

function evidenceOf(
  trials: readonly Trial[],
  gate: { readonly share: number; readonly chance: number },
): Evidence {
  const last = trials.slice(-GATE.most);
  const right = last.filter((trial) => trial.right).length;
  const chance = chanceAtLeast(gate.share, right, last.length);
  return {
    right,
    of: last.length,
    days: new Set(last.map(({ day }) => day)).size,
    chance,
    isEnough: chance >= gate.chance,
  };
}
