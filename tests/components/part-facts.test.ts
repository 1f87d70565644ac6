import { expect, test } from 'vitest';
import { type FaultChoice, type PickedPart, placesFor } from '../../components/practice/part-facts';

const FAULT: FaultChoice = {
  id: 'course-off-level',
  name: 'Course off level',
  looksLike: 'A slope.',
  whereToLook: 'Front.',
  family: 'Line',
  scope: 'course',
  asks: { what: 'Drop', unit: 'mm' },
};
const PANEL = { id: 'A', kind: 'panel', name: 'The whole panel' } as const;
const EDGE: PickedPart = {
  id: 'A-left-end',
  kind: 'edge',
  name: 'The left end',
  nearby: [PANEL],
};

test('a fault of a course has no place at an edge: which course it is cannot be told there', () => {
  expect(placesFor(FAULT, EDGE)).toEqual([]);
});

test('a fault of the panel goes on the panel from its edge, and one that this wall cannot have stays where it was put', () => {
  expect(placesFor({ ...FAULT, scope: 'panel' }, EDGE)).toEqual([PANEL]);
  expect(placesFor({ ...FAULT, scope: 'tie' }, EDGE)).toEqual([EDGE]);
});
