import { expect, test } from 'vitest';
import { clippedTo, rectRing } from '../../../lib/geometry/polygon';
import { faceOf, outlineOf } from '../../../lib/views/unit-outline';
import { areaOnFace, heightAt, meanLength, topLeft, topRight } from '../../../lib/wall/cut';
import { mirrored } from '../../../lib/wall/mirror';
import type { Unit, Wall } from '../../../lib/wall/model';
import { fingerprintOf } from '../../../lib/wall/print';
import { parseWall } from '../../../lib/wall/schema';
import { surveyOf } from '../../../lib/wall/survey';
import { changed, times, wallOf } from '../../naive/build';

/** Three whole units, and two that begin 100 in: 190 at the foot, 100 at the top. */
const BOXES = wallOf([times(3, 190), [-100, 190, 190]], { masonry: 'anchored' });
const CUT = changed(BOXES, {
  'A1.1': { cut: { left: 90, right: 0 } },
  'A2.1': { cut: { left: 90, right: 0 } },
  'A2.2': { cut: { left: 0, right: 90 } },
});
const unitOf = (wall: Wall, id: string) => wall.units.find((unit) => unit.id === id) as Unit;

test('a cut end takes from the top, and half of it from the length halfway up', () => {
  const unit = unitOf(CUT, 'A2.2');
  expect([topLeft(unit), topRight(unit), meanLength(unit)]).toEqual([300, 400, 145]);
  const box = unitOf(BOXES, 'A2.2');
  expect([topLeft(box), topRight(box), meanLength(box)]).toEqual([300, 490, 190]);
});

test('over a slope a unit is as high as the slope is there', () => {
  const unit = unitOf(CUT, 'A2.1');
  expect([100, 130, 145, 190, 290].map((x) => heightAt(unit, x))).toEqual([0, 20, 30, 60, 60]);
});

// By hand: the trapezium 190, 100 and 60 high; its first 45 mm, a triangle 45 by 30; its lower half.
test('areas on a cut face', () => {
  const unit = { length: 190, height: 60, cut: { left: 90, right: 0 } };
  const area = (x: number, y: number, width: number, height: number) =>
    areaOnFace(unit, { x, y, width, height });
  expect(area(0, 0, 190, 60)).toBe(8700);
  expect(area(0, 0, 45, 60)).toBe(675);
  expect(area(0, 0, 190, 30)).toBe(190 * 30 - (45 * 30) / 2);
  expect(area(0, 40, 60, 20)).toBe(0);
});

test('what lies only over the cut-away part of a unit does not stand on it', () => {
  const short = changed(
    wallOf([
      [190, -200, 190],
      [-95, 90, 190],
    ]),
    { 'A1.1': { cut: { left: 0, right: 90 } } },
  );
  const below = (wall: Wall) =>
    surveyOf(wall).panels[0]?.courses[1]?.[0]?.below.map(({ unit }) => unit.id) ?? [];
  expect(below(short)).toEqual(['A1.1']);
  expect(below(changed(short, { 'A1.1': { cut: { left: 0, right: 95 } } }))).toEqual([]);
});

test('a cut is read back, mirrored and fingerprinted; a wall without one prints as it did', () => {
  expect(parseWall(JSON.parse(JSON.stringify(CUT)))).toEqual(CUT);
  expect(unitOf(mirrored(CUT), 'A2.1').cut).toEqual({ left: 90, right: 0 });
  expect(unitOf(mirrored(CUT), 'A1.3').cut).toEqual({ left: 0, right: 90 });
  expect(mirrored(mirrored(CUT))).toEqual(CUT);
  expect(fingerprintOf(CUT)).not.toBe(fingerprintOf(BOXES));
  expect(BOXES.units.some((unit) => 'cut' in unit)).toBe(false);
});

test.each([
  [
    'an end with a unit beside it',
    { left: 0, right: 20 },
    'units: A2.1 is cut at an end with a unit beside it',
  ],
  ['more than there is', { left: 191, right: 0 }, 'units: the cuts of A2.1 meet under its top'],
  ['outward', { left: -1, right: 0 }, 'units.3.cut.left: is under 0'],
])('a cut of %s is refused', (_, cut, message) => {
  expect(() => parseWall(changed(BOXES, { 'A2.1': { cut } }))).toThrow(message);
});

test('a cut face is drawn by its four corners, on a slope too', () => {
  const unit = { ...unitOf(CUT, 'A2.1'), fall: 19 };
  expect(faceOf(unit)).toEqual([
    [100, 80],
    [290, 61],
    [290, 121],
    [190, 131],
  ]);
  const corners = faceOf(unit).map(String);
  expect(outlineOf(unit).map(String)).toEqual(expect.arrayContaining(corners));
});

test('a ring is cut to the part that lies in a convex one', () => {
  const triangle = [
    [0, 0],
    [10, 0],
    [0, 10],
  ] as const;
  expect(clippedTo(rectRing(-5, 2, 10, 3), triangle)).toEqual([
    [0, 2],
    [5, 2],
    [5, 5],
    [0, 5],
  ]);
  expect(clippedTo(rectRing(6, 6, 3, 3), triangle)).toEqual([]);
});
