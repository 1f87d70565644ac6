import { expect, test } from 'vitest';
import { lookAlikeAt } from '../../lib/inspect/recognise';
import { partsOf } from '../../lib/wall/parts';
import { surveyOf } from '../../lib/wall/survey';
import { wallOf } from '../naive/build';

// NBC 9.20.3.2.(5) changes at 25 °C: from there a ticket of over an hour and a half looks late under any rules.
test.each([
  [24, null],
  [25, 'hot-day-mortar'],
  [30, 'hot-day-mortar'],
])('fresh mortar at %d °C, marked as stale, is told apart as %s', (air, lookAlike) => {
  const batch = {
    id: 'batch-1',
    fromCourse: 1,
    toCourse: 2,
    portland: 1,
    lime: 1,
    sand: 6,
    air,
    minutes: 60,
  } as const;
  const wall = wallOf([[190], [190]], { batches: [batch] });
  const part = partsOf(surveyOf(wall)).get('batch-1');
  expect(part && lookAlikeAt(surveyOf(wall), part, 'stale-mortar')).toBe(lookAlike);
});

// Two courses of two units each: what stands upright in course 1 is no bed.
test.each([
  ['A1.1-bed', 'thick-first-bed'],
  ['A1.1/2', null],
  ['A2.1-bed', null],
])('a sound joint marked as too thick: %s is told apart as %s', (id, lookAlike) => {
  const wall = wallOf([
    [190, 190],
    [190, 190],
  ]);
  const part = partsOf(surveyOf(wall)).get(id);
  if (part === undefined) throw new RangeError(`the wall has no ${id}`);
  expect(lookAlikeAt(surveyOf(wall), part, 'thick-joint')).toBe(lookAlike);
});
