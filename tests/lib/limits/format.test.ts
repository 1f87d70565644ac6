import { describe, expect, test } from 'vitest';
import { formatAmount } from '../../../lib/limits/format-amount';
import { formatBound } from '../../../lib/limits/format-bound';
import type { Limit, RuleSetId } from '../../../lib/limits/limit';
import { CHECK_LIMITS } from '../../../lib/limits/limit';
import { ALL_LIMITS, isAsked, namedLimitOf } from '../../../lib/limits/limits';

// Inches by hand: 15 mm is 9.45 sixteenths; 0.76 mm 0.0299 in; 4 mm 0.157 in. 1 m² is 10.764 sq ft, 1 kg/m² 0.2048 lb per sq ft.
describe('formatAmount', () => {
  test.each<[value: number, unit: Limit['unit'], metricFirst: string]>([
    [15, 'mm', '15 mm (9/16 in)'],
    [0.76, 'mm', '0.76 mm (0.030 in)'],
    [0.05, 'mm', '0.05 mm (0.002 in)'],
    [4, 'mm', '4 mm (0.16 in)'],
    [4.7625, 'mm', '4.8 mm (3/16 in)'],
    [3.3274, 'mm', '3.33 mm (0.131 in)'],
    [1200, 'mm', '1200 mm (47 1/4 in)'],
    [9.144, 'm', '9.14 m (30 ft 0 in)'],
    [5, 'mm per m', '5 mm in 1 m (5/8 in in 10 ft)'],
    [3, 'mm per 4 courses', '3 mm over 4 courses (0.12 in over 4 courses)'],
    [1290, 'mm²', '1290 mm² (2 sq in)'],
    [250_000, 'mm²', '0.25 m² (2.69 sq ft)'],
    [5, '°C', '5 °C (41 °F)'],
    [-6.7, '°C', '−6.7 °C (20 °F)'],
    [195, 'kg/m²', '195 kg/m² (40 lb per sq ft)'],
    [460, 'g/m²', '460 g/m² (1.5 oz per sq ft)'],
    [12.4, 'MPa', '12.4 MPa (1800 psi)'],
    [95, '%', '95 %'],
    [150, 'minutes', '150 minutes'],
    [0.25, 'times', '0.25 times'],
    [3, 'units', '3 units'],
    [1, 'there or not', 'there'],
  ])('%d %s: %s', (value, unit, text) => {
    expect(formatAmount(value, unit, 'mm')).toBe(text);
  });

  test('what is printed in inches comes in inches first', () => {
    expect(formatAmount(101.6, 'mm', 'inches')).toBe('4 in (101.6 mm)');
    expect(formatAmount(95, '%', 'inches')).toBe('95 %');
  });
});

describe('formatBound', () => {
  test.each<[rules: RuleSetId, id: string, lines: readonly string[]]>([
    ['canada', 'bed-joint-most', ['at most 15 mm (9/16 in)']],
    ['canada', 'joint-design', ['10 mm (3/8 in)']],
    ['canada', 'overhang-share', ['at most a third of the thickness']],
    ['united-states', 'corbel-total', ['at most half the thickness']],
    ['good-practice', 'smallest-piece', ['at least the thickness of the unit']],
    ['canada', 'lintel-present', ['must be there']],
    [
      'canada',
      'rake-on-thin-veneer',
      ['units under 90 mm (3 9/16 in): none', 'units at 90 mm (3 9/16 in) and over: no limit'],
    ],
    [
      'canada',
      'mortar-life',
      ['air under 25 °C (77 °F): at most 150 minutes', 'air at 25 °C (77 °F) and over: at most 90 minutes'],
    ],
    [
      'united-kingdom',
      'lintel-bearing',
      [
        'openings up to 1200 mm (47 1/4 in): at least 100 mm (3 15/16 in)',
        'openings over 1200 mm (47 1/4 in): at least 150 mm (5 7/8 in)',
      ],
    ],
    [
      'united-kingdom',
      'course-level',
      [
        'at most 8 mm (5/16 in) in 5000 mm (16 ft 4 7/8 in), in proportion if shorter',
        'at most 12 mm (1/2 in) if longer',
      ],
    ],
    [
      'good-practice',
      'course-level',
      ['at most 6.4 mm (1/4 in) in any 3048 mm (10 ft 0 in)', 'at most 12.7 mm (1/2 in) in all'],
    ],
    [
      'united-states',
      'tie-spacing',
      [
        'at most 24 in (609.6 mm) up the wall',
        'at most 32 in (812.8 mm) across it',
        'at most 2.67 sq ft (0.25 m²) to each tie',
      ],
    ],
    ['canada', 'tie-spacing', []],
    ['canada', 'mortar-proportions', []],
  ])('%s, %s', (rules, id, lines) => {
    const limit = namedLimitOf(rules, id);
    if (limit === undefined) throw new Error(`${rules} has no ${id}`);
    expect(formatBound(limit, rules === 'united-states' ? 'inches' : 'mm')).toEqual(lines);
  });

  test('every limit is told in words or in a table, and none in figures that are no figures', () => {
    const untold = ALL_LIMITS.filter(
      (limit) => formatBound(limit, 'mm').length === 0 && !('rows' in limit.bound),
    );
    expect(untold).toEqual([]);
    const lines = ALL_LIMITS.flatMap((limit) => formatBound(limit, 'mm'));
    expect(lines.filter((line) => /NaN|Infinity|undefined|\d{6}|\.\d{4}/.test(line))).toEqual([]);
  });
});

describe('what checks ask for', () => {
  test('each name once, and each has a limit somewhere', () => {
    expect(new Set(CHECK_LIMITS).size).toBe(CHECK_LIMITS.length);
    expect(CHECK_LIMITS.filter((id) => !ALL_LIMITS.some((limit) => limit.id === id))).toEqual([]);
    expect(CHECK_LIMITS.length).toBe(45);
  });

  test.each<[rules: RuleSetId, id: (typeof CHECK_LIMITS)[number], asked: boolean]>([
    ['canada', 'angle-thickness', false],
    ['united-kingdom', 'angle-thickness', true],
    ['united-kingdom', 'bed-joint-most', false],
    ['united-kingdom', 'head-joint-most', true],
    ['canada', 'bed-joint-most', true],
  ])('%s is asked for %s: %s', (rules, id, asked) => {
    expect(isAsked(rules, id)).toBe(asked);
  });
});
