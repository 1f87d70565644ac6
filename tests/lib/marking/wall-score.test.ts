import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../lib/inspect/finding';
import type { PlacedMark } from '../../../lib/marking/mark';
import { matchMarks } from '../../../lib/marking/match';
import { type Credit, creditScore, type Halves, scoreWall } from '../../../lib/marking/wall-score';
import { sampleFinding, sampleMark } from './samples';

const score = (findings: readonly Finding[], marks: readonly PlacedMark[]) =>
  scoreWall(findings, matchMarks(findings, marks, 5));

describe('weights 5, 3, 2: each false mark costs a sixth', () => {
  const of = (...halves: Halves[]): Credit[] =>
    [5, 3, 2].map((weight, i) => ({ weight, halves: halves[i] ?? 0 }));
  test.each([
    ['all right', of(2, 2, 2), 0, 1],
    ['all right, one false', of(2, 2, 2), 1, 5 / 6],
    ['first two right', of(2, 2, 0), 0, 0.8],
    ['first right, second with a wrong name', of(2, 1, 0), 0, 0.65],
    ['first two right, two false', of(2, 2, 0), 2, 7 / 15],
    ['all right, six false', of(2, 2, 2), 6, 0],
    ['nothing', of(0, 0, 0), 0, 0],
    ['nothing but false marks', of(0, 0, 0), 9, 0],
  ])('%s', (_, credits, falseMarks, expected) => {
    expect(creditScore(credits, falseMarks)).toBe(expected);
  });
});

describe('a sound wall', () => {
  test.each([
    [0, 1],
    [1, 0.5],
    [2, 0],
    [3, 0],
  ])('%i false marks', (falseMarks, expected) => {
    expect(creditScore([], falseMarks)).toBe(expected);
  });
});

describe('hazards', () => {
  const tie = sampleFinding('shallow-tie', ['A-tie3.1'], [0, 0, 10, 10], { hazard: 'could fall' });
  const head = sampleFinding('open-head', ['A1.1/2'], [100, 0, 10, 10], { hazard: 'lets water in' });
  const proud = sampleFinding('proud-unit', ['A9.1'], [200, 0, 10, 10], { hazard: 'looks' });
  const onTie = sampleMark('A-tie3.1', [5, 5], 'shallow-tie');
  const onHead = sampleMark('A1.1/2', [105, 5], 'open-head');
  const onProud = sampleMark('A9.1', [205, 5], 'proud-unit');

  test('could fall counts 3, lets water in 2, looks 1', () => {
    expect(score([tie, head, proud], [onTie]).score).toBe(3 / 6);
    expect(score([tie, head, proud], [onTie, onHead]).score).toBe(5 / 6);
    expect(score([tie, head, proud], [onTie, onHead, onProud]).score).toBe(1);
  });

  test('a missed fault that could fall holds the score at half, and says so', () => {
    const many = [tie, head, { ...head, parts: ['A2.1/2' as const], region: { ...head.region, y: 500 } }];
    const marks = [onHead, sampleMark('A2.1/2', [105, 505], 'open-head')];
    expect(score(many, marks)).toEqual({
      score: 0.5,
      uncapped: 4 / 7,
      capped: true,
      reason: 'A fault that could make part of the wall fall was not found, so the score stops at half.',
    });
  });

  test('below half there is nothing to cap', () => {
    expect(score([tie, head, proud], [onProud])).toEqual({
      score: 1 / 6,
      uncapped: 1 / 6,
      capped: false,
      reason: null,
    });
  });

  test('a wrong name on it is found, so it does not cap', () => {
    const misnamed = { ...onTie, fault: 'thin-tie' as const };
    expect(score([tie, head, proud], [misnamed, onHead, onProud])).toEqual({
      score: 0.75,
      uncapped: 0.75,
      capped: false,
      reason: null,
    });
  });
});

describe('refusals', () => {
  const proud = sampleFinding('proud-unit', ['A9.1'], [0, 0, 10, 10]);
  test.each([
    [
      'a negative weight',
      () => creditScore([{ weight: -1, halves: 2 }], 0),
      'credits.0.weight: -1 is negative',
    ],
    [
      'a weight of nothing',
      () => creditScore([{ weight: 0, halves: 2 }], 0),
      'credits.0.weight: 0 is not positive',
    ],
    ['part of a false mark', () => creditScore([], 0.5), 'false marks: 0.5 is not a whole number'],
    ['no number', () => creditScore([], NaN), 'false marks: NaN is not a finite number'],
    [
      'the match of another wall',
      () => scoreWall([proud, proud], matchMarks([proud], [], 5)),
      'match.findings: 1 results for 2 findings',
    ],
  ])('%s', (_, run, message) => {
    expect(run).toThrow(message);
  });
});
