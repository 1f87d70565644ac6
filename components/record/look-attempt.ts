import type { QuickRound } from '../../lib/drills/quick/quick-record';
import type { LookAttempt } from '../../lib/learning/attempt';
import type { Done } from './done-at';

/** A round as the record keeps it. One round is one attempt, whatever device it was looked through on: its walls are known then. */
export function lookAttempt({ rules, round, look, level, time, walls }: QuickRound, done: Done): LookAttempt {
  const id = `quick look ${rules} ${round} ${look} ${level}`;
  return { ...done, id, kind: 'quick look', rules, round, look, level, time, walls };
}
