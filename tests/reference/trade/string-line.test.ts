import { describe, expect, test } from 'vitest';
import {
  catenarySag,
  dipAt,
  extraLineLength,
  lineWeight,
  parabolaSag,
  sagInBays,
  USUAL_LINE_MASS,
  windOnLine,
} from '../../../lib/trade/string-line';

const weight = lineWeight(USUAL_LINE_MASS);

// Statics of a hanging line, worked out by a second program: 1.4 g/m, g 9.80665 m/s².
describe('sag of a line of 1.4 g/m', () => {
  test.each([
    ['10 m at 100 N', parabolaSag(weight, 10_000, 100), 1.716, 3],
    ['20 m at 100 N', parabolaSag(weight, 20_000, 100), 6.8647, 4],
    ['20 m at 100 N, catenary', catenarySag(weight, 20_000, 100), 6.8647, 4],
    ['20 m at 100 N with a support in the middle', sagInBays(weight, 20_000, 100, 2), 1.716, 3],
    ['20 m at 5 N', parabolaSag(weight, 20_000, 5), 137.293, 3],
    ['20 m at 5 N, catenary', catenarySag(weight, 20_000, 5), 137.302, 3],
    ['extra length of 20 m at 100 N', extraLineLength(6.8647, 20_000), 0.00628, 5],
    ['side wind 5 m/s on 1.5 mm, N/m', windOnLine(5, 1.5), 0.027, 4],
    ['wind against weight', windOnLine(5, 1.5) / weight, 1.97, 2],
    ['20 m at 100 N, blown aside', parabolaSag(windOnLine(5, 1.5), 20_000, 100), 13.5, 1],
  ])('%s', (_, mm, expected, digits) => {
    expect(mm).toBeCloseTo(expected, digits);
  });

  // Next term of the series of cosh, by hand: sag × (wL/2T)² ÷ 12 = 6.8647 × 1.885e-6 ÷ 12. The reference sheet has
  // 1.4 millionths, which its own formula does not give: a slip there. Worked out, not published.
  test('catenary and parabola differ by 1.078 millionths of a millimetre over 20 m at 100 N', () => {
    const more = catenarySag(weight, 20_000, 100) - parabolaSag(weight, 20_000, 100);
    expect(more * 1e6).toBeCloseTo(1.078, 3);
  });

  test('a quarter along, the dip is three quarters of the sag: 5.1485 of 6.8647 mm', () => {
    expect(dipAt(5_000, weight, 20_000, 100)).toBeCloseTo(5.1485, 4);
    expect(dipAt(0, weight, 20_000, 100)).toBe(0);
  });

  test.each([
    ['no pull', () => parabolaSag(1, 1000, 0), 'pull: 0 is not above zero'],
    ['beyond the end', () => dipAt(1001, 1, 1000, 1), 'x: 1001 mm is beyond the end at 1000 mm'],
    ['half a bay', () => sagInBays(1, 1000, 1, 1.5), 'bays: 1.5 is not a whole number'],
  ])('%s is refused', (_, sag, message) => {
    expect(sag).toThrow(message);
  });
});
