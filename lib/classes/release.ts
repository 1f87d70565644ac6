import type { Release } from './set-work';

/** Whether learners may see results now. Times in ms; a time that is exactly reached is reached. */
export function isShown(
  work: {
    readonly release: Release;
    readonly dueAt: number | null;
    readonly graceMs: number;
    readonly releasedAt: number | null;
  },
  at: number,
): boolean {
  if (work.releasedAt !== null || work.release === 'at once') return true;
  // Not before the grace is over: until then somebody may still hand in.
  return work.release === 'when due' && work.dueAt !== null && at >= work.dueAt + work.graceMs;
}
