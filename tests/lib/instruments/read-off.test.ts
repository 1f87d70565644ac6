import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { INSTRUMENTS } from '../../../lib/instruments/instrument';
import { INSTRUMENT } from '../../../lib/instruments/instrument-list';
import { readAt } from '../../../lib/instruments/read';
import { notNegative, readOff, seedOf, sized, toStep } from '../../../lib/instruments/read-off';
import { partsOf } from '../../../lib/wall/parts';
import { surveyOf } from '../../../lib/wall/survey';
import { handWall, handWallWith, handWindow } from '../views/hand-wall';

const hold = { instrument: 'tape', part: 'A1.1', turned: false } as const;
const truths = fc.record({
  value: fc.double({ min: -5000, max: 5000, noNaN: true }),
  resolution: fc.constantFrom(0.05, 0.1, 0.5, 1, 10),
  error: fc.constantFrom(0.05, 0.2, 0.5, 1, 3, 15, 100),
});

test('a reading lies on a step of its instrument and is never farther off than the error stated', () => {
  fc.assert(
    fc.property(truths, fc.integer(), (truth, seed) => {
      // An instrument that shows coarser steps than its error could not keep its word: none does (see below).
      fc.pre(truth.error >= truth.resolution / 2);
      const { value } = readOff({ ...hold, seed }, 'Length', { ...truth, unit: 'mm' });
      const read = value ?? Number.NaN;
      expect(Math.abs(read - truth.value)).toBeLessThanOrEqual(truth.error + 1e-9);
      expect(read).toBe(toStep(read, truth.resolution));
    }),
  );
});

test('the size of a reading is no farther off than the reading', () => {
  fc.assert(
    fc.property(truths, fc.integer(), (truth, seed) => {
      fc.pre(truth.error >= truth.resolution / 2);
      const read = readOff({ ...hold, seed }, 'Drop', { ...truth, unit: 'mm' });
      const size = sized(read, ['level', 'up', 'down']);
      expect(Math.abs((size.value ?? Number.NaN) - Math.abs(truth.value))).toBeLessThanOrEqual(
        truth.error + 1e-9,
      );
      expect(size.words).toBe(read.value === 0 ? 'level' : (read.value ?? 0) > 0 ? 'up' : 'down');
    }),
  );
});

test('steps of a half, a tenth and a twentieth are the nearest decimals, halves up', () => {
  expect(toStep(12.24, 0.5)).toBe(12);
  expect(toStep(12.25, 0.5)).toBe(12.5);
  expect(toStep(0.76, 0.05)).toBe(0.75);
  expect(toStep(9.64, 0.1)).toBe(9.6);
  expect(toStep(-9.66, 0.1)).toBe(-9.7);
  expect(toStep(124, 10)).toBe(120);
  expect(Object.is(toStep(-0.01, 0.1), 0)).toBe(true);
});

test('a gap is never less than nothing', () => {
  const reading = readOff({ ...hold, seed: 1 }, 'Gap', {
    value: -4,
    unit: 'mm',
    resolution: 0.1,
    error: 0.2,
  });
  expect(notNegative(reading).value).toBe(0);
});

describe('the same every time', () => {
  test('two surveys of one wall read alike; another wall, another part and another quantity do not', () => {
    const at = (wall: ReturnType<typeof handWall>, part: string) => {
      const found = partsOf(surveyOf(wall)).get(part);
      return found ? readAt(surveyOf(wall), 'tape', found).map(({ value }) => value) : null;
    };
    expect(at(handWall(), 'A1.2')).toEqual(at(handWall(), 'A1.2'));
    expect(seedOf(handWall())).toBe(seedOf(handWall()));
    expect(seedOf(handWallWith('A1.1', { set: 0.125 }))).not.toBe(seedOf(handWall()));
    // Whole units are all 200 long: one draw for all of them would give one reading.
    const lengths = ['A1.1', 'A1.2', 'A1.3', 'A2.2', 'A2.3', 'A3.1', 'A3.2', 'A3.3'].map(
      (id) => at(handWall(), id)?.[0],
    );
    expect(new Set(lengths).size).toBeGreaterThan(1);
  });

  test('no instrument gives two readings of one name at one place', () => {
    for (const wall of [handWall(), handWindow()]) {
      const survey = surveyOf(wall);
      for (const part of partsOf(surveyOf(wall)).values()) {
        for (const id of INSTRUMENTS) {
          const names = readAt(survey, id, part, { lifted: true, turned: true }).map(({ what }) => what);
          expect(new Set(names).size, `${id} at ${part.id}`).toBe(names.length);
        }
      }
    }
  });
});

describe('what an instrument says of itself', () => {
  test.each(INSTRUMENTS)(
    '%s: its steps are no coarser than twice its error, and it reads somewhere',
    (id) => {
      const { resolution, error, on } = INSTRUMENT[id];
      if (INSTRUMENT[id].source !== 'read off the object') expect(resolution / 2).toBeLessThanOrEqual(error);
      expect(on.length).toBeGreaterThan(0);
    },
  );

  test.each(INSTRUMENTS)('%s reads nothing at a part it cannot be held to', (id) => {
    const wall = handWindow();
    const survey = surveyOf(wall);
    for (const part of partsOf(surveyOf(wall)).values()) {
      if (!INSTRUMENT[id].on.includes(part.kind)) expect(readAt(survey, id, part)).toEqual([]);
    }
  });
});
