import { describe, expect, test } from 'vitest';
import { angleVerdict } from '../../../lib/limits/bound';
import type { AngleRow, Bound, RuleSetId } from '../../../lib/limits/limit';
import { namedLimitOf } from '../../../lib/limits/limits';

type Legs = readonly [vertical: number, horizontal: number, thickness: number];

function tableOf(rules: RuleSetId, id = 'angle-size'): Extract<Bound, { form: 'angle-table' }> {
  const bound = namedLimitOf(rules, id)?.bound;
  if (bound?.form !== 'angle-table') throw new Error(`${rules} has no table ${id}`);
  return bound;
}

function judge(rules: RuleSetId, [vertical, horizontal, thickness]: Legs, span: number, depth: number) {
  return angleVerdict(tableOf(rules), { vertical, horizontal, thickness }, span, { depth }).passes;
}

// NBC 2020 Table 9.20.5.2.: spans in m for veneer of 75, 90 and 100 mm. Null: not permitted.
const NATIONAL: readonly (readonly [Legs, 75 | 90 | 100, number | null])[] = [
  [[89, 76, 6.4], 75, 2.55],
  [[89, 76, 6.4], 90, null],
  [[89, 76, 6.4], 100, null],
  [[89, 89, 6.4], 75, 2.59],
  [[89, 89, 6.4], 90, 2.47],
  [[89, 89, 6.4], 100, 2.3],
  [[102, 89, 6.4], 75, 2.79],
  [[102, 89, 6.4], 90, 2.66],
  [[102, 89, 6.4], 100, 2.48],
  [[127, 89, 7.9], 75, 3.47],
  [[127, 89, 7.9], 90, 3.31],
  [[127, 89, 7.9], 100, 3.08],
  [[127, 89, 11], 75, 3.64],
  [[127, 89, 11], 90, 3.48],
  [[127, 89, 11], 100, 3.24],
];

// OBC 2024 Table 9.20.5.2.-B goes on; its first column is for 70 mm brick.
const ONTARIO_MORE: readonly (readonly [Legs, 70 | 90 | 100, number])[] = [
  [[127, 89, 13], 70, 3.82],
  [[127, 89, 13], 90, 3.59],
  [[127, 89, 13], 100, 3.33],
  [[152, 89, 11], 70, 4.06],
  [[152, 89, 11], 90, 3.82],
  [[152, 89, 11], 100, 3.54],
  [[152, 89, 13], 70, 4.32],
  [[152, 89, 13], 90, 4.07],
  [[152, 89, 13], 100, 3.77],
  [[152, 102, 13], 70, 4.37],
  [[152, 102, 13], 90, 4.12],
  [[152, 102, 13], 100, 3.82],
  [[178, 102, 11], 70, 4.57],
  [[178, 102, 11], 90, 4.3],
  [[178, 102, 11], 100, 3.99],
  [[178, 102, 13], 70, 4.87],
  [[178, 102, 13], 90, 4.59],
  [[178, 102, 13], 100, 4.25],
];

const MM = 1000;

/** Sure at the span, and no longer sure a millimetre beyond it. */
function longest(rules: RuleSetId, legs: Legs, span: number, depth: number): readonly boolean[] {
  const mm = Math.round(span * MM);
  return [judge(rules, legs, mm, depth), judge(rules, legs, mm + 1, depth)];
}

describe('NBC 2020 Table 9.20.5.2.', () => {
  test.each(NATIONAL)('L %j under %d mm: %s m', (legs, depth, span) => {
    if (span === null) expect(judge('canada', legs, 300, depth)).toBe(false);
    else expect(longest('canada', legs, span, depth)).toEqual([true, false]);
  });

  test('has five rows', () => {
    expect(tableOf('canada').rows.length).toBe(5);
  });
});

describe('OBC 2024 Table 9.20.5.2.-B', () => {
  const first = NATIONAL.map(([legs, depth, span]) => [legs, depth === 75 ? 70 : depth, span] as const);
  test.each([...first, ...ONTARIO_MORE])('L %j under %d mm: %s m', (legs, depth, span) => {
    if (span === null) expect(judge('ontario', legs, 300, depth)).toBe(false);
    else expect(longest('ontario', legs, span, depth)).toEqual([true, false]);
  });
});

// IRC 2021 Table R703.8.3.1: legs in inches, spans in ft for no storey above, one, two; mm as the code's feet make them.
describe('IRC 2021 Table R703.8.3.1', () => {
  test.each<[inch: Legs, storeys: number, mm: number]>([
    [[3, 3, 0.25], 0, 1828.8],
    [[3, 3, 0.25], 1, 1371.6],
    [[3, 3, 0.25], 2, 914.4],
    [[4, 3, 0.25], 0, 2438.4],
    [[4, 3, 0.25], 1, 1828.8],
    [[4, 3, 0.25], 2, 1371.6],
    [[5, 3.5, 0.3125], 0, 3048],
    [[5, 3.5, 0.3125], 1, 2438.4],
    [[5, 3.5, 0.3125], 2, 1828.8],
    [[6, 3.5, 0.3125], 0, 4267.2],
    [[6, 3.5, 0.3125], 1, 2895.6],
    [[6, 3.5, 0.3125], 2, 2133.6],
  ])('L %j in, %d storeys above: %d mm', ([vertical, horizontal, thickness], storeys, mm) => {
    // Tenths of a millimetre are whole in inches × 254: 3 in is 76.2 mm to the last bit.
    const inMm = (inch: number) => (inch * 254) / 10;
    const angle = { vertical: inMm(vertical), horizontal: inMm(horizontal), thickness: inMm(thickness) };
    const passes = (span: number) => angleVerdict(tableOf('united-states'), angle, span, { storeys }).passes;
    expect([passes(mm - 0.25), passes(mm + 0.25)]).toEqual([true, false]);
  });

  test.each([
    ['0', 6096],
    ['1', 3657.6],
    ['2', 2895.6],
  ])('two angles side by side, %s storeys above: %d mm', (storeys, mm) => {
    const [row] = tableOf('united-states', 'angle-pair-size').rows;
    expect(row?.spans[storeys]).toBeCloseTo(mm, 6);
  });
});

// OBC 2012 as quoted in a builders' forum (thread 32575): 2 100 mm opening, no other load. 90 mm veneer on a wood frame: L 89 × 89 × 6.4.
// Masonry wall with 100 mm brick outside: L 102 × 89 × 7.9.
describe('an opening of 2 100 mm in Ontario', () => {
  test('veneer of 90 mm stands on 89 × 89 × 6.4 and not on 89 × 76 × 6.4', () => {
    expect(judge('ontario', [89, 89, 6.4], 2100, 90)).toBe(true);
    expect(judge('ontario', [89, 76, 6.4], 2100, 90)).toBe(false);
  });

  // OBC 2024 Table 9.20.5.2.-A, typed as printed: an angle for each span.
  test.each<[span: number, brick: string, stone: string]>([
    [1200, '89x89x6.4', '127x89x7.9'],
    [1500, '89x89x7.9', '127x89x7.9'],
    [1800, '102x89x7.9', '127x127x7.9'],
    [2100, '102x89x7.9', '127x127x7.9'],
    [2400, '127x89x7.9', '127x127x7.9'],
    [2700, '127x89x11', '127x127x11'],
    [3000, '152x102x11', '127x127x13'],
  ])('loose angles over %d mm: %s for brick, %s for stone', (span, brick, stone) => {
    const { rows } = tableOf('ontario', 'loose-angle-size');
    const name = (row: AngleRow | undefined) => `${row?.vertical}x${row?.horizontal}x${row?.thickness}`;
    const serving = (column: string) => rows.find((row) => (row.spans[column] ?? 0) >= span);
    expect([name(serving('100 mm brick')), name(serving('100 mm stone and 50 mm facing'))]).toEqual([
      brick,
      stone,
    ]);
  });
});

/**
 * Second moment of an angle with sharp corners about its level axis, mm⁴: a wrong digit in the table breaks the ratio below.
 * The area and centroid of two rectangles: textbook mechanics.
 */
function secondMoment([a, b, t]: Legs): number {
  const area = a * t + (b - t) * t;
  const y = ((a * a * t) / 2 + ((b - t) * t * t) / 2) / area;
  return (
    (t * a ** 3) / 12 + a * t * (a / 2 - y) ** 2 + ((b - t) * t ** 3) / 12 + (b - t) * t * (t / 2 - y) ** 2
  );
}

/** Span over deflection under a triangle of masonry: W = g t L² / 4, deflection W L³ / (60 E I), E = 200 GPa. */
function spanOverDeflection(legs: Legs, span: number, thickness: number, weight: number): number {
  return (240 * 200_000 * secondMoment(legs)) / (weight * thickness * span ** 4);
}

describe('the Canadian tables hang together: every span keeps its angle between L/601 and L/773', () => {
  const spans = [...NATIONAL, ...ONTARIO_MORE].flatMap(([legs, depth, span]) =>
    span === null ? [] : [[legs, depth === 70 ? 75 : depth, span] as const],
  );
  test.each(spans)('L %j under %d mm at %d m', (legs, depth, span) => {
    // Brick 20 kN/m³, stone 24 (the 100 mm column).
    const ratio = spanOverDeflection(legs, span * MM, depth, depth === 100 ? 24e-6 : 20e-6);
    expect(ratio).toBeGreaterThan(600);
    expect(ratio).toBeLessThan(774);
  });

  test('the same of what is in the table, not only of what is typed here', () => {
    const ratios = tableOf('ontario').rows.flatMap(({ vertical, horizontal, thickness, spans: byCase }) =>
      Object.entries(byCase).map(([name, span]) =>
        Math.round(
          spanOverDeflection(
            [vertical, horizontal, thickness],
            span,
            name === '70' ? 75 : Number(name),
            name === '100' ? 24e-6 : 20e-6,
          ),
        ),
      ),
    );
    expect([ratios.length, Math.min(...ratios), Math.max(...ratios)]).toEqual([31, 601, 773]);
  });

  test('89 × 89 × 6.4 under 90 mm at 2.47 m: I 8.455e5 mm⁴, L/606', () => {
    expect(secondMoment([89, 89, 6.4]) / 1e5).toBeCloseTo(8.455, 3);
    expect(Math.round(spanOverDeflection([89, 89, 6.4], 2470, 90, 20e-6))).toBe(606);
  });
});
