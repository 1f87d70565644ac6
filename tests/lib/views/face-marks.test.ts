import { describe, expect, test } from 'vitest';
import type { Point } from '../../../lib/geometry/polygon';
import { boundAt } from '../../../lib/limits/bound';
import { namedLimitOf } from '../../../lib/limits/limits';
import { blemishes } from '../../../lib/views/front/blemishes';
import { frontView } from '../../../lib/views/front/front';
import { partReadouts } from '../../../lib/views/pointing/part-readouts';
import { CONDITIONS, type Unit } from '../../../lib/wall/model';
import { surveyOf } from '../../../lib/wall/survey';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { handUnits, handWall, handWallWith } from './hand-wall';

const MARKS = ['chip', 'flake', 'crumbling', 'smear', 'stain'] as const;
const BODY = '#123456';

function pointsOf(unit: Unit): readonly Point[] {
  return blemishes([unit], BODY).flatMap(({ rings }) => rings.flat());
}

/** All thirteen units of the hand wall, so that chance has its say: 200 × 60 and 95 × 60. */
const units = (change: Partial<Unit>) => handUnits().map((unit) => ({ ...unit, ...change }));

describe.each(MARKS)('%s', (condition) => {
  test('lies on the face of its unit, also of one that is not level', () => {
    for (const unit of units({ condition, fall: 6 })) {
      const points = pointsOf(unit);
      expect(points.length).toBeGreaterThan(4);
      for (const [x, y] of points) {
        const along = (x - unit.x) / unit.length;
        const up = y - (unit.y - unit.fall * along);
        expect(along).toBeGreaterThanOrEqual(-1e-9);
        // A grain of a crumbling edge, or a ring out of its shade, may pass the sloping edge by 6 mm × its own breadth ÷ 200.
        expect(along).toBeLessThanOrEqual(1 + 1e-9);
        expect(up).toBeGreaterThanOrEqual(-6);
        expect(up).toBeLessThanOrEqual(60.1);
      }
      const level = pointsOf({ ...unit, fall: 0 });
      expect(Math.min(...level.map(([, y]) => y))).toBeGreaterThanOrEqual(unit.y - 1e-9);
      expect(Math.max(...level.map(([, y]) => y))).toBeLessThanOrEqual(unit.y + 60 + 1e-9);
    }
  });

  test('is drawn over the unit that has it, and is the same each time', () => {
    const wall = handWallWith('A2.2', { condition });
    expect(frontView(surveyedWall(wall), 'mm').shapes.length).toBeGreaterThan(
      frontView(surveyedWall(handWall()), 'mm').shapes.length,
    );
    expect(frontView(surveyedWall(wall), 'mm')).toEqual(
      frontView(surveyedWall(handWallWith('A2.2', { condition })), 'mm'),
    );
  });
});

test('walls without them are drawn as before', () => {
  for (const condition of ['sound', 'hairline', 'bloom'] as const) {
    expect(blemishes(units({ condition }), BODY)).toEqual([]);
  }
});

test('a chip takes a corner of the upper arris, and is no larger than the British warranty lets pass', () => {
  // NHBC Standards 2019 9.1.2: 15 mm.
  const limit = namedLimitOf('united-kingdom', 'chip-size');
  expect(limit && boundAt(limit, {})).toBe(15);
  for (const unit of units({ condition: 'chip' })) {
    const points = pointsOf(unit);
    const xs = points.map(([x]) => x);
    const ys = points.map(([, y]) => y);
    expect(Math.max(...xs) - Math.min(...xs)).toBeLessThanOrEqual(15);
    expect(Math.max(...ys) - Math.min(...ys)).toBeLessThanOrEqual(15);
    expect(Math.max(...ys)).toBe(unit.y + 60);
    expect([Math.min(...xs) - unit.x, unit.x + unit.length - Math.max(...xs)]).toContain(0);
  }
});

test('a crumbling edge runs from end to end along the underside, up to a quarter of the height', () => {
  for (const unit of units({ condition: 'crumbling' })) {
    const [gone] = blemishes([unit], BODY);
    const ring = gone?.rings[0] ?? [];
    const ups = ring.map(([, y]) => y - unit.y);
    expect([Math.min(...ring.map(([x]) => x)), Math.max(...ring.map(([x]) => x))]).toEqual([
      unit.x,
      unit.x + unit.length,
    ]);
    expect(ups.slice(0, 2)).toEqual([0, 0]);
    // 60 ÷ 4 = 15, but no more than 13 mm is drawn.
    expect(Math.min(...ups.slice(2))).toBeGreaterThanOrEqual(2);
    expect(Math.max(...ups)).toBeLessThanOrEqual(13);
  }
});

test.each([
  ['chip', ', stretcher, with a small chip at its edge'],
  ['flake', ', stretcher, with a flake off its face'],
  ['crumbling', ', stretcher, with a crumbling edge'],
  ['smear', ', stretcher, with mortar smeared on its face'],
  ['stain', ', stretcher, with a stain running down its face'],
  ['hairline', ', stretcher, with a thin crack'],
  ['sound', ', stretcher'],
] as const)('a unit with %s says so after its name', (condition, words) => {
  const readouts = partReadouts(surveyOf(handWallWith('A2.2', { condition })), { kind: 'front' }, 'mm');
  expect(readouts.get('A2.2')).toBe(words);
});

test('no reading judges', () => {
  const wall = handWall({
    units: handUnits().map((unit, at) => ({
      ...unit,
      condition: CONDITIONS[at % CONDITIONS.length] ?? 'sound',
    })),
  });
  const said = [...partReadouts(surveyOf(wall), { kind: 'front' }, 'mm').values()].join();
  expect(said).not.toMatch(/sound|too|wrong|bad|fault|loose|danger|harmless/);
});
