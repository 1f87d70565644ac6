import { expect, test } from 'vitest';
import { boxRound, clipped, distanceTo, overlaps } from '../../lib/geometry/box';

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
