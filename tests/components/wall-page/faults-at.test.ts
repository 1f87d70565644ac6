import { expect, test } from 'vitest';
import { faultsAt, placesFor } from '../../../components/wall-page/faults-at';
import type { FaultChoice } from '../../../lib/wall-page/fault-choices';
import type { PickedPart } from '../../../lib/wall-page/nearby-parts';
import { FAULTS, UNIT } from './samples';

const FAULT: FaultChoice = {
  id: 'course-off-level',
  name: 'Course off level',
  looksLike: 'A slope.',
  whereToLook: 'Front.',
  family: 'Line',
  markedOn: ['course'],
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

test('a fault of the panel goes on the panel from its edge', () => {
  expect(placesFor({ ...FAULT, markedOn: ['panel'] }, EDGE)).toEqual([PANEL]);
});

test('a fault that only a head joint can have never goes on the bed, however near that is', () => {
  const [bed, head] = UNIT.nearby;
  expect(placesFor({ ...FAULT, markedOn: ['head'] }, UNIT)).toEqual([head]);
  expect(placesFor({ ...FAULT, markedOn: ['bed', 'head'] }, UNIT)).toEqual([bed, head]);
});

test('only faults that the part or something near it can have are offered', () => {
  expect(faultsAt(FAULTS, UNIT).map(({ id }) => id)).toEqual(FAULTS.map(({ id }) => id));
  expect(faultsAt(FAULTS, EDGE).map(({ id }) => id)).toEqual(['out-of-plumb']);
});
