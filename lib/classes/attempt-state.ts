export const ATTEMPT_STATES = ['open', 'handed in', 'marked', 'released'] as const;
export type AttemptState = (typeof ATTEMPT_STATES)[number];

/** Where an attempt may go from where it is: only forward. */
const NEXT: Readonly<Record<AttemptState, readonly AttemptState[]>> = {
  open: ['handed in', 'marked'],
  // Kept but not marked yet: its walls could not be laid again by the engine that took it in.
  'handed in': ['marked'],
  marked: ['released'],
  released: [],
};

export function mayMove(from: AttemptState, to: AttemptState): boolean {
  return NEXT[from].includes(to);
}
