import { describe, expect, test } from 'vitest';
import { beginProblem } from '../../../lib/classes/may-begin';
import { isShown } from '../../../lib/classes/release';

const DUE = 1_000_000;
const GRACE = 60_000;

describe('when results show', () => {
  const work = { release: 'when due', dueAt: DUE, graceMs: GRACE, releasedAt: null } as const;

  test.each([
    ['at once', { ...work, release: 'at once' } as const, 0, true],
    ['when due: the last moment of the grace is not over yet', work, DUE + GRACE - 1, false],
    ['when due: the grace is over', work, DUE + GRACE, true],
    ['when due without a date', { ...work, dueAt: null }, DUE * 9, false],
    ['by hand, not shown', { ...work, release: 'by hand' } as const, DUE * 9, false],
    ['by hand, shown', { ...work, release: 'by hand', releasedAt: 5 } as const, 6, true],
    ['when due, shown by hand before', { ...work, releasedAt: 5 }, 6, true],
  ])('%s', (_, each, at, shown) => {
    expect(isShown(each, at)).toBe(shown);
  });
});

describe('whether an attempt may begin', () => {
  const work = { state: 'set', opensAt: 500, dueAt: DUE, graceMs: GRACE } as const;

  test.each([
    ['open', work, 0, 600, null],
    ['the moment it opens', work, 0, 500, null],
    ['a moment before', work, 0, 499, 'This work is not open yet.'],
    ['no opening time', { ...work, opensAt: null }, 0, 0, null],
    ['the last moment of the grace', work, 0, DUE + GRACE, null],
    [
      'a moment after it',
      work,
      0,
      DUE + GRACE + 1,
      'The time to begin this work is over. Ask your instructor.',
    ],
    ['no due date', { ...work, dueAt: null }, 0, DUE * 9, null],
    ['one of two attempts used', work, 1, 600, null],
    ['both used', work, 2, 600, 'You have handed in as often as this work allows.'],
    ['a draft', { ...work, state: 'draft' } as const, 0, 600, 'This work is not set yet.'],
    ['closed', { ...work, state: 'closed' } as const, 0, 600, 'This work is closed. Ask your instructor.'],
  ])('%s', (_, each, used, at, problem) => {
    expect(beginProblem(each, used, 2, at)).toBe(problem);
  });
});
