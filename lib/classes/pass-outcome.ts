import { scoreError } from './statistics/score-error';

export type PassOutcome = 'reached' | 'more walls needed' | 'not reached yet';

/** Nine in ten of a standard normal distribution lie below it (any table of the normal distribution). */
const NINE_IN_TEN = 1.2815516;

/**
 * How a score stands to a pass mark, both 0 to 1, when its error is taken into account: only where the chance that the learner's
 * true share reaches the mark is over nine in ten, or under one in ten, is it said. The share is taken as normal about the mean of
 * the Beta distribution of scoreError, (s·n + 1) / (n + 2).
 */
export function passOutcome(score: number, walls: number, share: number): PassOutcome {
  const middle = (score * walls + 1) / (walls + 2);
  const away = (middle - share) / scoreError(score, walls);
  if (away >= NINE_IN_TEN) return 'reached';
  return away <= -NINE_IN_TEN ? 'not reached yet' : 'more walls needed';
}
