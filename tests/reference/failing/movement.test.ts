import { describe, expect, test } from 'vitest';
import { repairOf } from '../../../lib/failing/state/repair';
import { bowOf } from '../../../lib/mechanisms/growth/bowing';
import { grownBy } from '../../../lib/mechanisms/growth/expansion';
import { SHRINKAGE } from '../../../lib/mechanisms/growth/shrinkage';
import { SULPHATE_GROWTH } from '../../../lib/mechanisms/growth/sulphates';
import { rustGrowth } from '../../../lib/mechanisms/openings/lintels';
import { turnedAbout } from '../../../lib/mechanisms/parting/field';
import { overhangMarksOf } from '../../../lib/trade/overhang';
import { bendingFactor, deflectionRatio, diagonalFactor } from '../../../lib/trade/settlement';
import { inches } from '../../../lib/units';

const within = (measured: number, expected: number, share: number) =>
  expect(Math.abs(measured / expected - 1)).toBeLessThanOrEqual(share);

/** 100 °F of warming, in °C. */
const HUNDRED_F = 100 / 1.8;

describe('clay brick grows: BIA Technical Notes 18 and 18A, 2006', () => {
  test('0.0009 of its length by moisture and 100 °F; 25 ft grow 6.9 mm', () => {
    within(grownBy(1, 1, HUNDRED_F), 0.0009, 0.001);
    within(grownBy(inches(0, 25), 1, HUNDRED_F), 6.9, 0.01);
  });
  test.each([
    // A joint filled with what gives by half its width: the note prints 23 ft 2 in. (7.06 m) for half an inch.
    [1 / 2, 23 * 12 + 2],
    [3 / 8, 208],
  ])('a joint of %d in. with a filler that gives by half takes up a run of %d in.', (width, run) => {
    within(grownBy(inches(run), 1, HUNDRED_F), inches(width) / 2, 0.004);
  });
  test('no more than the 0.17 % that brick was ever seen to grow (Hosking and Hueber, ASTM)', () => {
    expect(grownBy(1, 1.3, 27.8)).toBeLessThan(0.0017);
  });
});

test('concrete units dry by 0.032 to 0.116 % in a year (LABC Warranty)', () => {
  expect(SHRINKAGE.map((share) => share * 100)).toEqual([0.032, 0.116]);
});

test('half a millimetre of growth in 3 m bows a wall by as much as 25 mm (BRE Digest 361, as RICS pages quote it)', () => {
  within(bowOf(3000, 0.5), 24.7, 0.005);
  expect(Math.round(bowOf(3000, 0.5))).toBe(25);
});

describe('leans at which a wall is looked at by an expert: 30, 70 and 100 mm for half, one and one and a half brick (two councils)', () => {
  test.each([
    [102.5, 34, 30],
    [215, 72, 70],
    [327.5, 109, 100],
  ])('%d mm thick: a third is %d mm, the leaflet says %d', (thick, third, published) => {
    const mark = overhangMarksOf(thick).third;
    expect(Math.round(mark)).toBe(third);
    // Never above the middle third, and at most an eighth below it.
    expect(published).toBeLessThanOrEqual(mark);
    expect(published / mark).toBeGreaterThan(7 / 8);
  });
});

describe('an end that goes down 10 mm over 3 m turns by 1 in 300', () => {
  const field = turnedAbout(3000, 0, 10 / 3000);
  test('0 at its root, 8 mm along at 2.4 m: BRE category 3', () => {
    within(-field.at(3000, 2400).u, 8, 1e-9);
    expect(Math.abs(field.at(3000, 0).u)).toBe(0);
    expect(repairOf(8).category).toBe(3);
  });
  test('its end is 10 mm down', () => within(-field.at(0, 0).v, 10, 1e-9));
});

describe('rust: 2(n − 1)x for half a millimetre lost on each face (n 2.35 solid: repub.eur.nl; 6: a surveyors’ article)', () => {
  test.each([
    [2.35, 1.35],
    [3, 2],
    [6, 5],
  ])('takes %d times the room: the bed opens %d mm', (volume, opening) => {
    within(rustGrowth(0.5, volume), opening, 1e-9);
  });
});

test('sulphates: growth upward "often as high as 0.2 %" (surveyors’ pages)', () => {
  expect(SULPHATE_GROWTH).toBe(0.002);
});

describe('deep beams of Burland and Wroth, hogging', () => {
  test.each([
    // L/H, bending factor, diagonal factor, 1 in so many at 0.075 %: the formulas worked out by a second program.
    [1, 1.383, 1.064, 1253],
    [2, 0.817, 1.256, 1632],
    [3, 0.683, 1.577, 1951],
    [4, 0.658, 2.026, 2025],
  ])('L/H %d: %d in bending, %d on the diagonal, 1 in %d', (slenderness, bending, diagonal, oneIn) => {
    within(bendingFactor(slenderness, 'hogging'), bending, 0.001);
    within(diagonalFactor(slenderness, 'hogging'), diagonal, 0.001);
    within(1 / deflectionRatio(slenderness, 'hogging', 0.00075), oneIn, 0.001);
  });
});

describe('widths in the bands of BRE Digest 251: of repair, never of danger', () => {
  test.each([
    [0, 0],
    [0.09, 0],
    [0.1, 1],
    [1, 1],
    [1.1, 2],
    [5, 2],
    [5.1, 3],
    [15, 3],
    [15.1, 4],
    [25, 4],
    [25.1, 5],
  ])('%d mm: category %d', (width, category) => {
    expect(repairOf(width).category).toBe(category);
  });
});
