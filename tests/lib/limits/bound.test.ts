import { describe, expect, test } from 'vitest';
import { angleVerdict, boundAt, slopeVerdict, spacingVerdict } from '../../../lib/limits/bound';
import type { Bound, Limit } from '../../../lib/limits/limit';

function limit(bound: Bound): Limit {
  return {
    id: 'made-up',
    rules: 'good-practice',
    topic: 'line',
    quantity: 'Made up for this test',
    unit: 'mm',
    end: 'at most',
    bound,
    kind: 'good practice',
    source: 'none',
    edition: 'none',
    clause: 'none',
    howSure: 'common practice',
  };
}

const STEPPED = limit({
  form: 'stepped',
  by: 'clear span',
  steps: [
    { upTo: 1000, value: 4 },
    { upTo: 2000, value: 6 },
    { upTo: Number.POSITIVE_INFINITY, value: 9 },
  ],
});
const RUNS: Bound = {
  form: 'any-run',
  runs: [
    { run: 1000, value: 2 },
    { run: 2000, value: 3 },
  ],
  overall: 4,
};
const PRO_RATA: Bound = { form: 'pro-rata', run: 4000, value: 8, beyond: 10 };

describe('boundAt', () => {
  test.each([
    [0, 4],
    [1000, 4],
    [1000.125, 6],
    [2000, 6],
    [2000.125, 9],
    [90_000, 9],
  ])('steps hold up to and including their size: %d gives %d', (span, value) => {
    expect(boundAt(STEPPED, { span })).toBe(value);
  });

  test('a number needs nothing, a share its depth, a thing that must be there is 1', () => {
    expect(boundAt(limit({ form: 'number', value: 7 }), {})).toBe(7);
    expect(boundAt(limit({ form: 'share-of-depth', share: 0.25 }), { depth: 90 })).toBe(22.5);
    expect(boundAt(limit({ form: 'present' }), {})).toBe(1);
  });

  test.each<[what: string, bound: Bound, message: string]>([
    ['a share without a depth', { form: 'share-of-depth', share: 0.25 }, 'made-up: unit depth is missing'],
    ['steps without their size', STEPPED.bound, 'made-up: clear span is missing'],
    ['a slope', RUNS, 'made-up: a bound of the form any-run is no single number'],
  ])('refuses %s', (_, bound, message) => {
    expect(() => boundAt(limit(bound), { air: 20 })).toThrow(message);
  });
});

describe('slopeVerdict', () => {
  test.each<[what: string, slope: number, run: number, measured: number, most: number, passes: boolean]>([
    ['short: the first run governs, with what there is of it', 0.001, 500, 0.5, 2, true],
    ['at the first run', 0.002, 1000, 2, 2, true],
    ['the second run governs', 0.002, 2000, 4, 3, false],
    ['at the second run', 0.0015, 2000, 3, 3, true],
    ['the whole governs', 0.0015, 4000, 6, 4, false],
    ['the second run and the whole as bad: the shorter is named', 0.0015, 2666.6666666666665, 3, 3, true],
  ])('%s', (_, slope, run, measured, most, passes) => {
    expect(slopeVerdict(RUNS, slope, run)).toEqual({ measured, limit: most, passes });
  });

  test.each([
    [0.002, 4000, 8, 8, true],
    [0.002, 2000, 4, 4, true],
    [0.003, 2000, 6, 4, false],
    [0.002, 5000, 10, 10, true],
    [0.002, 6000, 12, 10, false],
  ])('in proportion: %d over %d', (slope, run, measured, most, passes) => {
    expect(slopeVerdict(PRO_RATA, slope, run)).toEqual({ measured, limit: most, passes });
  });

  test('a number is no slope', () => {
    expect(() => slopeVerdict({ form: 'number', value: 3 }, 0.001, 1000)).toThrow(
      'number does not judge a slope',
    );
  });
});

describe('spacingVerdict', () => {
  const area: Bound = { form: 'tie-area', vertical: 600, horizontal: 800, area: 240_000 };
  test.each([
    [400, 600, 400, 400, true, 'vertical'],
    [401, 600, 401, 400, false, 'vertical'],
    [600, 400, 600, 600, true, 'vertical'],
    [601, 0, 601, 600, false, 'vertical'],
    [300, 800, 300, 300, true, 'vertical'],
    [300, 801, 801, 800, false, 'horizontal'],
  ] as const)('%d up, %d across', (vertical, horizontal, measured, most, passes, which) => {
    expect(spacingVerdict(area, vertical, horizontal)).toEqual({ measured, limit: most, passes, which });
  });

  test('a number does not space ties', () => {
    expect(() => spacingVerdict({ form: 'number', value: 3 }, 400, 400)).toThrow(
      'number does not space ties',
    );
  });
});

describe('angleVerdict', () => {
  const table: Bound = {
    form: 'angle-table',
    caseBy: 'unit depth',
    rows: [
      { vertical: 80, horizontal: 60, thickness: 6, spans: { '75': 1500 } },
      { vertical: 90, horizontal: 80, thickness: 6, spans: { '75': 2000, '90': 1800 } },
      { vertical: 120, horizontal: 80, thickness: 10, spans: { '75': 3000, '90': 2800 } },
    ],
  };
  const angle = (vertical: number, horizontal: number, thickness: number) => ({
    vertical,
    horizontal,
    thickness,
  });

  test.each([
    ['at the span', angle(80, 60, 6), 1500, 75, { measured: 80, limit: 80, passes: true, end: 'at least' }],
    [
      'a deeper unit takes the next column',
      angle(80, 60, 6),
      1500,
      76,
      { measured: 60, limit: 80, passes: false, end: 'at least' },
    ],
    [
      'the worst measure is named',
      angle(100, 75, 4),
      1800,
      90,
      { measured: 4, limit: 6, passes: false, end: 'at least' },
    ],
    [
      'larger than a listed one',
      angle(150, 100, 12),
      1800,
      90,
      { measured: 100, limit: 80, passes: true, end: 'at least' },
    ],
    [
      'thick does not make up for low',
      angle(100, 80, 12),
      2500,
      75,
      { measured: 100, limit: 120, passes: false, end: 'at least' },
    ],
    [
      'no angle carries so far',
      angle(150, 100, 12),
      2801,
      90,
      { measured: 2801, limit: 2800, passes: false, end: 'at most' },
    ],
    [
      'deeper than any column: no span is permitted',
      angle(10, 10, 1),
      2000,
      91,
      { measured: 2000, limit: 0, passes: false, end: 'at most' },
    ],
  ])('%s', (_, size, span, depth, verdict) => {
    expect(angleVerdict(table, size, span, { depth })).toEqual(verdict);
  });

  test('storeys take their own column or none', () => {
    const byStoreys: Bound = {
      form: 'angle-table',
      caseBy: 'storeys above',
      rows: [{ vertical: 80, horizontal: 60, thickness: 6, spans: { '0': 1500, '2': 700 } }],
    };
    const passes = (span: number, storeys: number) =>
      angleVerdict(byStoreys, angle(80, 60, 6), span, { storeys }).passes;
    expect([passes(1500, 0), passes(1501, 0), passes(701, 2), passes(9000, 1)]).toEqual([
      true,
      false,
      false,
      false,
    ]);
  });

  test('refuses what it cannot look up', () => {
    expect(() => angleVerdict(table, angle(80, 60, 6), 1000, { storeys: 1 })).toThrow(
      'unit depth is missing',
    );
    expect(() => angleVerdict({ form: 'present' }, angle(80, 60, 6), 1000, { depth: 90 })).toThrow(
      'lists no angles',
    );
  });
});
