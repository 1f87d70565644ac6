import type { Limit } from '../limit';
import { CANADA_DECIDING } from './deciding';
import { CANADA_SHOWN } from './shown';
import { CANADA_WALL, NATIONAL_ONLY } from './shown-wall';
import { CANADA_WATER } from './shown-water';

/** Rows that Ontario prints too, with its own figures in some. */
export const NATIONAL_AND_ONTARIO: readonly Limit[] = [
  ...CANADA_DECIDING,
  ...CANADA_SHOWN,
  ...CANADA_WALL,
  ...CANADA_WATER,
];

/**
 * Canada: the National Building Code, Division B, Part 9. Nothing is said there of the backs of units, level, plumb, line, gauge and bond,
 * of how deep a tie lies, nor of ties at the edges of veneer: for those good practice answers (`limits.ts`).
 */
export const CANADA: readonly Limit[] = [...NATIONAL_AND_ONTARIO, ...NATIONAL_ONLY];
