import { expect, test } from 'vitest';
import { ATTEMPT_STATES, mayMove } from '../../../lib/classes/attempt-state';

// By hand: from each state, where it may go.
test.each([
  ['open', ['handed in', 'marked']],
  ['handed in', ['marked']],
  ['marked', ['released']],
  ['released', []],
] as const)('from %s to %o only', (from, to) => {
  expect(ATTEMPT_STATES.filter((state) => mayMove(from, state))).toEqual(to);
});
