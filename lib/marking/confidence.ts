import type { Sure } from './mark';
import { MarkingError, requireFinite } from './marking-error';

/** What each level of certainty claims: the share of such answers that ought to be right. Ours. */
export const CLAIMED_SHARE = { 1: 0.55, 2: 0.75, 3: 0.95 } as const satisfies Readonly<Record<Sure, number>>;

const LEVELS: readonly Sure[] = [1, 2, 3];

export interface Forecast {
  /** Probability claimed, 0 to 1, ends allowed. */
  readonly claimed: number;
  readonly right: boolean;
}

export interface SureAnswer {
  readonly sure: Sure;
  readonly right: boolean;
}

export interface Calibration {
  readonly answers: number;
  /** reliability - resolution + uncertainty. 0 is perfect. */
  readonly brier: number;
  /** How far the claims lie from what came of them; 0 is honest. */
  readonly reliability: number;
  /** How well the levels part right from wrong; more is better. */
  readonly resolution: number;
  /** Spread of right and wrong, whatever was claimed. */
  readonly uncertainty: number;
  /** Mean claim less share right: above 0 too sure, below 0 too modest. */
  readonly overconfidence: number;
  readonly levels: readonly { readonly sure: Sure; readonly answers: number; readonly right: number }[];
}

/**
 * Brier score: mean squared distance between claim and outcome (1 right, 0 wrong). 0 is perfect, always "50:50"
 * gives 0.25. Throws MarkingError for no forecasts or a claim outside 0 to 1.
 */
export function brierScore(forecasts: readonly Forecast[]): number {
  if (forecasts.length === 0) throw new MarkingError('forecasts: none given');
  let sum = 0;
  forecasts.forEach(({ claimed, right }, index) => {
    requireFinite(`forecasts.${index}.claimed`, claimed);
    if (claimed < 0 || claimed > 1) {
      throw new MarkingError(`forecasts.${index}.claimed: ${claimed} is not between 0 and 1`);
    }
    const miss = claimed - (right ? 1 : 0);
    sum += miss * miss;
  });
  return sum / forecasts.length;
}

/**
 * How well a learner's certainty fits, over answers with one of three levels, with Murphy's split of the Brier
 * score by level. Throws MarkingError for no answers or a level outside 1 to 3.
 */
export function calibrationOf(answers: readonly SureAnswer[]): Calibration {
  if (answers.length === 0) throw new MarkingError('answers: none given');
  answers.forEach(({ sure }, index) => {
    if (!LEVELS.includes(sure)) throw new MarkingError(`answers.${index}.sure: ${sure} is not 1, 2 or 3`);
  });
  const count = answers.length;
  const shareRight = answers.filter(({ right }) => right).length / count;
  const levels = LEVELS.map((sure) => {
    const mine = answers.filter((answer) => answer.sure === sure);
    return { sure, answers: mine.length, right: mine.filter(({ right }) => right).length };
  });
  let reliability = 0;
  let resolution = 0;
  let claimed = 0;
  for (const level of levels) {
    if (level.answers === 0) continue;
    const share = level.right / level.answers;
    const claim = CLAIMED_SHARE[level.sure];
    reliability += level.answers * (claim - share) * (claim - share);
    resolution += level.answers * (share - shareRight) * (share - shareRight);
    claimed += level.answers * claim;
  }
  return {
    answers: count,
    brier: brierScore(answers.map(({ sure, right }) => ({ claimed: CLAIMED_SHARE[sure], right }))),
    reliability: reliability / count,
    resolution: resolution / count,
    uncertainty: shareRight * (1 - shareRight),
    overconfidence: claimed / count - shareRight,
    levels,
  };
}
