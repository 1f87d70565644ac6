import { expect, test } from 'vitest';
import { type LastSet, workFor } from '../../../lib/classes/need-work';
import type { Need } from '../../../lib/classes/statistics/teach-next';

const LAST: LastSet = { rules: 'ontario', kinds: ['window-panel'], difficulty: 3 };

test.each<[string, Need, readonly string[], number]>([
  ['missed: a step plainer', { kind: 'missed', fault: 'open-head', missed: 5, met: 9 }, ['joints'], 2],
  [
    'mixed up: both topics',
    { kind: 'swapped', fault: 'open-head', saidToBe: 'thin-tie', times: 5, met: 9 },
    ['joints', 'ties'],
    3,
  ],
  [
    'mixed up in one topic: that topic once',
    { kind: 'swapped', fault: 'open-head', saidToBe: 'thick-joint', times: 5, met: 9 },
    ['joints'],
    3,
  ],
  ['cries wolf', { kind: 'cries wolf', fault: 'thin-tie', walls: 5, of: 9 }, ['ties'], 3],
])('%s', (_, need, topics, difficulty) => {
  expect(workFor(need, LAST)).toMatchObject({
    topics,
    difficulty,
    rules: 'ontario',
    kinds: ['window-panel'],
    walls: 6,
    passMark: null,
  });
});

test('nothing is easier than easy', () => {
  const need: Need = { kind: 'missed', fault: 'open-head', missed: 5, met: 9 };
  expect(workFor(need, { ...LAST, difficulty: 1 }).difficulty).toBe(1);
});
