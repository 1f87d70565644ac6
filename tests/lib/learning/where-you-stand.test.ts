import { describe, expect, test } from 'vitest';
import type { Attempt } from '../../../lib/learning/attempt';
import { standingOf } from '../../../lib/learning/standing';
import { whereYouStand } from '../../../lib/learning/where-you-stand';
import { DAY, fault, START, tieWall } from './samples';

const standOf = (record: readonly Attempt[]) => whereYouStand(record, standingOf(record));
const many = (from: number, count: number, outcome: 'found' | 'missed') =>
  Array.from({ length: count }, (_, index) => tieWall(from + index, 0, outcome));

describe('where a reader stands', () => {
  test('nothing is made of nothing', () => {
    const stand = standOf([]);
    expect({ ...stand, families: stand.families.filter(({ hits, dueAt }) => hits ?? dueAt) }).toEqual({
      ...{ walls: 0, curve: [], families: [], misnamed: [], sure: [] },
      misses: [
        { hazard: 'could fall', count: 0, of: 0 },
        { hazard: 'lets water in', count: 0, of: 0 },
        { hazard: 'looks', count: 0, of: 0 },
      ],
    });
  });

  test('a family goes by its last thirty walls, the curve by all of them in twenty pieces at most', () => {
    const walls = [...many(0, 81, 'found'), ...many(100, 182, 'missed')];
    const { families, curve } = standOf(walls);
    const ties = families.find(({ family }) => family === 'ties');
    // Wilson limits of 0 of 30 by hand: z²/(30 + z²) = 3.8415/33.8415 = .1135.
    expect(ties?.hits).toMatchObject({ count: 0, of: 30 });
    expect(ties?.hits?.limits.high).toBeCloseTo(0.1135, 4);
    expect([curve.length, curve[0]?.from, curve.at(-1)?.to]).toEqual([20, 1, 263]);
    expect(curve.reduce((sum, { from, to }) => sum + to - from + 1, 0)).toBe(263);
  });

  test('the curve begins with the tenth wall, and a false call spoils a wall', () => {
    const nine = many(0, 9, 'found');
    expect(standOf(nine).curve).toEqual([]);
    const [piece] = standOf([...nine, tieWall(9, 0, 'found', 1)]).curve;
    expect(piece).toMatchObject({ from: 1, to: 10, right: { share: 0.9 }, medianMs: 60_000 });
  });

  test('a wall counts the first time, and not if it was shown before', () => {
    const shown: Attempt = { ...tieWall(1, 0, 'found'), id: 'shown', kind: 'guided wall' };
    const again = { ...tieWall(2, 0, 'found'), id: 'again' };
    const stand = standOf([shown, tieWall(1, 0, 'found'), tieWall(2, 0, 'missed'), again]);
    expect([stand.walls, stand.misses[0]]).toEqual([1, { hazard: 'could fall', count: 1, of: 1 }]);
  });

  test('false alarms are walls with a call, not calls', () => {
    const stand = standOf([tieWall(1, 0, 'sound', 2), tieWall(2, 0, 'sound'), tieWall(3, 0, 'sound')]);
    expect(stand.families.find(({ family }) => family === 'ties')?.falseAlarms).toMatchObject({
      count: 1,
      of: 3,
    });
  });

  test('what was called something else is told, the most frequent first; it was not missed', () => {
    const called = (number: number, named: 'thin-tie' | 'tie-near-face') => ({
      ...tieWall(number, 0, 'sound'),
      faults: [{ ...fault('shallow-tie', 'wrong name'), named, sure: 3 as const }],
    });
    const stand = standOf([called(1, 'tie-near-face'), called(2, 'thin-tie'), called(3, 'thin-tie')]);
    expect(stand.misnamed).toEqual([
      { fault: 'shallow-tie', named: 'thin-tie', times: 2 },
      { fault: 'shallow-tie', named: 'tie-near-face', times: 1 },
    ]);
    expect(stand.misses[0]).toMatchObject({ count: 0, of: 3 });
    expect(stand.sure).toEqual(Array.from({ length: 3 }, () => ({ sure: 3, right: false })));
  });

  // The default weights of FSRS-6 give a first "good" three days (short-term steps off).
  test('a family read well is due three days later', () => {
    const [wall] = many(0, 1, 'found');
    expect(standOf(wall ? [wall] : []).families.find(({ family }) => family === 'ties')?.dueAt).toBe(
      START + 3 * DAY,
    );
  });
});
