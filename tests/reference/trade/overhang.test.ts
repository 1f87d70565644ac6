import { describe, expect, test } from 'vitest';
import { overhangMarksOf, peakStressRatio, standingOf } from '../../../lib/trade/overhang';
import { inches } from '../../../lib/units';

// Elementary statics of a block on a bed without tension, worked out by a second program to a thousandth.
describe('edge stress over the mean', () => {
  test.each([
    [0, 1],
    [0.1, 1.481],
    [0.2, 2.188],
    [0.25, 2.667],
    [0.3, 3.333],
    [1 / 3, 4],
    [0.4, 6.667],
    [0.45, 13.333],
    [0.49, 66.667],
  ])('overhang of %d of the depth: %d', (share, ratio) => {
    // Half of the last digit printed; 2.1875 is printed as 2.188.
    expect(Math.abs(peakStressRatio(102.5, 102.5 * share) - ratio)).toBeLessThanOrEqual(0.0005 + 1e-9);
  });
});

// The same program, to a hundredth of a millimetre. The depths are bricks as sold: 90 (metric), 3 5/8 in, 102.5 (UK), 110 (Australian).
describe('overhangs that matter', () => {
  test.each([
    [90, 'kern', 22.5],
    [90, 'third', 30],
    [90, 'tipping', 45],
    [92.075, 'kern', 23.02],
    [92.075, 'third', 30.69],
    [92.075, 'tipping', 46.04],
    [102.5, 'kern', 25.63],
    [102.5, 'third', 34.17],
    [102.5, 'tipping', 51.25],
    [110, 'kern', 27.5],
    [110, 'third', 36.67],
    [110, 'tipping', 55],
  ] as const)('%d mm deep, %s: %d mm', (depth, mark, expected) => {
    expect(Math.abs(overhangMarksOf(depth)[mark] - expected)).toBeLessThanOrEqual(0.005 + 1e-9);
  });
});

// NBC 2020, 9.20.8.5 (read in two copies): a third of the veneer's thickness. IRC R703.8.2.1: two thirds must bear. The codes print no
// example; the rule was applied by a second program, to a tenth.
describe('one third of the thickness', () => {
  test.each([
    [90, 30],
    [75, 25],
    [70, 23.3],
    [inches(3.625), 30.7],
  ])('%d mm: %d mm', (depth, third) => {
    expect(Math.abs(overhangMarksOf(depth).third - third)).toBeLessThanOrEqual(0.05);
  });
});

describe('how published overhangs stand', () => {
  test.each([
    // NHBC Standards 2020, 6.1.12, read: 25 mm over a lintel.
    ['UK 25 mm of 102.5', 102.5, 25, 'pressed'],
    // ABCB Housing Provisions 2022, Part 5.7 (4), read: 15 mm over a slab edge.
    ['Australia 15 mm of 110', 110, 15, 'pressed'],
    // NBC 2020, 9.20.8.5: a third. It lies beyond the kern.
    ['Canada 30 mm of 90', 90, 30, 'lifting'],
    ['half of 90', 90, 45, 'tipping'],
  ])('%s', (_, depth, overhang, standing) => {
    expect(standingOf(depth, overhang)).toBe(standing);
  });
});
