import { describe, expect, test } from 'vitest';
import {
  fewLearnersWords,
  fewWallsWords,
  itemFlag,
  setLengthWords,
} from '../../../lib/classes/statistics/small-groups';
import { needsOf, needWords } from '../../../lib/classes/statistics/teach-next';
import { answer, falseMark, fault } from './statistics-answers';

describe('honest about few', () => {
  test('19 walls are too few to judge a learner, 20 are not', () => {
    expect(fewWallsWords(1)).toMatch(/^Only 1 wall so far/);
    expect(fewWallsWords(19)).toMatch(/^Only 19 walls so far/);
    expect(fewWallsWords(20)).toBe(null);
  });

  test('the chance error is said until 40 learners', () => {
    expect(fewLearnersWords(2)).toMatch(/^Fewer than 3 learners/);
    expect(fewLearnersWords(10)).toMatch(/out by 0\.33 by chance/);
    expect(fewLearnersWords(40)).toBe(null);
  });

  test('a set is short, enough to practise on, or enough for marks', () => {
    expect(setLengthWords(11, 20, 8)).toMatch(/short even for practice/);
    expect(setLengthWords(12, 20, 8)).toMatch(/enough to practise on/);
    expect(setLengthWords(60, 40, 20)).toBe(null);
  });

  test.each([
    [0.5, -0.1, 'check the key'],
    [0.5, 0, null],
    [0.19, 0.3, 'nearly all miss it'],
    [0.2, null, null],
    [0.95, null, null],
    [0.96, null, 'nearly all see it'],
  ])('share right %f, discrimination %s: %s', (p, discrimination, flag) => {
    expect(itemFlag({ p, discrimination, alphaWithout: null })).toBe(flag);
  });
});

describe('what to teach next', () => {
  const times = (count: number, text: string) =>
    Array.from({ length: count }, () => answer({ faults: [fault(text)] }));

  test('what could fall comes before what only looks wrong, missed equally often', () => {
    const needs = needsOf(
      [
        ...times(5, 'gauge-drift>'),
        ...times(5, 'gauge-drift>gauge-drift'),
        ...times(5, 'no-lintel>'),
        ...times(5, 'no-lintel>no-lintel'),
      ],
      3,
    );
    expect(needs).toEqual([
      { kind: 'missed', fault: 'no-lintel', missed: 5, met: 10 },
      { kind: 'missed', fault: 'gauge-drift', missed: 5, met: 10 },
    ]);
  });

  test('what was met fewer than five times says nothing', () => {
    expect(needsOf(times(4, 'open-head>'), 3)).toEqual([]);
  });

  test('once of ten is chance, not a need', () => {
    expect(needsOf([...times(1, 'open-head>'), ...times(9, 'open-head>open-head')], 3)).toEqual([]);
  });

  test('a swap and a false name are needs too, and one fault is said once', () => {
    const needs = needsOf(
      [
        ...times(8, 'thin-joint>open-head'),
        ...times(2, 'thin-joint>'),
        ...Array.from({ length: 6 }, () => answer({ falseMarks: [falseMark('thin-tie')] })),
      ],
      3,
    );
    expect(needs.map((need) => needWords(need, (name) => name.replace('-', ' ')))).toEqual([
      '“thin joint” was called “open head” 8 times of 10.',
      '“thin tie” was marked where there was none, on 6 walls of 16.',
    ]);
  });
});
