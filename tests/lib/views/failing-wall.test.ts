import { describe, expect, test } from 'vitest';
import { laidContacts } from '../../../lib/failing/state/contacts';
import { type FailingWall, type Move, STILL, type WallState } from '../../../lib/failing/state/model';
import { crackShapes } from '../../../lib/views/failing/crack-shapes';
import { movedWall } from '../../../lib/views/failing/moved-wall';
import type { UnitId } from '../../../lib/wall/part-id';
import { surveyOf } from '../../../lib/wall/survey';
import { ledge, wallOf } from '../../naive/build';

/** Two courses of two units of 190 × 60 mm with joints of 10 mm, and what has become of them. */
function failing(
  moves: Readonly<Record<string, Partial<Move>>>,
  change: Partial<WallState> = {},
): FailingWall {
  const wall = wallOf(
    [
      [190, 190],
      [190, 190],
    ],
    { masonry: 'anchored', supports: [ledge(0, 390)] },
  );
  const survey = surveyOf(wall);
  return {
    survey,
    state: {
      years: 1,
      season: 'summer',
      stuff: 'clay',
      held: [],
      contacts: laidContacts(survey).map((contact) => ({ ...contact, state: 'cracked', sound: 0 })),
      moves: new Map(Object.entries(moves).map(([id, move]) => [id as UnitId, { ...STILL, ...move }])),
      splits: new Map(),
      supports: new Map(),
      missing: new Map(),
      damage: [],
      zones: [],
      ...change,
    },
  };
}

describe('units stand where they have gone', () => {
  test('along, up and out; a turn against the clock lifts the right end', () => {
    const wall = movedWall(failing({ 'A2.2': { u: 4, v: 3, w: 2, turn: 10 } }));
    const unit = wall.units.find(({ id }) => id === 'A2.2');
    // Laid at 200, 80. 10 mm per m on 190 mm: its left end is 0.95 mm lower than its middle, its right end 0.95 mm higher.
    expect([unit?.x, unit?.set]).toEqual([204, 2]);
    expect(Math.round((unit?.y ?? 0) * 100) / 100).toBe(82.05);
    expect(Math.round((unit?.fall ?? 0) * 100) / 100).toBe(-1.9);
  });

  test('one that is cut through is drawn as two pieces, each where it has gone', () => {
    const split = new Map([['A2.2' as UnitId, { x: 260, right: { ...STILL, u: 6 } }]]);
    const pieces = movedWall(failing({}, { splits: split })).units.filter(({ id }) => id === 'A2.2');
    expect(pieces.map(({ x, length }) => [x, length])).toEqual([
      [200, 60],
      [266, 130],
    ]);
  });

  test('one that has come away is not drawn', () => {
    const wall = movedWall(failing({}, { missing: new Map([['A2.1' as UnitId, 'bed-print' as const]]) }));
    expect(wall.units.map(({ id }) => id)).toEqual(['A1.1', 'A1.2', 'A2.2']);
  });
});

describe('a crack is drawn', () => {
  test('as wide as its sides have parted, in the middle between them', () => {
    const [area] = crackShapes(failing({ 'A2.2': { u: 8 } }), 'A');
    const rings = area?.kind === 'area' ? area.rings : [];
    const xs = rings
      .filter((ring) => ring.some(([, y]) => y > 100 && y < 120))
      .flat()
      .filter(([, y]) => y > 139)
      .map(([x]) => x);
    // Joint 190 to 200, now 190 to 208: its middle is 199. One side of a crack is ragged by less than a millimetre.
    expect(Math.abs(Math.max(...xs) - 203)).toBeLessThanOrEqual(0.001);
    expect(Math.abs(Math.min(...xs) - 195)).toBeLessThanOrEqual(0.8);
  });

  test('nowhere where nothing has moved by a tenth of a millimetre', () => {
    expect(crackShapes(failing({ 'A2.2': { u: 0.09 } }), 'A')).toEqual([]);
    expect(crackShapes(failing({ 'A2.2': { u: 0.1 } }), 'A')).toHaveLength(1);
  });
});
