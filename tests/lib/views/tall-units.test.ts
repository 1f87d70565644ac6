import { describe, expect, test } from 'vitest';
import type { Drawing, Shape } from '../../../lib/drawing/shape';
import type { Point } from '../../../lib/geometry/polygon';
import { behindView } from '../../../lib/views/behind/behind';
import { topsIn } from '../../../lib/views/course-rows';
import { drawingOf } from '../../../lib/views/draw-view';
import { frontJoints } from '../../../lib/views/front/joints';
import { frontShadows } from '../../../lib/views/front/shadows';
import { aboveView } from '../../../lib/views/plan/above';
import { type GridPlace, gridPlaceOf, placeAfterKey } from '../../../lib/views/pointing/keyboard-navigation';
import { partReadouts } from '../../../lib/views/pointing/part-readouts';
import { targetRows } from '../../../lib/views/pointing/targets';
import { svgOf } from '../../../lib/views/print-svg';
import { unitsCut } from '../../../lib/views/section/cut-parts';
import { sectionView } from '../../../lib/views/section/section';
import { refuseUnstandable } from '../../../lib/wall/stands';
import { surveyOf } from '../../../lib/wall/survey';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { handTall } from './hand-wall';

const FRONT = { kind: 'front' } as const;

function surveyed(wall = handTall()) {
  const [survey] = surveyOf(wall).panels;
  if (survey === undefined) throw new RangeError('the hand wall has a panel');
  return survey;
}

const ringsOf = (shapes: readonly Shape[], fill: string) =>
  shapes.flatMap((shape) => (shape.kind === 'area' && shape.fill === fill ? shape.rings : []));

/** Crossings of a line to the right: odd inside. */
function isIn(rings: readonly (readonly Point[])[], [x, y]: Point): boolean {
  return rings.some(
    (ring) =>
      ring.filter(([fromX, fromY], index) => {
        const [toX, toY] = ring[(index + 1) % ring.length] ?? [0, 0];
        return fromY > y !== toY > y && x < fromX + ((toX - fromX) * (y - fromY)) / (toY - fromY);
      }).length %
        2 ===
      1,
  );
}

function spotOf(drawing: Drawing, part: string) {
  const spot = drawing.spots.find((each) => each.part === part);
  return spot && [spot.x, spot.y, spot.width, spot.height];
}

test('the hand wall can stand', () => {
  expect(refuseUnstandable(handTall())).toBeUndefined();
});

describe('mortar lies all round what stands through three courses', () => {
  const mortar = ringsOf(frontJoints(handTall(), surveyed()), 'url:mortar');
  test.each<readonly [string, Point, boolean]>([
    ['right of the quoin in course 1', [100, 40], true],
    ['in course 2', [100, 115], true],
    ['between courses 2 and 3', [100, 145], true],
    ['in course 3', [100, 185], true],
    ['on top of it', [50, 215], true],
    ['left of the first soldier, courses 2, 3 and 4', [205, 110], true],
    ['', [205, 185], true],
    ['', [205, 250], true],
    ['between two soldiers, high up', [275, 270], true],
    ['right of the last soldier, course 4', [415, 250], true],
    ['under a soldier', [240, 75], true],
    ['not in the window', [300, 40], false],
    ['not past the end', [-3, 115], false],
  ])('%s %s: %s', (_, point, there) => {
    expect(isIn(mortar, point)).toBe(there);
  });

  test.each([
    // Beside a lower unit the slot is as high as that one; between soldiers as high as they are.
    ['A1.1/2', [95, 105], [10, 70]],
    ['A2.1/2', [200, 210], [80, 140]],
    ['A2.2/3', [270, 280], [80, 280]],
  ] as const)('an open joint %s', (joint, xs, ys) => {
    const wall = handTall({}, { heads: [{ joint, filled: 0 }] });
    const [slot] = ringsOf(frontJoints(wall, surveyed(wall)), '#1d1715');
    expect([...new Set(slot?.map(([x]) => x))].sort((a, b) => a - b)).toEqual(xs);
    expect([...new Set(slot?.map(([, y]) => y))].sort((a, b) => a - b)).toEqual(ys);
  });

  test('one face a unit, quoins in a stone of their own', () => {
    const svg = svgOf(surveyedWall(handTall()), FRONT);
    expect(svg.match(/fill="url\(#unit\d[ab]\)"/g)).toHaveLength(16);
    expect(svg.match(/fill="url\(#quoin\d[ab]\)"/g)).toHaveLength(1);
  });
});

describe('shadows beside what stands through', () => {
  const dark = (wall: ReturnType<typeof handTall>) => ringsOf(frontShadows(surveyed(wall)), '#170c08');
  test('a quoin 8 mm proud shades what is beside it in each of its courses, and the beds there', () => {
    const rings = dark(handTall({ 'A1.1': { set: 8 } }));
    for (const y of [40, 75, 115, 145, 185]) expect(isIn(rings, [97, y])).toBe(true);
    expect(isIn(rings, [97, 240])).toBe(false);
  });
  test('a brick 8 mm proud in course 3 shades the soldier beside it there, not above', () => {
    const rings = dark(handTall({ 'A3.1': { set: 8 } }));
    expect(isIn(rings, [202, 185])).toBe(true);
    expect(isIn(rings, [202, 250])).toBe(false);
  });
  test('a soldier that leans 24 mm out over its 200 stands out 4 mm beside the middle of course 4', () => {
    // Course 4 is 220 to 280; beside it and its bed, 210 to 280, the soldier's middle is 165 over its foot at 80: 24 × (0.825 − 0.5) = 7.8.
    const rings = dark(handTall({ 'A2.4': { lean: 24 } }));
    expect(isIn(rings, [411, 265])).toBe(true);
    // Beside course 2 it stands back.
    expect(isIn(rings, [411, 100])).toBe(false);
  });
});

describe('cut through', () => {
  test.each([
    [50, ['A1.1', 'A4.1', 'A5.1']],
    // In the joint right of the quoin: what lies to its left, once.
    [100, ['A1.1', 'A4.1', 'A5.1']],
    [150, ['A1.2', 'A2.1', 'A3.1', 'A4.1', 'A5.1']],
    // In the joint left of the first soldier.
    [205, ['A2.1', 'A3.1', 'A4.1', 'A5.1']],
    [310, ['A2.3', 'A5.2']],
  ])('at %s', (x, units) => {
    expect(unitsCut(surveyed(), x).map(({ unit }) => unit.id)).toEqual(units);
  });

  test('course 3 from above: quoin and soldiers cut where they stand, all in one row', () => {
    const view = { kind: 'above', panel: 'A', course: 3 } as const;
    const drawing = aboveView(surveyedWall(handTall()), view, 'mm');
    const [row, ...others] = targetRows(surveyedWall(handTall()), view, drawing, 'units', 'mm');
    expect(others).toEqual([]);
    expect(row?.targets.map(({ part }) => part)).toEqual(['A1.1', 'A3.1', 'A2.2', 'A2.3', 'A2.4', 'A3.2']);
    expect(spotOf(drawing, 'A2.3')).toEqual([280, 0, 60, 100]);
    // The quoin ends with this course: its top is seen. The soldiers go on.
    expect(ringsOf(drawing.shapes, 'url:cut-stone')).toHaveLength(0);
    expect(ringsOf(drawing.shapes, 'url:cut-brick')).toHaveLength(3);
    // Joints: quoin and brick, brick and soldier, two between soldiers, soldier and brick.
    expect(ringsOf(drawing.shapes, 'url:mortar')).toHaveLength(5);
  });

  test('course 1 from above: the quoin is cut, in stone', () => {
    const drawing = aboveView(surveyedWall(handTall()), { kind: 'above', panel: 'A', course: 1 }, 'mm');
    expect(ringsOf(drawing.shapes, 'url:cut-stone')).toHaveLength(1);
    expect(spotOf(drawing, 'A1.1/2')).toEqual([95, 4, 10, 96]);
  });

  test('the base shows three courses where a quoin stands in the first', () => {
    const drawing = sectionView(surveyedWall(handTall()), { kind: 'section', at: 'base' }, 'mm');
    const parts = drawing.spots.map(({ part }) => part);
    expect(parts).toContain('A3.2');
    expect(parts).not.toContain('A4.2');
  });

  test('the courses to come are lines that stop at what stands through them', () => {
    expect(topsIn(surveyed()).slice(0, 4)).toEqual([
      [
        [105, 70],
        [620, 70],
      ],
      [
        [105, 140],
        [200, 140],
      ],
      [
        [420, 140],
        [620, 140],
      ],
      [
        [0, 210],
        [200, 210],
      ],
    ]);
  });

  test('behind a soldier the sheet is as wide as it is high, so that its words have room', () => {
    const { box, labels } = behindView(surveyedWall(handTall()), 'A2.3', 'mm');
    expect([box.x, box.width]).toEqual([-110, 280]);
    expect(labels.map(({ text }) => text)).toContain('Course 2, soldier, unit 3: its back,');
  });
});

test.each([
  ['A2.3', ', number 2 in the row, standing through course 4'],
  ['A1.1', ', standing through course 3'],
  ['A1.2', ', bat'],
])('after the name of %s stands "%s"', (part, name) => {
  expect(partReadouts(surveyOf(handTall()), FRONT, 'mm').get(part)).toBe(name);
});

describe('keyboard travel past what stands through', () => {
  const wall = handTall();
  const rows = targetRows(
    surveyedWall(wall),
    FRONT,
    drawingOf(surveyedWall(wall), FRONT, 'mm'),
    'units',
    'mm',
  );
  const after = (part: string, keys: readonly string[]): string | undefined => {
    const start = gridPlaceOf(rows, part);
    if (start === null) throw new RangeError(part);
    const place = keys.reduce<GridPlace>((at, key) => placeAfterKey(rows, at, key, false) ?? at, start);
    return rows[place.row]?.targets[place.index]?.part;
  };
  const [UP, DOWN, LEFT, RIGHT] = ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight'];

  test.each([
    ['A2.3', [UP], 'A5.2'],
    ['A5.2', [DOWN], 'A2.3'],
    ['A5.2', [DOWN, UP], 'A5.2'],
    ['A5.2', [DOWN, DOWN], 'A1.2'],
    ['A1.1', [UP], 'A4.1'],
    ['A2.1', [LEFT], 'A1.1'],
    ['A3.1', [LEFT, RIGHT], 'A3.1'],
    ['A3.1', [RIGHT], 'A2.2'],
    ['A3.1', [RIGHT, RIGHT, RIGHT, RIGHT], 'A3.2'],
    ['A3.2', [LEFT], 'A2.4'],
    ['A3.2', ['Home'], 'A1.1'],
    ['A3.1', ['End'], 'A3.2'],
    ['A4.2', [DOWN], 'A3.2'],
    ['A1.1', ['PageUp'], 'A5.1'],
  ])('from %s by %s to %s', (part, keys, to) => {
    expect(after(part, keys)).toBe(to);
  });

  test.each(['units', 'joints'] as const)(
    'every one of the %s is reached by arrows from the first',
    (layer) => {
      const all = targetRows(
        surveyedWall(wall),
        FRONT,
        drawingOf(surveyedWall(wall), FRONT, 'mm'),
        layer,
        'mm',
      );
      const start = gridPlaceOf(all, all[0]?.targets[0]?.part ?? '');
      const seen = new Map(start ? [[JSON.stringify(start), start]] : []);
      for (const place of seen.values()) {
        for (const key of [UP, DOWN, LEFT, RIGHT]) {
          const next = placeAfterKey(all, place, key ?? '', false);
          if (next) seen.set(JSON.stringify(next), next);
        }
      }
      const reached = new Set([...seen.values()].map(({ row, index }) => all[row]?.targets[index]?.part));
      expect([...reached].sort()).toEqual(
        all.flatMap(({ targets }) => targets.map(({ part }) => part)).sort(),
      );
    },
  );
});
