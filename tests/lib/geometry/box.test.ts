import { expect, test } from 'vitest';
import { boxRound, clipped, distanceTo, overlaps } from '../../../lib/geometry/box';
import { medianOf, spacedOut } from '../../../lib/geometry/interval';

// A box from (100, 50) to (300, 110). Every expected value is worked out by hand.
const BOX = { x: 100, y: 50, width: 200, height: 60 };

test('the box round several reaches from the lowest left corner to the highest right one', () => {
  const other = { x: 280, y: 20, width: 90, height: 40 };
  expect(boxRound([BOX, other])).toEqual({ x: 100, y: 20, width: 270, height: 90 });
});

test('a box is clipped to another on each side where it runs past', () => {
  expect(clipped(BOX, { x: 0, y: 60, width: 250, height: 500 })).toEqual({
    x: 100,
    y: 60,
    width: 150,
    height: 50,
  });
  expect(clipped(BOX, { x: 320, y: 50, width: 10, height: 10 }).width).toBe(-20);
});

test('boxes that only touch do not overlap', () => {
  const beside = { x: 300, y: 50, width: 10, height: 60 };
  expect(overlaps(BOX, beside)).toBe(false);
  expect(overlaps(BOX, { ...beside, x: 299.875 })).toBe(true);
  expect(overlaps(BOX, { ...BOX, y: 110 })).toBe(false);
});

test('the distance to a box is zero inside and runs to the nearest corner past it', () => {
  expect(distanceTo(BOX, 200, 80)).toBe(0);
  expect(distanceTo(BOX, 300, 50)).toBe(0);
  expect(distanceTo(BOX, 90, 80)).toBe(10);
  expect(distanceTo(BOX, 303, 114)).toBe(5);
});

test('places on a line keep their order and their distance, below the top', () => {
  // 10 and 12 are pushed to 10 and 54; 60 to 98, past the top at 90: all three end 8 lower.
  expect(spacedOut([10, 12, 60], 44)).toEqual([10, 54, 98]);
  expect(spacedOut([10, 12, 60], 44, 90)).toEqual([2, 46, 90]);
  expect(spacedOut([60, 10], 20)).toEqual([60, 10]);
  expect(spacedOut([], 20)).toEqual([]);
});

test('the middle value, or the mean of the middle two, in whatever order they come', () => {
  expect(medianOf([9, 1, 2])).toBe(2);
  expect(medianOf([4, 1, 3, 100])).toBe(3.5);
  expect(medianOf([])).toBe(0);
});
