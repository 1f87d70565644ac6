import { describe, expect, test } from 'vitest';
import { movedBy, without } from '../../../lib/photo/by-hand';
import { nominal } from '../../../lib/photo/find';
import type { Joint, Joints } from '../../../lib/photo/joint';
import { measureJoints } from '../../../lib/photo/measure';
import type { QuantityName } from '../../../lib/photo/quantities';
import { type Reference, rectangle } from '../../../lib/photo/reference';

/** Square on, two pixels to a mm. */
const FRAME = { width: 1200, height: 900 };
const REFERENCE: Reference = { kind: 'rectangle', corners: rectangle(1200, 900), width: 600, height: 450 };
const ALONG = [100, 300, 500, 700, 900, 1100];

const bed = (y: number): Joint => ({
  cuts: ALONG.map((x) => ({ from: { x, y: y - 10 }, to: { x, y: y + 10 } })),
});
const head = (x: number, y: number): Joint => ({
  cuts: [-20, 0, 20].map((off) => ({ from: { x: x - 10, y: y + off }, to: { x: x + 10, y: y + off } })),
});
const JOINTS: Joints = {
  beds: [100, 250, 400, 550, 700].map(bed),
  heads: [175, 325, 475, 625].map((y, course) =>
    [200, 600, 1000].map((x) => head(x + (course % 2) * 100, y)),
  ),
  softness: 0.1,
};

function told(joints: Joints, name: QuantityName) {
  const found = measureJoints(FRAME, REFERENCE, joints, { rules: 'canada' }).quantities.find(
    (each) => each.name === name,
  );
  return [found?.value.toFixed(2), found?.n];
}

describe('a line that a person moves or takes out', () => {
  const { mapping } = nominal(FRAME, REFERENCE);

  test('before: courses of 75 mm, joints of 10 mm', () => {
    expect(told(JOINTS, 'gauge')).toEqual(['75.00', 4]);
    expect(told(JOINTS, 'bed-joint')).toEqual(['10.00', 5]);
    expect(told(JOINTS, 'lap')).toEqual(['50.00', 9]);
  });

  test('the lowest bed 4 mm down: four courses are 4 mm higher, and less sure', () => {
    const moved = movedBy(JOINTS, { bed: 4 }, 4, FRAME, mapping);
    expect(told(moved, 'gauge')).toEqual(['76.00', 4]);
    const sdOf = (joints: Joints) =>
      measureJoints(FRAME, REFERENCE, joints, { rules: 'canada' }).quantities[0]?.sd ?? 0;
    // A hand is sure to 1 mm, over four courses.
    expect(Math.sqrt(sdOf(moved) ** 2 - sdOf(JOINTS) ** 2)).toBeCloseTo(0.25, 1);
  });

  test('a head 6 mm to the right: its lap over the next course is 6 mm less', () => {
    const moved = movedBy(JOINTS, { course: 0, head: 1 }, 6, FRAME, mapping);
    expect(told(moved, 'head-joint')).toEqual(['10.00', 12]);
    expect(Number(told(moved, 'lap')[0])).toBeCloseTo(44, 0);
  });

  test('a bed within the wall taken out makes one course of two', () => {
    const fewer = without(JOINTS, { bed: 2 });
    expect(fewer.heads.map((course) => course.length)).toEqual([3, 0, 3]);
    expect(told(fewer, 'tallest-course')).toEqual(['150.00', 3]);
  });

  test.each([0, 4])('bed %d, at an edge, takes its course along', (at) => {
    const fewer = without(JOINTS, { bed: at });
    expect(fewer.heads.map((course) => course.length)).toEqual([3, 3, 3]);
    expect(told(fewer, 'gauge')).toEqual(['75.00', 3]);
  });

  test('a head taken out leaves the others', () => {
    expect(told(without(JOINTS, { course: 1, head: 0 }), 'head-joint')).toEqual(['10.00', 11]);
  });
});
