import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../../lib/drawing/shape';
import type { Point } from '../../../lib/geometry/polygon';
import { frontView } from '../../../lib/views/front/front';
import { slotRing } from '../../../lib/views/front/joints';
import { frontShadows, shadowBeside, shadowUnder } from '../../../lib/views/front/shadows';
import { sectionView } from '../../../lib/views/section/section';
import { outlineOf } from '../../../lib/views/unit-outline';
import { DAYLIGHT } from '../../../lib/views/viewing-conditions';
import { surveyOf } from '../../../lib/wall/survey';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { HAND_PANEL, handUnits, handWall, handWallWith, handWindow } from './hand-wall';

function areaOf(ring: readonly Point[]): number {
  return Math.abs(
    ring.reduce((sum, [x, y], index) => {
      const [nextX, nextY] = ring[(index + 1) % ring.length] ?? [0, 0];
      return sum + (x * nextY - nextX * y) / 2;
    }, 0),
  );
}

function spotOf(drawing: Drawing, part: string) {
  const spot = drawing.spots.find((each) => each.part === part);
  return spot && [spot.x, spot.y, spot.width, spot.height];
}

function shadowsOf(wall: ReturnType<typeof handWall>) {
  const [survey] = surveyOf(wall).panels;
  return survey ? frontShadows(survey).flatMap((shape) => (shape.kind === 'area' ? shape.rings : [])) : [];
}

const [left, right] = handUnits().filter(({ course }) => course === 1);

describe('where parts lie on the sheet: y still up', () => {
  const drawing = frontView(surveyedWall(handWall()), 'mm');
  test.each([
    ['A1.1', [0, 10, 200, 60]],
    ['A1.1-bed', [0, 0, 200, 10]],
    ['A1.1/2', [200, 10, 10, 60]],
    ['A4.4', [525, 220, 95, 60]],
    ['A2', [0, 80, 620, 60]],
    ['A-ledge', [0, -40, 620, 40]],
  ])('%s', (part, box) => {
    expect(spotOf(drawing, part)).toEqual(box);
  });

  test('a return stands 300 mm past the end of the wall before it', () => {
    const beyond = {
      ...HAND_PANEL,
      id: 'B' as const,
      leftEnd: 'corner' as const,
      plan: { leftX: 620, leftZ: 0, rightX: 620, rightZ: -620 },
    };
    const corner = handWall({ panels: [{ ...HAND_PANEL, rightEnd: 'corner' }, beyond], kind: 'door-corner' });
    const view = frontView(surveyedWall(corner), 'mm');
    expect(view.frames.map(({ panel, x }) => [panel, x])).toEqual([
      ['A', 0],
      ['B', 920],
    ]);
    expect(view.labels.map(({ text }) => text)).toContain('Return B');
  });

  test('length and height are dimensioned in the chosen system', () => {
    expect(drawing.labels.map(({ text }) => text)).toEqual(['620 mm', '280 mm']);
    // 620 mm = 24.41 in, 280 mm = 11.02 in; sixteenths: 24 7/16 and 11.
    expect(frontView(surveyedWall(handWall()), 'inches').labels.map(({ text }) => text)).toEqual([
      '24 7/16 in',
      '11 in',
    ]);
  });
});

describe('outlines', () => {
  test('wander no more than 0.35 mm from the measured face', () => {
    for (const unit of handUnits()) {
      for (const [x, y] of outlineOf(unit)) {
        expect(x).toBeGreaterThanOrEqual(unit.x - 0.35);
        expect(x).toBeLessThanOrEqual(unit.x + unit.length + 0.35);
        expect(y).toBeGreaterThanOrEqual(unit.y - 0.35);
        expect(y).toBeLessThanOrEqual(unit.y + unit.height + 0.35);
      }
    }
  });

  test('slope with the unit: the right end of a unit with a fall of 6 lies 6 lower', () => {
    const sloped = handUnits()
      .slice(0, 1)
      .flatMap((unit) => outlineOf({ ...unit, fall: 6 }));
    expect(Math.min(...sloped.map(([, y]) => y))).toBeGreaterThanOrEqual(3.65);
    expect(Math.max(...sloped.map(([x, y]) => (x > 195 ? y : 0)))).toBeLessThanOrEqual(64.35);
  });
});

describe('open head joints', () => {
  test.each([
    [1, 600],
    [0.5, 300],
    [0.25, 150],
  ])('a share of %s open is drawn as %s mm² of a joint 10 × 60', (open, area) => {
    expect(left && right && areaOf(slotRing(left, right, open))).toBeCloseTo(area, 9);
  });

  test('it is open at the top', () => {
    const ring = left && right ? slotRing(left, right, 0.5) : [];
    expect(Math.max(...ring.map(([, y]) => y))).toBe(70);
  });
});

describe('shadows', () => {
  test('a step of 4 mm throws 10 mm down and 6.4 mm right', () => {
    expect(shadowUnder([0, 0], [100, 0], 4, 4, DAYLIGHT)).toEqual([
      [0, 0],
      [100, 0],
      [106.4, -10],
      [6.4, -10],
    ]);
  });
  test('a twist throws a wedge: nothing at the left, 15 mm at the right for 6 mm', () => {
    const [, , atRight, atLeft] = shadowUnder([0, 0], [200, 0], 0, 6, DAYLIGHT);
    expect(atLeft).toEqual([0, 0]);
    expect(atRight?.[1]).toBe(-15);
  });
  test('beside a proud end', () => {
    expect(shadowBeside([0, 0], [0, 60], 5, 5, DAYLIGHT)).toEqual([
      [0, 0],
      [0, 60],
      [8, 47.5],
      [8, -12.5],
    ]);
  });
  test('a flat wall throws none', () => {
    expect(shadowsOf(handWall())).toEqual([]);
  });
  test('twice as proud, twice as long', () => {
    const reach = (set: number) =>
      150 - Math.min(...shadowsOf(handWallWith('A3.2', { set })).flatMap((ring) => ring.map(([, y]) => y)));
    expect(reach(4)).toBe(10);
    expect(reach(8)).toBe(20);
  });
  test('a whole panel pushed out alike throws none: only an instrument finds it', () => {
    const units = handUnits().map((unit) => ({ ...unit, set: 15 }));
    expect(shadowsOf(handWall({ units }))).toEqual([]);
  });
});

test('a section is not asked of a wall that has none', () => {
  expect(() => sectionView(surveyedWall(handWall()), { kind: 'section', at: 'lintel' }, 'mm')).toThrow(
    'section: this wall has none at its lintel',
  );
  expect(
    sectionView(surveyedWall(handWindow()), { kind: 'section', at: 'lintel' }, 'mm').frames,
  ).toHaveLength(1);
});
