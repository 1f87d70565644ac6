import { describe, expect, test } from 'vitest';
import { boundAt, slopeVerdict } from '../../../lib/limits/bound';
import type { RuleSetId } from '../../../lib/limits/limit';
import { limitOf, namedLimitOf } from '../../../lib/limits/limits';

/** A steady departure of so much over so long a run, mm. */
function judge(rules: RuleSetId, id: string, out: number, run: number) {
  const limit = namedLimitOf(rules, id);
  if (limit === undefined) throw new Error(`${rules} has no ${id}`);
  return slopeVerdict(limit.bound, out / run, run);
}

// TMS 602 Art. 3.3 F (told by mason contractors): 1/4 in in 10 ft, 3/8 in in 20 ft, 1/2 in at most. A yardstick for veneer.
describe('plumb and line by the steps of TMS 602', () => {
  test.each([
    ['5 m high, out by 8: 4.9 in 3.048 m', 8, 5000, true],
    ['5 m high, out by 12: 7.3 in 3.048 m', 12, 5000, false],
    ['10 ft, at the step', 6.35, 3048, true],
    ['10 ft, over the step', 6.375, 3048, false],
    ['20 ft, just within the step', 9.5, 6096, true],
    ['20 ft, over the step', 9.6, 6096, false],
    ['40 ft, over the whole', 13, 12192, false],
    ['2.4 m high: so much is allowed in any run', 6.25, 2400, true],
    ['2.4 m high', 6.4, 2400, false],
  ])('%s', (_, out, run, passes) => {
    expect([
      judge('good-practice', 'plumb', out, run).passes,
      judge('good-practice', 'face-line', out, run).passes,
    ]).toEqual([passes, passes]);
  });

  test('the 5 m wall out by 12 fails by the 20 ft step: 12 in 5 m against 9.525', () => {
    const verdict = judge('good-practice', 'plumb', 12, 5000);
    expect(verdict.measured).toBeCloseTo(12, 9);
    expect(verdict.limit).toBeCloseTo(9.525, 9);
  });
});

// TMS 602 Art. 3.3 F.2: bed joints 1/4 in in 10 ft, 1/2 in in all.
describe('level by the steps of TMS 602', () => {
  test.each([
    [6.35, 3048, true],
    [6.5, 3048, false],
    [12.7, 6096, true],
    [12.5, 7000, true],
    [13, 7000, false],
  ])('%d mm in %d: passes %s', (out, run, passes) => {
    expect(judge('good-practice', 'course-level', out, run).passes).toBe(passes);
  });
});

// NHBC 2011 1.2-S1(a): 8 mm in a 5 m wall, in proportion if shorter, 12 mm beyond. LABC Warranty v8: 10 and 15 mm.
describe('level in the United Kingdom', () => {
  test.each([
    ['course-level', 8, 5000, true],
    ['course-level', 8.125, 5000, false],
    ['course-level', 4, 2500, true],
    ['course-level', 4.125, 2500, false],
    ['course-level', 12, 5001, true],
    ['course-level', 12.125, 9000, false],
    ['course-level-labc', 10, 5000, true],
    ['course-level-labc', 5.125, 2500, false],
    ['course-level-labc', 15, 8000, true],
  ])('%s: %d mm in %d: passes %s', (id, out, run, passes) => {
    expect(judge('united-kingdom', id, out, run).passes).toBe(passes);
  });
});

// NHBC 2019 9.1.2: 8 mm in any length up to 5 m; 8 mm in a storey of about 2.5 m.
test.each([
  ['face-line', 8, 5000, true],
  ['face-line', 8.125, 4000, false],
  ['plumb', 8, 2500, true],
  ['plumb', 8.125, 2400, false],
])('United Kingdom, %s: %d mm in %d: passes %s', (id, out, run, passes) => {
  expect(judge('united-kingdom', id, out, run).passes).toBe(passes);
});

describe('other figures of the United Kingdom', () => {
  test.each<[source: string, id: string, span: number, value: number]>([
    ['NHBC 2020 6.1.12 Table 5', 'lintel-bearing', 900, 100],
    ['NHBC 2020 6.1.12 Table 5', 'lintel-bearing', 1200, 100],
    ['NHBC 2020 6.1.12 Table 5', 'lintel-bearing', 1201, 150],
    ['NHBC 2019 9.1.2', 'reveal-line', 0, 4],
    ['NHBC 2019 9.1.2', 'chip-size', 0, 15],
    ['NHBC 2019 9.1.2, m', 'viewing-distance', 0, 10],
    ['LABC Warranty, m', 'height-in-a-day', 0, 1.5],
    ['Tylers and Bricklayers Company: four courses', 'gauge-design', 0, 300],
    ['NHBC 2022 6.1.20, °C', 'laying-temperature', 0, 3],
  ])('%s: %s, %d', (_, id, span, value) => {
    const limit = namedLimitOf('united-kingdom', id);
    expect(limit?.rules).toBe('united-kingdom');
    if (limit !== undefined) expect(boundAt(limit, { span })).toBe(value);
  });
});

// Brick Industry Association notes, IRC, IBC: inches as printed, mm by the definition of the inch.
describe('other figures of North America', () => {
  test.each<[source: string, rules: RuleSetId, id: string, mm: number]>([
    ['IRC R703.8.3: 4 in', 'united-states', 'lintel-bearing', 101.6],
    ['IRC R703.8.6: 33 in', 'united-states', 'weep-spacing', 838.2],
    ['IRC R703.8.6: 3/16 in', 'united-states', 'weep-size', 4.76],
    ['IRC R703.12.1: 4 in', 'united-states', 'adhered-above-earth', 101.6],
    ['IRC R703.12.1: 2 in', 'united-states', 'adhered-above-paving', 50.8],
    ['IRC R703.12.1: 1/2 in', 'united-states', 'adhered-above-walk', 12.7],
    ['IRC R703.8.3.2: 18 ft 3 in', 'united-states', 'long-opening', 5562.6],
    ['IBC 1404.4.2: 10 in', 'united-states', 'flashing-above-ground', 254],
    ['IRC R703.8: 5 in', 'united-states', 'veneer-thickness-most', 127],
    ['IRC R606.3.7.2: 48 in', 'united-states', 'stack-bond-steel', 1219.2],
    ['BIA 28B: 24 in', 'good-practice', 'weep-spacing', 609.6],
    ['BIA 28B: 16 in', 'good-practice', 'weep-spacing-wick', 406.4],
    ['BIA 28B: 8 in', 'good-practice', 'flashing-upstand', 203.2],
    ['Beall p. 258: 1/4 in', 'good-practice', 'angle-thickness', 6.35],
    ['Beall p. 258: 3 in', 'good-practice', 'angle-leg', 76.2],
    ['BIA 18A, in m: 25 ft', 'good-practice', 'movement-plain', 7.62],
    ['TMS 602 by mason contractors: 40 °F', 'good-practice', 'cold-from', 4.4],
    ['TMS 602 by mason contractors: 100 °F', 'good-practice', 'hot-from', 37.8],
  ])('%s', (_, rules, id, value) => {
    const limit = namedLimitOf(rules, id);
    expect(limit?.rules).toBe(rules);
    if (limit !== undefined) expect(boundAt(limit, {})).toBeCloseTo(value, 2);
  });
});

// NZS 4210 s1.3 by a New Zealand bricklayers' page: the larger of a quarter of the length and the width. A magazine: not under the width.
test('the shortest piece of a 190 × 90 brick is 90 mm', () => {
  const limit = limitOf('canada', 'smallest-piece');
  if (limit === undefined) throw new Error('no smallest piece');
  expect(boundAt(limit, { depth: 90 })).toBe(90);
});
