import { describe, expect, test } from 'vitest';
import {
  bondOffsetsOf,
  headJointFor,
  lapOf,
  openingWidth,
  piecesOf,
  pierLength,
  returnLength,
} from '../../../lib/trade/bond';

const times = (count: number, piece: number) => Array.from({ length: count }, () => piece);

describe('pieces and their joints make the unit again', () => {
  test.each([
    [215, 10],
    [193.675, 9.525],
    [230, 10],
    [190, 10],
    [390, 0],
  ])('%d mm at %d', (length, joint) => {
    const { half, third, twoThirds, quarter, threeQuarter } = piecesOf(length, joint);
    expect(2 * half + joint).toBeCloseTo(length, 9);
    expect(3 * third + 2 * joint).toBeCloseTo(length, 9);
    expect(third + joint + twoThirds).toBeCloseTo(length, 9);
    expect(quarter + joint + threeQuarter).toBeCloseTo(length, 9);
    expect(4 * quarter + 3 * joint).toBeCloseTo(length, 9);
  });

  test('190 mm at 10, by hand', () => {
    const { half, third, twoThirds, quarter, threeQuarter } = piecesOf(190, 10);
    expect([half, quarter, threeQuarter]).toEqual([90, 40, 140]);
    expect(third).toBeCloseTo(56.6667, 4);
    expect(twoThirds).toBeCloseTo(123.3333, 4);
  });

  test('offsets of 190 mm at 10', () => {
    const { half, third, quarter } = bondOffsetsOf(190, 10);
    expect([half, quarter]).toEqual([100, 50]);
    expect(third).toBeCloseTo(66.6667, 4);
  });
});

describe('lengths in units', () => {
  test.each([
    [1, 190, 210, 200],
    [4.5, 890, 910, 900],
    [0.5, 90, 110, 100],
  ])('%d of 190 mm: pier %d, opening %d, return %d', (units, pier, opening, wall) => {
    expect(pierLength(units, 190, 10)).toBe(pier);
    expect(openingWidth(units, 190, 10)).toBe(opening);
    expect(returnLength(units, 190, 10)).toBe(wall);
  });
});

describe('head joint', () => {
  test.each([
    ['two halves', 190, [90, 90], 10],
    ['laid dry', 600, [200, 200, 200], 0],
    ['ten bricks in their modular length', 1990, times(10, 190), 10],
    ['a wall 9 mm longer', 1999, times(10, 190), 11],
  ])('%s', (_, wall, pieces, joint) => {
    expect(headJointFor(wall, pieces)).toBe(joint);
  });
});

describe('lap at a quarter of 200 mm', () => {
  test.each([
    [0, 'straight'],
    [0.125, 'short'],
    [49.875, 'short'],
    [50, 'enough'],
    [100, 'enough'],
  ])('offset %d: %s', (offset, lap) => {
    expect(lapOf(offset, 200, 0.25)).toBe(lap);
  });

  test.each([
    [59.875, 'short'],
    [60, 'enough'],
  ])('offset %d with at least 60 mm: %s', (offset, lap) => {
    expect(lapOf(offset, 200, 0.25, 60)).toBe(lap);
  });

  test('nothing asked: only a straight joint is one', () => {
    expect([lapOf(0, 200, 0), lapOf(1, 200, 0)]).toEqual(['straight', 'enough']);
  });
});

test.each([
  ['a unit of no length', () => piecesOf(0, 10), 'length: 0 is not above zero'],
  ['a joint below nothing', () => piecesOf(215, -10), 'joint: -10 is negative'],
  [
    'joints wider than the unit',
    () => piecesOf(30, 10),
    'joint: three of 10 mm leave nothing of 30 mm to quarter',
  ],
  ['offsets of no number', () => bondOffsetsOf(NaN, 10), 'length: NaN is not a finite number'],
  ['no wall', () => headJointFor(0, [90, 90]), 'wall length: 0 is not above zero'],
  ['one piece', () => headJointFor(190, [190]), 'pieces: 1 have no joint between them'],
  ['a piece of nothing', () => headJointFor(190, [90, 0]), 'pieces.1: 0 is not above zero'],
  [
    'pieces longer than the wall',
    () => headJointFor(3000, times(14, 215)),
    'pieces: 3010 mm do not fit in 3000 mm',
  ],
  ['no units', () => returnLength(0, 190, 10), 'units: 0 is not above zero'],
  ['an opening of no units', () => openingWidth(-1, 190, 10), 'units: -1 is not above zero'],
  ['a pier that is all joint', () => pierLength(0.05, 190, 10), 'pier length: 0 is not above zero'],
  ['a lap the other way', () => lapOf(-1, 200, 0.25), 'offset: -1 is negative'],
  ['a lap on no unit', () => lapOf(1, 0, 0.25), 'length: 0 is not above zero'],
  ['a share below nothing', () => lapOf(1, 200, -0.25), 'share: -0.25 is negative'],
  ['percent for a share', () => lapOf(1, 200, 25), 'share: 25 is more than the whole unit'],
  ['a least that is no number', () => lapOf(1, 200, 0.25, NaN), 'least: NaN is not a finite number'],
])('refuses %s', (_, act, message) => {
  expect(act).toThrow(RangeError);
  expect(act).toThrow(message);
});
