import { describe, expect, test } from 'vitest';
import {
  brought,
  closeUp,
  firstSeen,
  fitted,
  isWhole,
  panned,
  zoomed,
} from '../../../components/wall/gestures/seen-box';
import { mmPerPixel, sheetPoint } from '../../../components/wall/to-screen';

const WHOLE = { x: 0, y: 0, width: 400, height: 200 };

describe('what is seen', () => {
  test('twice as near about a point that stays where it is', () => {
    expect(zoomed(WHOLE, WHOLE, 2, [100, 50])).toEqual({ x: 50, y: 25, width: 200, height: 100 });
  });
  test('never further than the whole, never nearer than a fortieth', () => {
    expect(isWhole(WHOLE, zoomed(WHOLE, WHOLE, 0.5, [0, 0]))).toBe(true);
    expect(zoomed(WHOLE, WHOLE, 1000, [0, 0]).width).toBe(10);
  });
  test('panning stops at the edge', () => {
    const seen = { x: 100, y: 50, width: 200, height: 100 };
    expect(panned(WHOLE, seen, 30, -20)).toEqual({ ...seen, x: 130, y: 30 });
    expect(panned(WHOLE, seen, 500, 500)).toEqual({ ...seen, x: 200, y: 100 });
  });
  test('a part out of view is brought in with a little room, a part in view moves nothing', () => {
    const seen = { x: 0, y: 0, width: 100, height: 50 };
    expect(brought(WHOLE, seen, { x: 20, y: 10, width: 20, height: 10 })).toEqual(seen);
    // Room of 8 at the right and 4 at the top.
    expect(brought(WHOLE, seen, { x: 150, y: 60, width: 20, height: 10 })).toEqual({ ...seen, x: 78, y: 24 });
  });
});

describe('on a screen of another shape', () => {
  // 400 × 200 on 100 × 100: 4 mm a pixel to fit it in, 2 to leave no blank paper.
  const square = { width: 100, height: 100 };

  test('the whole is seen with paper above and below, and nothing further out', () => {
    const whole = fitted(WHOLE, WHOLE, square);
    expect(whole).toEqual({ x: 0, y: -100, width: 400, height: 400 });
    expect(isWhole(WHOLE, whole)).toBe(true);
    expect(zoomed(WHOLE, whole, 0.5, [0, 0])).toEqual(whole);
  });
  test('coming nearer it keeps the shape of the screen, and stops at the edges', () => {
    const near = zoomed(WHOLE, fitted(WHOLE, WHOLE, square), 4, [0, 0]);
    expect(near).toEqual({ x: 0, y: 0, width: 100, height: 100 });
    expect(panned(WHOLE, near, 1000, 1000)).toMatchObject({ x: 300, y: 100 });
  });
  test('a long wall first fills the height, and goes on past both sides', () => {
    const core = { x: 20, y: 20, width: 360, height: 160 };
    expect(firstSeen(WHOLE, core, square)).toEqual({ x: 100, y: 0, width: 200, height: 200 });
  });
  test('a wall of about that shape first just fits, with what stands round it as far as there is room', () => {
    // 140 × 120 in 100 × 100: 1.4 mm a pixel.
    const core = { x: 130, y: 40, width: 140, height: 120 };
    expect(firstSeen(WHOLE, core, square)).toEqual({ x: 130, y: 30, width: 140, height: 140 });
  });
  test('until the size is known, the whole', () => {
    expect(firstSeen(WHOLE, WHOLE, { width: 0, height: 0 })).toEqual(WHOLE);
  });
});

describe('from the screen to the wall', () => {
  test('fitted whole and centred; down on the screen is down on the wall', () => {
    // 400 × 200 mm in 200 × 200 px: 2 mm a pixel, 50 px of margin above and below.
    const screen = { left: 10, top: 20, width: 200, height: 200 };
    expect(mmPerPixel(WHOLE, screen)).toBe(2);
    expect(sheetPoint(WHOLE, screen, 110, 120)).toEqual([200, 100]);
    expect(sheetPoint(WHOLE, screen, 10, 70)).toEqual([0, 200]);
    expect(sheetPoint(WHOLE, screen, 210, 170)).toEqual([400, 0]);
  });
});

test('close to a place: it is in the middle, and a third of what is seen; never nearer than an eighth of the whole', () => {
  const whole = { x: 0, y: 0, width: 3000, height: 1500 };
  expect(closeUp(whole, { x: 1400, y: 700, width: 375, height: 100 })).toEqual({
    x: 1025,
    y: 468.75,
    width: 1125,
    height: 562.5,
  });
  // A head joint 10 wide: an eighth of 3,000; at the edge of the sheet not past it.
  expect(closeUp(whole, { x: 0, y: 0, width: 10, height: 60 })).toEqual({
    x: 0,
    y: 0,
    width: 375,
    height: 187.5,
  });
  // A whole wall: the whole.
  expect(closeUp(whole, whole)).toEqual(whole);
});
