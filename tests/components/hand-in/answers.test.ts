import { beforeEach, describe, expect, test } from 'vitest';
import {
  answerNow,
  keepAnswer,
  keepWork,
  progressOf,
  reopenWall,
} from '../../../components/hand-in/kept-answers';
import type { Work } from '../../../components/wall-page/work-state';

const UNTOUCHED: Work = {
  marks: [],
  saysSound: false,
  phase: 'looking',
  opened: [],
  readings: [],
  half: null,
};
const MARKED: Work = {
  ...UNTOUCHED,
  marks: [{ part: 'A1.1', fault: 'proud-unit', sure: 2 }],
  opened: ['A1.2'],
};
const ANSWER = {
  place: 1,
  fingerprint: 'f',
  marks: MARKED.marks,
  readings: [],
  saysSound: false,
  opened: ['A1.2'],
  spentMs: 7,
};

beforeEach(() => {
  localStorage.clear();
  sessionStorage.clear();
});

describe('what a device keeps of a wall', () => {
  test.each([
    ['nothing kept', null, 'not begun'],
    ['looked at only', UNTOUCHED, 'not begun'],
    ['a mark', MARKED, 'begun'],
    ['a unit lifted', { ...UNTOUCHED, opened: ['A1.2'] }, 'begun'],
    ['said to be sound, not done yet', { ...UNTOUCHED, saysSound: true, phase: 'review' as const }, 'begun'],
  ])('%s: %j is %s', (_, work, progress) => {
    if (work) keepWork('a', 1, work);
    expect(progressOf('a', 1)).toBe(progress);
  });

  test('stays when the tab is closed: it is not kept in the tab', () => {
    keepWork('a', 1, MARKED);
    expect(sessionStorage).toHaveLength(0);
    expect(localStorage).toHaveLength(1);
  });

  test('a wall that is done hands in its answer; changed again, it hands in what is marked so far', () => {
    keepWork('a', 1, { ...MARKED, phase: 'handed in' });
    keepAnswer('a', ANSWER);
    expect(progressOf('a', 1)).toBe('done');
    expect(answerNow('a', 1, 'other')).toEqual(ANSWER);
    reopenWall('a', 1);
    expect(progressOf('a', 1)).toBe('begun');
    localStorage.setItem('wall-time:set-work a 1', '90');
    expect(answerNow('a', 1, 'other')).toEqual({ ...ANSWER, fingerprint: 'other', spentMs: 90 });
  });

  test.each([
    ['cut short', '{"place":1,"marks":['],
    ['of no place', JSON.stringify({ ...ANSWER, place: undefined })],
    ['with a mark that names no fault', JSON.stringify({ ...ANSWER, marks: [{ part: 'A1.1', sure: 2 }] })],
  ])('an answer %s is none: what is marked counts', (_, text) => {
    keepWork('a', 1, MARKED);
    localStorage.setItem('wall-answer:set-work a 1', text);
    expect(progressOf('a', 1)).toBe('begun');
    expect(answerNow('a', 1, 'other').marks).toEqual(MARKED.marks);
  });

  test('walls of another attempt, and other walls of this one, are others', () => {
    keepAnswer('a', ANSWER);
    expect([progressOf('b', 1), progressOf('a', 2)]).toEqual(['not begun', 'not begun']);
  });

  test('a wall never opened hands in nothing marked', () => {
    expect(answerNow('a', 3, 'f')).toEqual({
      ...{ place: 3, fingerprint: 'f', marks: [], readings: [], saysSound: false, opened: [], spentMs: 0 },
    });
  });
});
