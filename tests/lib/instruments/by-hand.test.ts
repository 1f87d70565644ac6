import { describe, expect, test } from 'vitest';
import type { InstrumentId } from '../../../lib/instruments/instrument';
import { readAt, type Turn } from '../../../lib/instruments/read';
import type { Reading } from '../../../lib/instruments/reading';
import type { Batch, Pat, Tie, Wall } from '../../../lib/wall/model';
import { partsOf } from '../../../lib/wall/parts';
import { surveyOf } from '../../../lib/wall/survey';
import { courseChanged, times, wallOf } from '../../naive/build';
import {
  HAND_LEDGE,
  HAND_PANEL,
  HAND_TIE,
  handUnits,
  handWall,
  handWallWith,
  handWindow,
} from '../views/hand-wall';

function at(wall: Wall, instrument: InstrumentId, id: string, turn: Turn = {}): readonly Reading[] {
  const part = partsOf(surveyOf(wall)).get(id);
  if (part === undefined) throw new Error(`no such part: ${id}`);
  return readAt(surveyOf(wall), instrument, part, turn);
}

const tie = (id: `${number}.${number}`, x: number, y: number): Tie => ({
  ...HAND_TIE,
  id: `A-tie${id}`,
  x,
  y,
});
/** Two studs, two ties up each: 140 apart up, 210 across. */
const TIES = [tie('1.1', 100, 75), tie('3.1', 100, 215), tie('1.2', 310, 75), tie('3.2', 310, 215)];
const MIX: Batch = {
  id: 'batch-1',
  fromCourse: 1,
  toCourse: 4,
  portland: 1,
  lime: 0.5,
  sand: 6,
  air: 21,
  minutes: 95,
};

// The hand wall: units 200 × 60 × 100 (halves of 95), joints and beds of 10, gauge 70, panel 620 long; its ledge's edge lies 20 back.
describe('sizes', () => {
  test.each<[InstrumentId, string, string, number, Wall]>([
    ['tape', 'A1.2', 'Length', 200, handWall()],
    ['tape', 'A2.1', 'Length', 95, handWall()],
    ['tape', 'A1.2', 'Height', 60, handWall()],
    ['tape', 'A1', 'Length of the course', 620, handWall()],
    ['tape', 'A', 'Length', 620, handWall()],
    ['tape', 'A', 'Height', 270, handWall()],
    ['tape', 'A-ledge', 'Face of the units, from its edge', 20, handWall()],
    ['tape', 'A-ledge', 'First course standing on the ledge', 100, handWall()],
    // Two units of three stand on it: 400 of 600.
    [
      'tape',
      'A-ledge',
      'First course standing on the ledge',
      66.7,
      handWall({ supports: [{ ...HAND_LEDGE, toX: 410 }] }),
    ],
    [
      'tape',
      'A1.3',
      'First course standing on the ledge',
      0,
      handWall({ supports: [{ ...HAND_LEDGE, material: 'wood' }] }),
    ],
    ['tape', 'A-window1', 'Width', 210, handWindow()],
    ['tape', 'A-window1', 'Height', 130, handWindow()],
    ['tape', 'A-lintel1', 'Bearing on the left', 100, handWindow()],
    ['tape', 'A-lintel1', 'Bearing on the right', 120, handWindow()],
    ['tape', 'A-lintel1', 'Clear span', 210, handWindow()],
    ['tape', 'A-lintel1', 'Upright leg', 90, handWindow()],
    ['tape', 'A-lintel1', 'Flat leg', 80, handWindow()],
    ['joint-gauge', 'A-lintel1', 'Thickness of the steel', 8, handWindow()],
    ['tape', 'A-tie2.1', 'Length in the bed', 40, handWall()],
    ['tape', 'A-tie2.1', 'Width of the strap', 24, handWall()],
    ['straightedge', 'A-tie2.1', 'Thickness of the strap', 1, handWall()],
    ['tape', 'A-tie1.1', 'Next tie up', 140, handWall({ ties: TIES })],
    ['tape', 'A-tie3.2', 'Next tie down', 140, handWall({ ties: TIES })],
    ['tape', 'A-tie1.2', 'Next stud with ties, left', 210, handWall({ ties: TIES })],
    ['tape', 'A-tie1.1', 'Next stud with ties, right', 210, handWall({ ties: TIES })],
    ['tape', 'A', 'Widest gap between ties, up a stud', 140, handWall({ ties: TIES })],
    ['tape', 'A', 'Widest gap between ties, stud to stud', 210, handWall({ ties: TIES })],
    // The end runs from 0 to 280; its nearest stud has ties at 75 and 215: gaps of 75, 140 and 65.
    ['tape', 'A-left-end', 'Nearest tie to this end', 100, handWall({ ties: TIES })],
    ['tape', 'A-left-end', 'Widest gap up this end', 140, handWall({ ties: TIES })],
    ['tape', 'A-right-end', 'No tie so far from this end', 620, handWall({ ties: [] })],
    ['joint-gauge', 'A2.2-bed', 'Bed at the left end', 10, handWall()],
    ['joint-gauge', 'A1.1/2', 'Width of the joint', 10, handWall()],
    ['joint-gauge', 'A1.1/2', 'Width of the joint', 14, handWallWith('A1.2', { x: 214, length: 196 })],
    // A face leaning 1 mm in 100: 2.7 over 270.
    [
      'plumb-line',
      'A',
      'Lean over the whole height',
      2.7,
      handWall({ units: handUnits().map((unit) => ({ ...unit, set: 0.01 * (unit.y + 30) })) }),
    ],
    ['mason-line', 'A1', 'Drop, end to end', 4, handWallWith('A1.3', { y: 6 })],
    // Ends at 10, the middle unit at 6; the line of 620 sags a hundredth of a millimetre.
    ['mason-line', 'A1', 'Middle, against the line', 4, handWallWith('A1.2', { y: 6 })],
    ['straightedge', 'A2.2', 'One end against the other', 5, handWallWith('A2.2', { twist: -5 })],
    ['straightedge', 'A2.2', 'Face against its neighbours', 6, handWallWith('A2.2', { set: 6 })],
    // Course 4 ought to start at 10 + 3 × 70 = 220.
    [
      'gauge-rod',
      'A',
      'Top course against the rod',
      9,
      handWall({ units: handUnits().map((unit) => (unit.course === 4 ? { ...unit, y: 229 } : unit)) }),
    ],
    // 9 in three rises is 12 in four.
    [
      'gauge-rod',
      'A',
      'That is, in four courses',
      12,
      handWall({ units: handUnits().map((unit) => (unit.course === 4 ? { ...unit, y: 229 } : unit)) }),
    ],
    ['gauge-rod', 'A2', 'Against the rod', 0, handWall()],
    ['probe', 'A1.1/2', 'Filled with mortar', 40, handWall({ heads: [{ joint: 'A1.1/2', filled: 40 }] })],
    ['probe', 'A1.1/2', 'Filled with mortar', 100, handWall()],
    [
      'probe',
      'A',
      'Mortar lies back',
      7,
      handWall({ panels: [{ ...HAND_PANEL, profile: 'raked', recess: 7 }] }),
    ],
    ['mirror', 'A-window1', 'Lintel over the opening', 1, handWindow()],
    ['mirror', 'A-window1', 'Lintel over the opening', 0, { ...handWindow(), supports: [HAND_LEDGE] }],
    ['tie-finder', 'A2.2', 'Metal in the bed above, from the left end', 205, handWall()],
    ['thermometer', 'batch-1', 'Air', 21, handWall({ batches: [MIX] })],
    ['thermometer', 'batch-1', 'From mixing to the last unit', 95, handWall({ batches: [MIX] })],
    // 6 to 1 and a half: 4 to 1.
    ['thermometer', 'batch-1', 'Sand to one of cement and lime', 4, handWall({ batches: [MIX] })],
  ])('%s at %s: %s is %d', (instrument, part, what, truth, wall) => {
    const reading = at(wall, instrument, part).find((each) => each.what === what);
    expect(Math.abs((reading?.value ?? Number.NaN) - truth)).toBeLessThanOrEqual(reading?.error ?? 0);
  });

  test('a tapering bed: both ends, their difference and their mean, from the two figures read', () => {
    // A2.2 lies on tops at 70: its left end at 80, its right one 2 lower.
    const [left, right, difference, mean] = at(
      handWallWith('A2.2', { fall: 2 }),
      'joint-gauge',
      'A2.2-bed',
    ).map(({ value }) => value ?? Number.NaN);
    expect(Math.abs((left ?? 0) - 10)).toBeLessThanOrEqual(0.2);
    expect(Math.abs((right ?? 0) - 8)).toBeLessThanOrEqual(0.2);
    expect(difference).toBeCloseTo((left ?? 0) - (right ?? 0), 9);
    expect(mean).toBeCloseTo(((left ?? 0) + (right ?? 0)) / 2, 9);
  });

  test('a line of head joints that wanders 5 mm over four joints', () => {
    const wall = courseChanged(
      wallOf(times(8, 0).map((_, at) => (at % 2 ? [90, 190, 190, 90] : [190, 190, 190]))),
      5,
      (unit) => (unit.position === 1 ? { length: 195 } : unit.position === 2 ? { x: 205, length: 185 } : {}),
    );
    const [reading] = at(wall, 'plumb-line', 'A1.1/2');
    expect(Math.abs((reading?.value ?? Number.NaN) - 5)).toBeLessThanOrEqual(1);
    expect(reading?.words).toBe('over 4 joints');
  });
});

describe('behind a unit', () => {
  const COVER: readonly Pat[] = [{ x: 0, y: 0, width: 100, height: 60 }];
  const half = handWallWith('A2.2', { back: COVER }, { masonry: 'adhered' });

  test('half a back of 200 × 60 is covered, and 6,000 mm² lie bare, once the unit is lifted', () => {
    const [covered, bare] = at(half, 'tape', 'A2.2', { lifted: true });
    expect(Math.abs((covered?.value ?? Number.NaN) - 50)).toBeLessThanOrEqual(1);
    expect(Math.abs((bare?.value ?? Number.NaN) - 6000)).toBeLessThanOrEqual(100);
  });

  test('of a unit in its place the tape tells no cover', () => {
    expect(at(half, 'tape', 'A2.2').map(({ what }) => what)).toEqual(['Length', 'Height']);
  });

  test('it sounds hollow, which is no number and no finding', () => {
    const [sound] = at(half, 'tap', 'A2.2');
    expect(sound).toMatchObject({ value: null, unit: '', words: 'hollow: lift it and look' });
  });

  test('of many full backs most ring solid, and a few sound hollow all the same', () => {
    const units = handUnits().map((unit) => ({ ...unit, back: [{ x: 0, y: 0, width: 200, height: 60 }] }));
    const sounds = Array.from({ length: 20 }, (_, n) =>
      units.map((unit) => ({ ...unit, set: n / 8 })),
    ).flatMap((each) => {
      const wall = handWall({ masonry: 'adhered', units: each });
      return each.map(({ id }) => at(wall, 'tap', id)[0]?.words);
    });
    const hollow = sounds.filter((words) => words !== 'solid').length;
    expect(hollow).toBeGreaterThan(0);
    expect(hollow).toBeLessThan(sounds.length / 8);
  });
});

describe('words', () => {
  test.each<[InstrumentId, string, string, Wall]>([
    ['mirror', 'A3.2', 'a steel angle', handWindow()],
    ['mirror', 'A1.1', 'concrete ledge', handWall()],
    ['mirror', 'A2.2', 'the course below', handWall()],
    ['mirror', 'A-window1', 'no lintel to be seen', { ...handWindow(), supports: [HAND_LEDGE] }],
    ['tap', 'A2.2', 'solid', handWall()],
    ['scratch', 'batch-1', 'soft: grains of sand come off', handWall({ batches: [MIX] })],
    ['scratch', 'A2.2-bed', 'hard: the nail only marks it', handWall({ batches: [{ ...MIX, sand: 4 }] })],
    ['scratch', 'A1.1/2', 'it crumbles: sand runs out', handWall({ batches: [{ ...MIX, sand: 9 }] })],
    ['tie-finder', 'A2.1', 'none found', handWall()],
    ['tie-finder', 'A2', 'in 1 place', handWall()],
    ['tie-finder', 'A', 'in 4 places', handWall({ ties: TIES })],
    ['straightedge', 'A2.2', 'left end proud', handWallWith('A2.2', { twist: -5 })],
    ['mason-line', 'A1', 'right end low', handWallWith('A1.3', { y: 6 })],
    [
      'spirit-level',
      'A',
      'top leans out',
      handWall({ units: handUnits().map((unit) => ({ ...unit, set: 0.01 * unit.y })) }),
    ],
  ])('%s at %s: %s', (instrument, part, words, wall) => {
    expect(at(wall, instrument, part)[0]?.words).toBe(words);
  });

  test('a tie finder says nothing of how far a tie reaches in', () => {
    const short = at(handWall({ ties: [{ ...HAND_TIE, embedment: 5 }] }), 'tie-finder', 'A2.2');
    expect(short).toEqual(at(handWall(), 'tie-finder', 'A2.2'));
  });
});

describe('between two points', () => {
  const from = (wall: Wall, id: string) => ({ from: partsOf(surveyOf(wall)).get(id) ?? null });

  test('from one tie to another: across and up', () => {
    const wall = handWall({ ties: TIES });
    const [across, up] = at(wall, 'tape', 'A-tie3.2', from(wall, 'A-tie1.1'));
    expect(Math.abs((across?.value ?? Number.NaN) - 210)).toBeLessThanOrEqual(1);
    expect(Math.abs((up?.value ?? Number.NaN) - 140)).toBeLessThanOrEqual(1);
    expect([across?.words, up?.words]).toEqual(['to the right', 'up']);
  });

  test('from one face to another: the step, and off plumb', () => {
    const wall = handWallWith('A3.2', { set: -7 });
    const [step] = at(wall, 'straightedge', 'A3.2', from(wall, 'A2.2'));
    const [plumb] = at(wall, 'plumb-line', 'A3.2', from(wall, 'A1.2'));
    expect(Math.abs((step?.value ?? Number.NaN) - 7)).toBeLessThanOrEqual(0.2);
    expect(Math.abs((plumb?.value ?? Number.NaN) - 7)).toBeLessThanOrEqual(1);
    expect([step?.words, plumb?.words]).toEqual(['this one back', 'this one back']);
  });

  test('three courses rise 9 mm more than the rod', () => {
    const wall = handWall({
      units: handUnits().map((unit) => (unit.course === 4 ? { ...unit, y: 229 } : unit)),
    });
    const [rise] = at(wall, 'gauge-rod', 'A4.2', from(wall, 'A1.1'));
    expect(Math.abs((rise?.value ?? Number.NaN) - 9)).toBeLessThanOrEqual(1);
    expect(rise?.what).toBe('Rise of 3 courses against the rod');
  });

  test('nothing from a part to itself, nor along one course with a plumb line', () => {
    const wall = handWall();
    expect(at(wall, 'tape', 'A1.1', from(wall, 'A1.1'))).toEqual([]);
    expect(at(wall, 'plumb-line', 'A1.2', from(wall, 'A1.1'))).toEqual([]);
    expect(at(wall, 'tape', 'A1.1', from(wall, 'A-tie2.1'))).not.toEqual([]);
    expect(at(wall, 'tape', 'A1.1', from(wall, 'A-ledge'))).toEqual([]);
  });
});
