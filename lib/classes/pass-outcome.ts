export type PassOutcome = 'reached' | 'more walls needed' | 'not reached yet';

/** Nine in ten of a standard normal distribution lie below it (any table of the normal distribution). */
const NINE_IN_TEN = 1.2815516;

/**
 * How a score stands to a pass mark, both 0 to 1. A score that a person has decided on is over the mark or it is not. One from walls
 * is said to be only where the chance that the learner's true share reaches the mark is over nine in ten, or under one in ten: that
 * share is taken as normal, with mean and standard deviation of the Beta distribution with one wall right and one wrong added,
 * m = (s+1)/(n+2) and (m(1-m)/(n+3))^1/2 with s = score times n.
 */
export function passOutcome(score: number, walls: number, share: number, isDecided = false): PassOutcome {
  if (isDecided) return score >= share ? 'reached' : 'not reached yet';
  const middle = (score * walls + 1) / (walls + 2);
  const away = (middle - share) / Math.sqrt((middle * (1 - middle)) / (walls + 3));
  if (away >= NINE_IN_TEN) return 'reached';
  return away <= -NINE_IN_TEN ? 'not reached yet' : 'more walls needed';
}

/** Near the mark, a few walls cannot tell. */
export const PASS_WORDS: Readonly<Record<PassOutcome, string>> = {
  reached: 'pass',
  'more walls needed': 'too close to call',
  'not reached yet': 'not yet',
};
