import { describe, expect, test } from 'vitest';
import { isRunning, learntSince } from '../../../lib/learning/ten-minutes';
import { DAY, START, tieWall } from './samples';

describe('ten minutes of practice', () => {
  test.each([
    ['at the start', 0, true],
    ['a millisecond before their end', 599_999, true],
    ['at their end', 600_000, false],
    ['when the clock was set back', -1, false],
  ])('%s', (_, since, runs) => {
    expect(isRunning(START, START + since)).toBe(runs);
  });
});

describe('what was learnt', () => {
  const before = [tieWall(1, 0, 'missed'), tieWall(2, 0, 'sound', 1)];

  test('counts walls since the start alone, rightly read or not', () => {
    const today = [tieWall(3, 1, 'found'), tieWall(4, 1, 'found', 1), tieWall(5, 1, 'sound')];
    expect(learntSince([...before, ...today], START + DAY)).toMatchObject({
      exercises: 3,
      // A false call on a wall is no wall read rightly.
      faulty: { walls: 2, right: 1 },
      sound: { walls: 1, right: 1 },
      nowFound: ['shallow-tie'],
      missed: [],
      newFamilies: [],
      newlyMastered: [],
    });
  });

  test('a fault found and then missed again is still missed', () => {
    const today = [tieWall(3, 1, 'found'), tieWall(4, 1, 'missed')];
    expect(learntSince([...before, ...today], START + DAY)).toMatchObject({
      nowFound: [],
      missed: ['shallow-tie'],
    });
  });

  test('a family met for the first time is new', () => {
    expect(learntSince([tieWall(3, 1, 'found')], START + DAY).newFamilies).toEqual(['ties']);
  });

  // 10 of 10 found: P(hit rate at least .8) = 1 - .8^11 = .914, over the gate of .90; 9 sound walls of 9: 1 - .8^10 = .893, over .85.
  test('a family is mastered by the wall that completes the proof', () => {
    const walls = [
      ...Array.from({ length: 9 }, (_, number) => tieWall(number, 0, 'found')),
      ...Array.from({ length: 9 }, (_, number) => tieWall(20 + number, 0, 'sound')),
    ];
    const last = tieWall(40, 1, 'found');
    expect(learntSince([...walls, last], START + DAY).newlyMastered).toEqual(['ties']);
    expect(learntSince(walls, START + DAY).newlyMastered).toEqual([]);
  });
});
