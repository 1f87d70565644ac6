import type { Limit } from '../limit';
import { UNITED_STATES_DECIDING } from './deciding';
import { UNITED_STATES_SHOWN } from './shown';
import { UNITED_STATES_ADHERED } from './shown-adhered';
import { UNITED_STATES_WALL } from './shown-wall';

/**
 * United States: the International Residential Code. Its joint tolerances bind load-bearing masonry alone, and it is silent on the backs of units,
 * level, plumb, line, gauge, bond and the size of an angle without a table: for those good practice answers (`limits.ts`).
 */
export const UNITED_STATES: readonly Limit[] = [
  ...UNITED_STATES_DECIDING,
  ...UNITED_STATES_SHOWN,
  ...UNITED_STATES_WALL,
  ...UNITED_STATES_ADHERED,
];
