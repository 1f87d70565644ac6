import { expect, test } from 'vitest';
import { matchMarks } from '../../lib/marking/match';
import { rateWall } from '../../lib/marking/rated-wall';
import { sampleFinding, sampleMark } from './marking-samples';

const findings = [
  sampleFinding('shallow-tie', ['A-tie3.1'], [0, 0, 10, 10], { hazard: 'could fall' }),
  sampleFinding('open-head', ['A1.1/2'], [100, 0, 10, 10], { hazard: 'lets water in' }),
  sampleFinding('proud-unit', ['A9.1'], [200, 0, 10, 10]),
];
const marks = [
  sampleMark('A-tie3.1', [5, 5], 'shallow-tie', { sure: 3 }),
  sampleMark('A1.1/2', [105, 5], 'thick-joint', { sure: 2 }),
  sampleMark('A7.7', [700, 5], 'thick-joint', { sure: 1 }),
];
const match = matchMarks(findings, marks, 5);

test('place and name: a wrong name is a false mark and leaves the fault unfound', () => {
  expect(rateWall(findings, marks, match, 'place and name')).toEqual({
    faults: [
      { rating: 3, weight: 3 },
      { rating: null, weight: 2 },
      { rating: null, weight: 1 },
    ],
    falseRatings: [2, 1],
  });
});

test('place alone: a wrong name still finds', () => {
  expect(rateWall(findings, marks, match, 'place')).toEqual({
    faults: [
      { rating: 3, weight: 3 },
      { rating: 2, weight: 2 },
      { rating: null, weight: 1 },
    ],
    falseRatings: [1],
  });
});

test('a repeat is neither found nor false', () => {
  const again = [...marks, sampleMark('A-tie3.1', [5, 5], 'thin-tie', { sure: 2 })];
  expect(rateWall(findings, again, matchMarks(findings, again, 5), 'place and name').falseRatings).toEqual([
    2, 1,
  ]);
});

test('a sound wall has no faults', () => {
  expect(rateWall([], [], matchMarks([], [], 5), 'place')).toEqual({ faults: [], falseRatings: [] });
});

test('refuses the match of another hand-in', () => {
  expect(() => rateWall(findings, marks.slice(1), match, 'place')).toThrow(
    'match: 3 findings and 3 marks, but 3 and 2 were given',
  );
});
