import { describe, expect, test } from 'vitest';
import { dueNext, nextSteps } from '../../app/desk/next-steps';
import { templateOf } from '../../lib/classes/templates';
import type { GroupRow } from '../../lib/store/groups/groups';
import type { WorkInGroup } from '../../lib/store/set-work';

const GROUP: GroupRow = {
  id: 'g',
  name: 'Tuesday',
  joinCode: 'x',
  closedAt: null,
  takesNew: true,
  learners: 3,
};
const WORK: WorkInGroup = {
  id: 'w',
  groupId: 'g',
  title: 'Walls',
  secret: 's',
  spec: { ...templateOf('warm-up').spec },
  state: 'set',
  opensAt: null,
  dueAt: 1000,
  graceMs: 50,
  release: 'by hand',
  releasedAt: null,
  handedIn: 0,
  waiting: 0,
};

const words = (works: readonly WorkInGroup[], at: number, group = GROUP) =>
  nextSteps({ group, works }, at).map((step) => step.words);

describe('what to do next', () => {
  test('an empty group: names, then work', () => {
    expect(words([], 0, { ...GROUP, learners: 0 })).toEqual([
      'Put names on the roster, or give out the code to join.',
      'Set the first work.',
    ]);
  });

  test.each([
    ['a draft waits', { state: 'draft' }, 0, ['“Walls” is a draft. Look at it, then set it.']],
    ['all is well', {}, 900, []],
    ['in the grace', {}, 1050, []],
    ['over, two are missing', { handedIn: 1 }, 1051, ['“Walls” was due. 2 learners have not handed in.']],
    ['over, one is missing', { handedIn: 2 }, 1051, ['“Walls” was due. 1 learner has not handed in.']],
    ['over, all are in', { handedIn: 3 }, 1051, []],
    ['closed: missing ones are past helping', { state: 'closed' }, 1051, []],
    ['marked, to be shown by hand', { waiting: 2, handedIn: 2 }, 900, ['“Walls”: 2 marked, not shown yet.']],
    ['handed in after the release', { waiting: 1, handedIn: 3, releasedAt: 800 }, 900, []],
    ['marked, shows by itself', { waiting: 2, handedIn: 2, release: 'at once' }, 900, []],
  ] as const)('%s', (_, changes, at, expected) => {
    expect(words([{ ...WORK, ...changes }], at)).toEqual(expected);
  });

  test('a closed group asks for nothing', () => {
    expect(words([{ ...WORK, state: 'draft' }], 0, { ...GROUP, closedAt: 1 })).toEqual([]);
  });
});

test('what is due: set work that is not over, the first first', () => {
  const works = [
    { ...WORK, id: 'later', dueAt: 3000 },
    { ...WORK, id: 'soon', dueAt: 2000 },
    { ...WORK, id: 'over' },
    { ...WORK, id: 'no date', dueAt: null },
    { ...WORK, id: 'draft', dueAt: 2500, state: 'draft' as const },
  ];
  expect(dueNext([{ group: GROUP, works }], 1051).map(({ id, of }) => [id, of])).toEqual([
    ['soon', 3],
    ['later', 3],
  ]);
});
