import type { Mm } from '../units';
import { refuseNotPositive } from './refusals';

const SQUARE_MM_PER_SQUARE_M = 1_000_000;

/**
 * A quotient above a whole number by no more than this share of itself counts as that number. Inches are not exact in binary: five
 * gaps of 8 1/2 in divided by one come to 5.000000000000001, and would ask for a sixth. Far below what a tape reads.
 */
const ROUNDING_SHARE = 1e-9;

/** The area each tie of a grid serves, mm²: horizontal × vertical spacing. @throws RangeError on senseless numbers. */
export function areaEach(horizontal: Mm, vertical: Mm): number {
  refuseNotPositive('horizontal spacing', horizontal);
  refuseNotPositive('vertical spacing', vertical);
  return horizontal * vertical;
}

/** Ties in a square metre of a grid. Staggering the rows does not change it. @throws RangeError on senseless numbers. */
export function tieDensity(horizontal: Mm, vertical: Mm): number {
  return SQUARE_MM_PER_SQUARE_M / areaEach(horizontal, vertical);
}

/**
 * The fewest ties for a panel, by area alone: panel ÷ area each, rounded up. Both in mm² (see squareFeet for ft²). Ties that edges and
 * openings ask for come on top.
 * @throws RangeError unless both are above zero.
 */
export function fewestTies(panelArea: number, areaOfEach: number): number {
  refuseNotPositive('panel area', panelArea);
  refuseNotPositive('area each', areaOfEach);
  return roundedUp(panelArea / areaOfEach);
}

/**
 * Ties up one jamb with no gap above the greatest allowed, one at either end: ⌈h ÷ gap⌉ + 1. The greatest gap itself is allowed.
 * @throws RangeError on senseless numbers.
 */
export function tiesUpJamb(height: Mm, greatestGap: Mm): number {
  refuseNotPositive('height', height);
  refuseNotPositive('greatest gap', greatestGap);
  return roundedUp(height / greatestGap) + 1;
}

function roundedUp(quotient: number): number {
  return Math.ceil(quotient * (1 - ROUNDING_SHARE));
}
