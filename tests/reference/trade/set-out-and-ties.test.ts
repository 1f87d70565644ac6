import { describe, expect, test } from 'vitest';
import { isBraced, keepOutOf } from '../../../lib/limits/keep-out';
import { PUBLISHED_IMPACTS } from '../../../lib/trade/published-impacts';
import { arrangementsOf, leastLapTurned } from '../../../lib/trade/set-out';
import { firstTieBeside, tieMapOf } from '../../../lib/trade/tie-map';
import { inches } from '../../../lib/units';

// Bond arithmetic by hand for 3000 mm of 215 mm brick at 10 mm: 13 whole ones leave 205 mm in 12 joints; 13 and a half leave 102.5 in 13.
describe('3000 mm of UK brick', () => {
  const ways = arrangementsOf({ wall: 3000, unit: 215, joint: 10, bond: 'half' });
  test.each([
    ['whole units', 14, 17.083, 215],
    ['half at the end', 14, 7.885, 102.5],
    ['one piece cut to fit', 14, 10, 75],
    ['equal cuts at both ends', 14, 10, 145],
  ])('%s', (name, most, joint, smallest) => {
    const way = ways.find((each) => each.name === name);
    expect(way?.joint).toBeCloseTo(joint, 3);
    expect(way?.smallest).toBeCloseTo(smallest, 3);
    expect(way?.pieces.length).toBeLessThanOrEqual(most);
  });
  test('the largest smallest piece comes first', () => {
    const smallest = ways.map((way) => way.smallest);
    expect(smallest).toEqual([...smallest].sort((a, b) => b - a));
    expect(ways[0]?.name).toBe('whole units');
  });
  // By hand, 13 and a half at 7.885: joints every 222.885; turned, each stands (102.5 + 7.885) off.
  test('turned end for end, the half laps by half a unit and whole units not at all', () => {
    const lapOf = (name: string) =>
      leastLapTurned(ways.find((each) => each.name === name) ?? { pieces: [], joint: 0 });
    expect(lapOf('half at the end')).toBeCloseTo(110.385, 3);
    expect(lapOf('whole units')).toBeCloseTo(0, 9);
  });
  test('every way fills the wall', () => {
    for (const { pieces, joint } of ways) {
      const filled = pieces.reduce((sum, piece) => sum + piece, 0) + (pieces.length - 1) * joint;
      expect(filled).toBeCloseTo(3000, 9);
    }
  });
  test('a wall shorter than two units is refused', () => {
    expect(() => arrangementsOf({ wall: 400, unit: 215, joint: 10, bond: 'half' })).toThrow(
      'wall: 400 mm is shorter than two units',
    );
  });
});

describe('ties on a panel', () => {
  const field = {
    width: 3600,
    height: 2400,
    across: 600,
    up: 400,
    firstAcross: 300,
    firstUp: 200,
    opening: null,
  };
  // By hand: 6 columns and 6 rows, each 600 × 400 mm.
  test('600 by 400 mm: 36 ties of 0.24 m²', () => {
    const { ties } = tieMapOf(field);
    expect(ties).toHaveLength(36);
    expect(ties.map(({ area }) => area / 1e6)).toEqual(ties.map(() => expect.closeTo(0.24, 9)));
  });
  test('the areas add up to the wall without its opening: 8.64 − 1.44 m²', () => {
    const opening = { x: 1200, y: 800, width: 1200, height: 1200 };
    const { ties } = tieMapOf({ ...field, opening });
    expect(ties.reduce((sum, { area }) => sum + area, 0) / 1e6).toBeCloseTo(7.2, 6);
    expect(firstTieBeside(opening, ties)).toBe(300);
  });
  test('a panel without ties beside an opening', () => {
    expect(firstTieBeside({ x: 0, y: 0, width: 1, height: 1 }, [])).toBe(Number.POSITIVE_INFINITY);
  });
});

// 29 CFR 1926.706, read in a digest: height + 4 ft; braced above 8 ft. 2.4 m: 3.62 m.
test.each([
  [inches(0, 10), inches(0, 14), true],
  [inches(0, 8), inches(0, 12), false],
  [2400, 3619.2, false],
])('wall of %d mm: keep %d mm away, braced: %s', (height, away, braced) => {
  expect(keepOutOf(height)).toBeCloseTo(away, 6);
  expect(isBraced(height)).toBe(braced);
});

test('published impacts stand in rising order', () => {
  const energies = PUBLISHED_IMPACTS.map(({ energy }) => energy);
  expect(energies).toEqual([14.1, 28, 32.6, 49, 54.45, 68.5]);
});
