import { describe, expect, test } from 'vitest';
import { layPlan } from '../../../lib/generate/generate';
import { planWith } from '../../../lib/generate/planner';
import { distanceTo } from '../../../lib/geometry/box';
import { drawingOf } from '../../../lib/views/draw-view';
import { type GridPlace, gridPlaceOf, placeAfterKey } from '../../../lib/views/pointing/keyboard-navigation';
import { type Layer, targetAt, targetRows } from '../../../lib/views/pointing/targets';
import type { View } from '../../../lib/views/view';
import { WALL_KINDS, type Wall } from '../../../lib/wall/model';
import { namesOf } from '../../../lib/wall/part-names';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { handWall, handWallWith, handWindow } from './hand-wall';

const FRONT: View = { kind: 'front' };

function rowsOf(wall: Wall, layer: Layer, view: View = FRONT) {
  return targetRows(surveyedWall(wall), view, drawingOf(surveyedWall(wall), view, 'mm'), layer, 'mm');
}

describe('names are measurements', () => {
  test.each([
    ['units', 'A1.1', 'Course 1, unit 1, stretcher'],
    ['units', 'A4.1', 'Course 4, unit 1, bat'],
    ['joints', 'A2.2-bed', 'Bed joint under unit 2, course 2, left 10 mm, right 10 mm'],
    ['joints', 'A1.1/2', 'Head joint between units 1 and 2, course 1, 10 mm wide, full'],
    ['fixings', 'A-ledge', 'The concrete ledge, 620 mm long'],
    ['fixings', 'A-left-end', 'The left end'],
  ] as const)('%s: %s is "%s"', (layer, part, name) => {
    const names = rowsOf(handWall(), layer).flatMap(({ targets }) => targets);
    expect(names.find((target) => target.part === part)?.name).toBe(name);
  });

  test('a tapering bed and a half-filled head say what a rule would read', () => {
    const wall = handWallWith('A3.2', { fall: 4 }, { heads: [{ joint: 'A3.1/2', filled: 40 }] });
    const names = rowsOf(wall, 'joints').flatMap(({ targets }) => targets.map(({ name }) => name));
    expect(names).toContain('Bed joint under unit 2, course 3, left 10 mm, right 6 mm');
    expect(names).toContain('Head joint between units 1 and 2, course 3, 10 mm wide, partly open');
  });

  test('ties are named only where they are seen', () => {
    const tie =
      'Tie 1 on course 2, 310 mm from the left, 1.00 mm strap 24 mm wide, 90 mm long, 40 mm in the bed';
    const seen = rowsOf(handWall(), 'fixings', { kind: 'before-cover' });
    expect(seen.flatMap(({ targets }) => targets.map(({ name }) => name))).toContain(tie);
    expect(
      rowsOf(handWall(), 'fixings').flatMap(({ targets }) => targets.map(({ name }) => name)),
    ).not.toContain(tie);
  });
});

test('a part of any wall goes by the name that its card, the marks and the result give it, whatever is read there besides', () => {
  const wall = layPlan(planWith('door-corner', 'anchored', 'canada', [], 4));
  const nameOf = namesOf(surveyedWall(wall));
  const layers = ['units', 'joints', 'fixings'] as const;
  const targets = layers.flatMap((layer) => rowsOf(wall, layer).flatMap((row) => row.targets));
  expect(targets.length).toBeGreaterThan(500);
  expect(targets.filter(({ part, name }) => !`${name},`.startsWith(`${nameOf(part)},`))).toEqual([]);
});

test('from six metres nobody reads a joint; that one is open shows', () => {
  const wall = handWallWith(
    'A3.2',
    { fall: 4 },
    {
      heads: [
        { joint: 'A3.1/2', filled: 0 },
        { joint: 'A2.1/2', filled: 40 },
      ],
    },
  );
  const rows = targetRows(
    surveyedWall(wall),
    FRONT,
    drawingOf(surveyedWall(wall), FRONT, 'mm'),
    'joints',
    'mm',
    'six metres',
  );
  const names = rows.flatMap(({ targets }) => targets.map(({ name }) => name));
  expect(names.filter((name) => /\d (mm|in)\b|%/.test(name))).toEqual([]);
  expect(names).toContain('Head joint between units 1 and 2, course 3, open');
  expect(names).toContain('Head joint between units 1 and 2, course 2');
});

describe('a plan in strips', () => {
  // Over 1.5 m long: in strips, the second under the first on the sheet.
  const wall = layPlan(planWith('plain-panel', 'anchored', 'canada', [], 4));

  test('names the units of a course as they lie along the wall, not as they lie on the sheet', () => {
    const view: View = { kind: 'above', panel: 'A', course: 2 };
    const units = rowsOf(wall, 'units', view).flatMap(({ targets }) => targets.map(({ part }) => part));
    expect(units.length).toBeGreaterThan(8);
    expect(units).toEqual(units.map((_, index) => `A2.${index + 1}`));
  });

  test('goes on from strip to strip by the keyboard, to what lies under or over the wanted place', () => {
    const rows = rowsOf(wall, 'units', { kind: 'above', panel: 'A', course: 2 });
    const [first] = rows[0]?.targets ?? [];
    const from = gridPlaceOf(rows, 'A2.1');
    const under = from && placeAfterKey(rows, from, 'ArrowDown', false);
    const next = rows[0]?.targets[under?.index ?? 0];
    if (!first || !under || !next) throw new RangeError('there is nothing to go to');
    expect(next.box.y + next.box.height).toBeLessThan(first.box.y);
    const middle = first.box.x + first.box.width / 2;
    expect(next.box.x <= middle && next.box.x + next.box.width >= middle).toBe(true);
    expect(placeAfterKey(rows, under, 'ArrowUp', false)).toMatchObject({ row: 0, index: 0 });
  });

  test('has a ledge that shows in every strip once, and it can be hit in each', () => {
    const rows = rowsOf(wall, 'fixings', { kind: 'below', at: 'A' });
    const ledges = rows.flatMap(({ targets }) => targets.filter(({ part }) => part === 'A-ledge'));
    expect(ledges).toHaveLength(1);
    const [other] = ledges[0]?.others ?? [];
    if (other === undefined) throw new RangeError('the ledge shows in one strip only');
    expect(targetAt(rows, other.x + other.width / 2, other.y + other.height / 2, 0)?.part).toBe('A-ledge');
  });
});

describe('rows from the bottom up', () => {
  test('a course a row; beds and heads apart', () => {
    expect(rowsOf(handWall(), 'units').map(({ key }) => key)).toEqual([
      'unit 1',
      'unit 2',
      'unit 3',
      'unit 4',
    ]);
    expect(
      rowsOf(handWall(), 'joints')
        .map(({ key }) => key)
        .slice(0, 4),
    ).toEqual(['bed 1', 'head 1', 'bed 2', 'head 2']);
  });
});

test('before cover there are no units to point at: the fixings are offered instead', () => {
  const parts = rowsOf(handWall(), 'units', { kind: 'before-cover' }).flatMap(({ targets }) =>
    targets.map(({ part }) => part),
  );
  expect([...parts].sort()).toEqual(['A-left-end', 'A-right-end', 'A-tie2.1']);
});

describe('what a point means', () => {
  const joints = rowsOf(handWall(), 'joints');
  test.each([
    [100, 5, 12, 'A1.1-bed'],
    [205, 40, 12, 'A1.1/2'],
    [216, 40, 12, 'A1.1/2'],
    [100, 40, 12, undefined],
  ])('(%s, %s) within %s', (x, y, slack, part) => {
    expect(targetAt(joints, x, y, slack)?.part).toBe(part);
  });

  test('distance to a box, inside and past a corner', () => {
    const box = { x: 0, y: 0, width: 10, height: 10 };
    expect(distanceTo(box, 5, 5)).toBe(0);
    expect(distanceTo(box, 13, 14)).toBe(5);
  });
});

describe('keyboard travel', () => {
  const rows = rowsOf(handWall(), 'units');
  const from = (part: string): GridPlace =>
    gridPlaceOf(rows, part) ?? { row: -1, index: -1, along: -1, wantedX: 0 };
  const after = (part: string, ...keys: readonly string[]): string | undefined => {
    const place = keys.reduce<GridPlace>((at, key) => placeAfterKey(rows, at, key, false) ?? at, from(part));
    return rows[place.row]?.targets[place.index]?.part;
  };
  test.each([
    ['A1.1', ['ArrowRight'], 'A1.2'],
    ['A1.3', ['ArrowRight'], 'A1.3'],
    ['A1.2', ['ArrowUp'], 'A2.2'],
    ['A1.2', ['ArrowUp', 'ArrowUp', 'ArrowDown', 'ArrowDown'], 'A1.2'],
    ['A2.2', ['End'], 'A2.4'],
    ['A2.4', ['Home'], 'A2.1'],
    ['A1.1', ['PageUp'], 'A4.1'],
    ['A4.4', ['PageDown'], 'A1.3'],
  ])('from %s by %s to %s', (part, keys, to) => {
    expect(after(part, ...keys)).toBe(to);
  });

  test('Ctrl+End and Ctrl+Home: the far corners', () => {
    expect(placeAfterKey(rows, from('A1.1'), 'End', true)).toMatchObject({ row: 3, index: 3 });
    expect(placeAfterKey(rows, from('A4.4'), 'Home', true)).toMatchObject({ row: 0, index: 0 });
  });

  test('another key does not travel', () => {
    expect(placeAfterKey(rows, from('A1.1'), 'x', false)).toBeNull();
  });

  test.each(WALL_KINDS)('on a laid %s right then left, and up then down, come back', (kind) => {
    const laid = layPlan(planWith(kind, 'anchored', 'canada', [], 4));
    for (const layer of ['units', 'joints'] as const) {
      const all = rowsOf(laid, layer);
      for (const [row, { targets }] of all.entries()) {
        for (const [index, target] of targets.entries()) {
          const place = gridPlaceOf(all, target.part);
          expect(place).toMatchObject({ row, index });
          if (place === null) continue;
          const right = placeAfterKey(all, place, 'ArrowRight', false);
          const back =
            right && index < targets.length - 1 ? placeAfterKey(all, right, 'ArrowLeft', false) : place;
          expect(back).toMatchObject({ row, index });
          const up = placeAfterKey(all, place, 'ArrowUp', false);
          const down = up && row < all.length - 1 ? placeAfterKey(all, up, 'ArrowDown', false) : place;
          expect(down).toMatchObject({ row, index });
        }
      }
    }
  });

  test('the opening, its lintel and the ledge can be reached', () => {
    const parts = rowsOf(handWindow(), 'fixings').flatMap(({ targets }) => targets.map(({ part }) => part));
    expect([...parts].sort()).toEqual(['A-ledge', 'A-left-end', 'A-lintel1', 'A-right-end', 'A-window1']);
  });
});
