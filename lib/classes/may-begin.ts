/** Why a learner cannot begin an attempt now, in words for them; null when they can. Times in ms; ends belong. */
export function beginProblem(
  work: {
    readonly state: 'draft' | 'set' | 'closed';
    readonly opensAt: number | null;
    readonly dueAt: number | null;
    readonly graceMs: number;
  },
  used: number,
  allowed: number,
  at: number,
): string | null {
  if (work.state === 'draft') return 'This work is not set yet.';
  if (work.state === 'closed') return 'This work is closed. Ask your instructor.';
  if (work.opensAt !== null && at < work.opensAt) return 'This work is not open yet.';
  if (used >= allowed) return 'You have handed in as often as this work allows.';
  // What was begun in time may still be handed in, and is flagged as late.
  if (work.dueAt !== null && at > work.dueAt + work.graceMs)
    return 'The time to begin this work is over. Ask your instructor.';
  return null;
}
