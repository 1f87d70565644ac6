import { describe, expect, test } from 'vitest';
import { boundAt, spacingVerdict } from '../../../lib/limits/bound';
import type { Bound, RuleSetId } from '../../../lib/limits/limit';
import { limitOf, namedLimitOf } from '../../../lib/limits/limits';

const INCH = 25.4;

function spacing(rules: RuleSetId): Bound {
  const limit = limitOf(rules, 'tie-spacing');
  if (limit === undefined) throw new Error(`${rules} has no tie spacing`);
  return limit.bound;
}

function value(rules: RuleSetId, id: string): number {
  const limit = namedLimitOf(rules, id);
  if (limit === undefined) throw new Error(`${rules} has no ${id}`);
  return boundAt(limit, {});
}

// IRC R703.8.4.1: 24 in up, 32 in across, 2.67 ft² each.
describe('grids of ties, IRC', () => {
  test.each([
    [16, 16, 1.778, true],
    [24, 16, 2.667, true],
    [16, 24, 2.667, true],
    [24, 24, 4, false],
    [25, 12, 2.083, false],
    [12, 33, 2.75, false],
    [12, 32, 2.667, true],
  ])('%d in up, %d in across, %d ft²: passes %s', (vertical, horizontal, area, passes) => {
    expect((vertical * horizontal) / 144).toBeCloseTo(area, 3);
    const grid = [Math.floor(vertical * INCH * 8) / 8, Math.floor(horizontal * INCH * 8) / 8] as const;
    expect(spacingVerdict(spacing('united-states'), ...grid).passes).toBe(passes);
  });

  // In high wind and seismic zones each tie holds 2 ft²: 16 × 16 in passes, 24 × 16 does not.
  test('the stricter area', () => {
    const most = value('united-states', 'tie-area-high-wind');
    expect(16 * INCH * 16 * INCH <= most).toBe(true);
    expect(24 * INCH * 16 * INCH <= most).toBe(false);
  });

  test('a panel 12 by 8 ft takes 36 ties at least', () => {
    const bound = spacing('united-states');
    if (bound.form !== 'tie-area') throw new Error('not by area');
    expect(Math.ceil((12 * 8 * 144 * INCH * INCH) / bound.area)).toBe(36);
  });

  test('a wall of 14.4 m² takes 59', () => {
    const bound = spacing('united-states');
    if (bound.form !== 'tie-area') throw new Error('not by area');
    expect(Math.ceil(14.4e6 / bound.area)).toBe(59);
  });
});

// NBC Table 9.20.9.5.: 400 × 800, 500 × 600 or 600 × 400 mm, read strictly.
describe('grids of ties, NBC', () => {
  test.each([
    [406, 406, true],
    [610, 406, false],
    [406, 610, false],
    [610, 610, false],
    [400, 800, true],
    [500, 600, true],
    [600, 400, true],
    [401, 800, false],
    [400, 801, false],
    [501, 406, false],
    [500, 406, true],
    [601, 300, false],
  ])('%d mm up, %d mm across: passes %s', (vertical, horizontal, passes) => {
    expect(spacingVerdict(spacing('canada'), vertical, horizontal).passes).toBe(passes);
    expect(spacingVerdict(spacing('ontario'), vertical, horizontal).passes).toBe(passes);
  });

  test('what is said of a failure', () => {
    expect(spacingVerdict(spacing('canada'), 610, 406)).toEqual({
      measured: 610,
      limit: 500,
      passes: false,
      which: 'vertical',
    });
    expect(spacingVerdict(spacing('canada'), 300, 812)).toEqual({
      measured: 812,
      limit: 800,
      passes: false,
      which: 'horizontal',
    });
  });
});

// NHBC 2020 6.2.14, brick on a timber frame: 600 mm along, 450 up, within 225 of a jamb and 300 up it, within 225 of the top.
describe('grids of ties, United Kingdom', () => {
  test.each([
    [450, 600, true],
    [450, 601, false],
    [451, 600, false],
    [451, 400, false],
    [300, 600, true],
    [375, 400, true],
    // What two leaves of masonry may have, a frame may not.
    [450, 900, false],
    [300, 900, false],
  ])('%d mm up, %d mm across: passes %s', (vertical, horizontal, passes) => {
    expect(spacingVerdict(spacing('united-kingdom'), vertical, horizontal).passes).toBe(passes);
  });

  test('the highest ties lie within 225 mm of the top', () => {
    expect(value('united-kingdom', 'tie-top')).toBe(225);
  });

  // NHBC 2020 6.1.18 Table 10, two leaves of masonry: 900 across, 450 up. LABC: 2.5 to the square metre.
  test('between two leaves the drawn spacing makes 2.4691 ties to the square metre', () => {
    const bound = namedLimitOf('united-kingdom', 'leaf-tie-spacing')?.bound;
    if (bound?.form !== 'tie-rows') throw new Error('not by rows');
    const [row] = bound.rows;
    expect(1e6 / ((row?.vertical ?? 0) * (row?.horizontal ?? 0))).toBeCloseTo(2.4691, 4);
    expect(value('united-kingdom', 'tie-density')).toBe(2.5);
  });

  test('a wall of 14.4 m² takes 36 ties at 2.5 to the square metre', () => {
    expect(Math.ceil(14.4 * value('united-kingdom', 'tie-density'))).toBe(36);
  });

  test.each([
    [1200, 5],
    [2100, 8],
  ])('up a jamb of %d mm: %d ties, ends included', (height, ties) => {
    expect(Math.ceil(height / value('united-kingdom', 'tie-edge-spacing')) + 1).toBe(ties);
  });

  test.each([
    [225, true],
    [226, false],
  ])('first tie %d mm from the jamb: passes %s', (away, passes) => {
    expect(away <= value('united-kingdom', 'tie-edge-distance')).toBe(passes);
  });
});

// BIA Technical Note 28B, 2005: 18 in up, 32 in across, one to 2 2/3 ft².
test.each([
  [18, 20, true],
  [18, 22, false],
  [19, 12, false],
  [12, 32, true],
  [16, 24, true],
  [18, 24, false],
])('good practice: %d in up, %d in across: passes %s', (vertical, horizontal, passes) => {
  expect(spacingVerdict(spacing('good-practice'), vertical * INCH, horizontal * INCH).passes).toBe(passes);
});

describe('single ties', () => {
  test.each<[source: string, rules: RuleSetId, id: string, mm: number]>([
    ['IRC R703.8.4: 1 1/2 in', 'united-states', 'tie-embedment', 38.1],
    ['IRC R703.8.4: 5/8 in', 'united-states', 'tie-cover', 15.875],
    ['IRC R703.8.4.1: 0.0299 in', 'united-states', 'tie-thickness', 0.7595],
    ['IRC R703.8.4.1: 7/8 in', 'united-states', 'tie-width', 22.225],
    ['IRC R703.8.4.1: 0.148 in', 'united-states', 'tie-wire', 3.7592],
    ['IRC R703.8.4.1.1: 12 in', 'united-states', 'tie-edge-distance', 304.8],
    ['IRC R703.8.4.1.1: 3 ft', 'united-states', 'tie-edge-spacing', 914.4],
    ['IRC R703.8.4.1.1: 16 in', 'united-states', 'tie-opening', 406.4],
    ['IRC R703.8.4.1.1, borrowed: 16 in', 'good-practice', 'tie-opening', 406.4],
    ['IRC Table R703.8.4(1): 2 1/2 in', 'united-states', 'tie-nail-length', 63.5],
    ['IRC Table R703.8.4(1): 4 5/8 in', 'united-states', 'backing-to-veneer', 117.475],
    ['NHBC 2020 6.1.18', 'united-kingdom', 'tie-embedment', 50],
  ])('%s', (_, rules, id, mm) => {
    expect(namedLimitOf(rules, id)?.rules).toBe(rules);
    expect(value(rules, id)).toBeCloseTo(mm, 3);
  });
});
