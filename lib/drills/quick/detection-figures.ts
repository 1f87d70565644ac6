import { normalQuantile } from '../../marking/normal';
import { ENOUGH_WALLS, type SoundOrFaulty, soundOrFaulty } from '../../marking/sound-or-faulty';
import { countVerdicts, type Verdict, type VerdictCounts } from '../../marking/verdict-counts';
import { type ShareLimits, shareWithLimits, Z95 } from '../../marking/wilson';

/** What can be said of sound-or-faulty answers, by how many there are. */
export interface DetectionFigures {
  readonly counts: VerdictCounts;
  /** Null where no such wall was judged. */
  readonly caught: ShareLimits | null;
  readonly wronglyCalled: ShareLimits | null;
  /** Null before there are enough sound and enough faulty walls (ENOUGH_WALLS of each): then there are plain counts only. */
  readonly sensitivity: Sensitivity | null;
  /** Walls still to come of each sort before there are figures. */
  readonly soundToCome: number;
  readonly faultyToCome: number;
}

export interface Sensitivity {
  readonly dPrime: number;
  /** Half the width of its 95 % limits. */
  readonly within: number;
  readonly isBetterThanChance: boolean;
  /** Of a hundred pairs of a sound and a faulty wall, in how many the faulty one would be told, by the normal model: Φ(d′ ÷ √2) × 100. */
  readonly pairsOf100: number;
  readonly lean: 'to sound' | 'to faulty' | 'none to be seen';
}

export function detectionFiguresOf(verdicts: readonly Verdict[]): DetectionFigures {
  const counts = countVerdicts(verdicts);
  const faulty = counts.hits + counts.misses;
  const sound = counts.falseAlarms + counts.soundCalls;
  const judged = faulty > 0 && sound > 0 ? soundOrFaulty(counts) : null;
  return {
    counts,
    caught: faulty > 0 ? shareWithLimits(counts.hits, faulty) : null,
    wronglyCalled: sound > 0 ? shareWithLimits(counts.falseAlarms, sound) : null,
    sensitivity: judged?.enough ? sensitivityOf(judged) : null,
    soundToCome: Math.max(0, ENOUGH_WALLS - sound),
    faultyToCome: Math.max(0, ENOUGH_WALLS - faulty),
  };
}

function sensitivityOf({ dPrime, standardError, criterion }: SoundOrFaulty): Sensitivity {
  const within = Z95 * standardError;
  // c = −(z(H) + z(F)) ÷ 2 and d′ = z(H) − z(F): with H and F apart, the standard error of c is half that of d′.
  const isLeaning = Math.abs(criterion) > within / 2;
  return {
    dPrime,
    within,
    isBetterThanChance: dPrime > within,
    pairsOf100: Math.round(100 * shareBelow(dPrime / Math.SQRT2)),
    lean: isLeaning ? (criterion > 0 ? 'to sound' : 'to faulty') : 'none to be seen',
  };
}

const HALVINGS = 40;

/** The share of a standard normal below z, by halving: the quantile is at hand, its inverse is not. */
function shareBelow(z: number): number {
  let low = 0;
  let high = 1;
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (normalQuantile(middle) < z) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
