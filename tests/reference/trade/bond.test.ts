import { describe, expect, test } from 'vitest';
import {
  bondOffsetsOf,
  headJointFor,
  lapOf,
  openingWidth,
  piecesOf,
  pierLength,
  returnLength,
} from '../../../lib/trade/bond';
import { inches } from '../../../lib/units';

// Unit sizes: 215 × 102.5 × 65 mm (UK co-ordinating size 225 × 112.5 × 75, Technical Information Sheet 9, read); 7 5/8 in at 3/8 in
// (brick sizes of the BIA); 230 mm (New Zealand and Australian brick). The cuts were worked out from them by a second program, printed
// to a ten-thousandth: half of that is let through.
describe('pieces and offsets', () => {
  test.each([
    [215, 10, 'half', 102.5],
    [215, 10, 'third', 65],
    [215, 10, 'twoThirds', 140],
    [215, 10, 'quarter', 46.25],
    [215, 10, 'threeQuarter', 158.75],
    [7.625, 0.375, 'half', 3.625],
    [7.625, 0.375, 'third', 2.2917],
    [7.625, 0.375, 'twoThirds', 4.9583],
    [7.625, 0.375, 'quarter', 1.625],
    [7.625, 0.375, 'threeQuarter', 5.625],
    [230, 10, 'half', 110],
    [230, 10, 'third', 70],
    [230, 10, 'twoThirds', 150],
    [230, 10, 'quarter', 50],
    [230, 10, 'threeQuarter', 170],
  ] as const)('unit %d at %d, %s: %d', (length, joint, piece, expected) => {
    expect(piecesOf(length, joint)[piece]).toBeCloseTo(expected, 4);
  });

  test.each([
    [215, 10, 'half', 112.5],
    [215, 10, 'third', 75],
    [215, 10, 'quarter', 56.25],
    [7.625, 0.375, 'half', 4],
    [7.625, 0.375, 'third', 2.6667],
    [7.625, 0.375, 'quarter', 2],
    [230, 10, 'half', 120],
    [230, 10, 'third', 80],
    [230, 10, 'quarter', 60],
  ] as const)('unit %d at %d, offset of %s bond: %d', (length, joint, bond, expected) => {
    expect(bondOffsetsOf(length, joint)[bond]).toBeCloseTo(expected, 4);
  });
});

// Worked out by a second program for a 3000 mm wall of 215 mm brick; printed to a thousandth.
describe('head joint of a 3000 mm wall', () => {
  const full = Array.from({ length: 13 }, () => 215);
  test.each([
    ['13 full', full, 17.083],
    ['13 full and a half', [...full, 102.5], 7.885],
  ])('%s: %d mm', (_, pieces, joint) => {
    expect(headJointFor(3000, pieces)).toBeCloseTo(joint, 3);
  });
});

// Nominal lengths: brick sizes of the BIA with 3/8 in joints (archtoolbox.com, brick sizes), read. Exact but for binary rounding.
describe('a brick and its joint are its nominal length', () => {
  test.each([
    ['modular', 7.625, 8],
    ['engineer modular', 7.625, 8],
    ['norman', 11.625, 12],
    ['roman', 11.625, 12],
    ['economy', 7.625, 8],
    ['utility', 11.625, 12],
  ])('%s: %d in is nominally %d in', (_, length, nominal) => {
    expect(returnLength(1, inches(length), inches(0.375))).toBeCloseTo(nominal * 25.4, 9);
  });

  // A brick maker's layout notes (catalogue page, read): three modular brick are 23 5/8 in long, not 24; an opening takes a joint more.
  test('three modular brick: pier 23 5/8 in, opening 24 3/8 in', () => {
    expect(pierLength(3, inches(7.625), inches(0.375))).toBeCloseTo(23.625 * 25.4, 9);
    expect(openingWidth(3, inches(7.625), inches(0.375))).toBeCloseTo(24.375 * 25.4, 9);
  });

  // GSA Metric Design Guide, PBS-PQ260, page 14: 190 mm brick at 10 mm; the 200 mm module follows.
  test('metric modular: 200 mm', () => {
    expect(returnLength(1, 190, 10)).toBe(200);
  });
});

describe('lap', () => {
  // Shares worked out by a second program to a tenth of a percent: 34.9 % and 26.2 % of the length, both over 25 % (NZS 4210).
  test.each([
    ['third', 0.349],
    ['quarter', 0.262],
  ] as const)('%s bond of 215 mm brick laps %d of its length', (bond, share) => {
    const offset = bondOffsetsOf(215, 10)[bond];
    expect(Math.abs(offset / 215 - share)).toBeLessThanOrEqual(0.0005);
    expect(lapOf(offset, 215, 0.25)).toBe('enough');
    expect(lapOf(offset, 215, share + 0.0005)).toBe('short');
  });

  // IRC R606.3.7.1 (2015 to 2024, read): at least a quarter of the length. Of 7 5/8 in that is 1.906 in, 48.4 mm, to the last digit.
  test('running bond of 7 5/8 in brick', () => {
    expect(lapOf(48.45, inches(7.625), 0.25)).toBe('enough');
    expect(lapOf(48.35, inches(7.625), 0.25)).toBe('short');
  });
});
