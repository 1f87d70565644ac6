import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Attempt, dayOf } from '../../../lib/learning/attempt';
import { parseAttempt } from '../../../lib/learning/parse-attempt';
import { formatRecord, mergedRecords, parseRecord } from '../../../lib/learning/record';
import { standingOf } from '../../../lib/learning/standing';
import { attempts, DAY, START, tieWall } from './samples';

const RUNS = { numRuns: 150 };

describe('two records as one', () => {
  test('it does not matter which comes first, in what steps, or how often', () => {
    fc.assert(
      fc.property(attempts, attempts, attempts, (a, b, c) => {
        const all = mergedRecords(mergedRecords(a, b), c);
        expect(mergedRecords(a, mergedRecords(c, b))).toEqual(all);
        expect(mergedRecords(all, b)).toEqual(all);
        expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
        expect([...all].sort((one, other) => one.at - other.at)).toEqual(all);
      }),
      RUNS,
    );
  });

  test('the same attempt from two devices is there once', () => {
    const phone = [tieWall(1, 0, 'found'), tieWall(2, 1, 'missed')];
    const tablet = [tieWall(2, 1, 'missed'), tieWall(3, 0, 'sound')];
    expect(mergedRecords(phone, tablet).map(({ id }) => id)).toEqual(['a1', 'a3', 'a2']);
  });
});

describe('a file', () => {
  test('holds every attempt as it was', () => {
    fc.assert(
      fc.property(attempts, (all) => {
        const record = mergedRecords(all, []);
        expect(parseRecord(formatRecord(record))).toEqual({ kind: 'read', attempts: record, later: [] });
      }),
      RUNS,
    );
  });

  test('with attempts of a later version keeps them as they stand', () => {
    const later = { version: 9, id: 'x', hologram: true };
    expect(parseRecord(formatRecord([], [later]))).toEqual({ kind: 'read', attempts: [], later: [later] });
  });

  const file = (attempt: object) =>
    JSON.stringify({ recordVersion: 1, attempts: [tieWall(1, 0, 'found'), attempt] });
  test.each([
    ['{', 'it is not a JSON file'],
    ['{"rounds":[]}', 'it is not a practice record'],
    ['{"recordVersion":2,"attempts":[]}', 'it says version 2, and this page reads version 1'],
    ['{"recordVersion":1}', 'attempts: missing'],
    [file({ ...tieWall(2, 0, 'found'), difficulty: 6 }), 'attempts.1: is not an attempt'],
    [file({ ...tieWall(2, 0, 'found'), at: -1 }), 'attempts.1: is not an attempt'],
    [file({ ...tieWall(2, 0, 'found'), zone: 900 }), 'attempts.1: is not an attempt'],
    [file({ ...tieWall(2, 0, 'found'), kind: 'crossword' }), 'attempts.1: is not an attempt'],
    [file({ ...tieWall(2, 0, 'found'), faults: [{ fault: 'ghost' }] }), 'attempts.1: is not an attempt'],
    [file({}), 'attempts.1: is not an attempt'],
  ])('%s is refused: %s', (text, why) => {
    expect(parseRecord(text)).toEqual({ kind: 'refused', why });
  });

  test('whatever it says, nothing is thrown', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (loose) => {
        expect(['read', 'refused']).toContain(parseRecord(JSON.stringify(loose)).kind);
        expect(parseAttempt(loose)).toBe(null);
      }),
      RUNS,
    );
  });
});

describe('days of the calendar', () => {
  // An hour before midnight in Vancouver is the next day in London; the leap day of 2028 is a day like any other.
  test.each([
    ['2026-03-09T06:30:00Z', -420, '2026-03-08'],
    ['2026-03-09T06:30:00Z', 0, '2026-03-09'],
    ['2028-02-28T23:30:00Z', 60, '2028-02-29'],
    ['2028-03-01T05:00:00Z', -360, '2028-02-29'],
    ['2026-12-31T11:00:00Z', 840, '2027-01-01'],
  ])('%s, %i minutes ahead, is on %s', (utc, zone, day) => {
    expect(dayOf({ at: Date.parse(utc), zone })).toBe(Date.parse(`${day}T00:00:00Z`) / DAY);
  });

  test('ten walls over midnight are read on two days, and on one where it is still evening', () => {
    const midnight = Date.UTC(2026, 4, 5);
    const at = (number: number): Attempt => ({
      ...tieWall(number, 0, 'found'),
      at: midnight + (number - 5) * 60_000,
    });
    const walls = Array.from({ length: 10 }, (_, number) => at(number));
    const daysIn = (zone: number) =>
      standingOf(walls.map((wall) => ({ ...wall, zone }))).families.find(({ family }) => family === 'ties')
        ?.mastery.hits.days;
    expect([daysIn(0), daysIn(-300)]).toEqual([2, 1]);
  });
});

test('what is worked out does not depend on the order in which two devices were read', () => {
  fc.assert(
    fc.property(attempts, attempts, (a, b) => {
      expect(standingOf(mergedRecords(a, b))).toEqual(standingOf(mergedRecords(b, a)));
    }),
    { numRuns: 60 },
  );
});

test('a wall read before tells nothing new', () => {
  const twice = [tieWall(1, 0, 'missed'), { ...tieWall(2, 1, 'found'), wall: 'w1' }];
  const ties = standingOf(twice).families.find(({ family }) => family === 'ties');
  expect(ties?.faulty.map(({ right }) => right)).toEqual([false]);
  expect(ties?.review?.lastAt).toBe(START + 1000);
});
