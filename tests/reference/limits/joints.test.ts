import { describe, expect, test } from 'vitest';
import { boundAt, overhangBound } from '../../../lib/limits/bound';
import type { RuleSetId } from '../../../lib/limits/limit';
import { limitsUnder, namedLimitOf } from '../../../lib/limits/limits';

function value(rules: RuleSetId, id: string): number {
  const limit = namedLimitOf(rules, id);
  if (limit === undefined) throw new Error(`${rules} has no ${id}`);
  return boundAt(limit, {});
}

// One joint of 10 mm or 3/8 in, five rules side by side.
describe('how thick a joint may be, mm', () => {
  test.each<[source: string, rules: RuleSetId, ids: readonly string[], figures: readonly number[]]>([
    [
      'NBC 2020, 9.20.4.1',
      'canada',
      ['bed-joint-least', 'bed-joint-most', 'head-joint-least', 'head-joint-most'],
      [5, 15, 5, 15],
    ],
    [
      'OBC 2024, 9.20.4.1',
      'ontario',
      ['bed-joint-least', 'bed-joint-most', 'head-joint-least', 'head-joint-most'],
      [5, 20, 5, 20],
    ],
    [
      'CSA A371-14, told by the Canada Masonry Design Centre',
      'good-practice',
      ['bed-joint-least', 'bed-joint-most', 'head-joint-least', 'head-joint-most'],
      [7, 13, 7, 13],
    ],
    [
      'IRC R606.3.1, load-bearing masonry only',
      'united-states',
      ['load-bearing-bed-most', 'load-bearing-head-least', 'load-bearing-head-most'],
      [12.7, 3.175, 19.05],
    ],
    ['IRC R606.3.1: 1/4 to 3/4 in', 'united-states', ['first-bed-least', 'first-bed-most'], [6.35, 19.05]],
    [
      'LABC Warranty: 10 mm beds, perpends of 7 mm at least',
      'united-kingdom',
      ['joint-design', 'head-joint-least'],
      [10, 7],
    ],
    [
      'NZS 4210 Table 2.2, told by its federation: first bed to 20 mm',
      'good-practice',
      ['first-bed-most'],
      [20],
    ],
    [
      'LABC Warranty, version 8: 5 mm from the mean of eight',
      'united-kingdom',
      ['bed-from-mean-of-eight'],
      [5],
    ],
  ])('%s', (_, rules, ids, figures) => {
    ids.forEach((id, index) => {
      expect(value(rules, id), id).toBeCloseTo(figures[index] ?? Number.NaN, 2);
    });
  });

  // IBC 1404.6.1 frees anchored veneer from the joint tolerances of TMS 602; the IRC keeps its own to load-bearing masonry.
  test.each(['bed-joint-most', 'bed-joint-least', 'head-joint-most', 'head-joint-least'])(
    'in the United States no code binds veneer by %s',
    (id) => {
      expect(namedLimitOf('united-states', id)?.rules).toBe('good-practice');
    },
  );
});

// TMS 602 Art. 3.3 F, told by an association of mason contractors: bed 3/8 ± 1/8 in is 6.35 to 12.70 mm, head −1/4 +3/8 in.
test('the structural joint tolerances, mm from 9.525', () => {
  const bed = value('good-practice', 'structural-bed');
  expect([9.525 - bed, 9.525 + bed].map((mm) => mm.toFixed(2))).toEqual(['6.35', '12.70']);
  expect((9.525 - value('good-practice', 'structural-head-under')).toFixed(3)).toBe('3.175');
  expect((9.525 + value('good-practice', 'structural-head-over')).toFixed(2)).toBe('19.05');
});

// NBC 9.20.8.5 and 9.20.12.3, both printed in one code: the stricter governs. IRC R606.6.1: two thirds bear. NHBC 2020 6.1.12: 25 mm.
describe('how far veneer may stand past its support', () => {
  test.each<[what: string, rules: RuleSetId, depth: number, overhang: number, passes: boolean]>([
    ['a third would allow 30, the older rule 25', 'canada', 90, 28, false],
    ['at the older rule', 'canada', 90, 25, true],
    ['a third would allow 25, the older rule 12', 'canada', 75, 15, false],
    ['at the older rule', 'canada', 75, 12, true],
    ['a third of 70 is 23.3, the older rule 12', 'ontario', 70, 12.125, false],
    ['3 5/8 in brick: 1.208 in, 30.7 mm', 'united-states', 92.075, 30.625, true],
    ['3 5/8 in brick: 1.208 in, 30.7 mm', 'united-states', 92.075, 30.75, false],
    ['at 25 mm', 'united-kingdom', 102.5, 25, true],
    ['over 25 mm, within a third', 'united-kingdom', 102.5, 25.125, false],
  ])('%s: %s, %d mm deep, out by %d: passes %s', (_, rules, depth, overhang, passes) => {
    expect(overhang <= overhangBound(limitsUnder(rules), depth)).toBe(passes);
  });

  test.each<[rules: RuleSetId, depth: number, most: number]>([
    ['canada', 90, 25],
    ['canada', 75, 12],
    ['united-states', 92.075, 30.69],
    ['united-kingdom', 102.5, 25],
    ['good-practice', 90, 30],
  ])('%s, %d mm deep: %d mm', (rules, depth, most) => {
    expect(overhangBound(limitsUnder(rules), depth)).toBeCloseTo(most, 2);
  });
});

// ANSI A108.5 2.2.3 by four trade articles: 95 % out of doors, 80 % indoors; no bare place over 2 in² (1 290 mm²) by one author.
describe('how much of a back must be in contact', () => {
  test.each<[unit: string, area: number, id: string, bare: number]>([
    ['12 × 12 in tile, wet', 144, 'back-contact', 7.2],
    ['12 × 12 in tile, dry', 144, 'back-contact-dry', 28.8],
    ['thin brick 7 5/8 × 2 1/4 in, wet', 17.16, 'back-contact', 0.858],
    ['thin brick 7 5/8 × 2 1/4 in, dry', 17.16, 'back-contact-dry', 3.43],
  ])('%s: %d in², %s, bare %d in²', (_, area, id, bare) => {
    expect((area * (100 - value('good-practice', id))) / 100).toBeCloseTo(bare, 2);
  });

  test('three samples of 97, 96 and 90 % have a mean of 94.3: too little', () => {
    const mean = (97 + 96 + 90) / 3;
    expect(mean >= value('good-practice', 'back-contact')).toBe(false);
    expect(value('good-practice', 'back-contact-sample')).toBe(3);
  });

  // The Construction Specifier, parts 2 and 5: three of every 150.
  test('a sample for every 150 thin units', () => {
    expect(value('good-practice', 'back-contact-lot')).toBe(150);
  });

  test('a bare place of 2 in²', () => {
    expect(value('good-practice', 'back-void')).toBe(1290);
  });
});
