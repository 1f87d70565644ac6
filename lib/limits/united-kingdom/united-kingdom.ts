import type { Limit } from '../limit';
import { UNITED_KINGDOM_DECIDING } from './deciding';
import { UNITED_KINGDOM_SHOWN } from './shown';
import { UNITED_KINGDOM_WALL } from './shown-wall';

/**
 * United Kingdom: the standards of two warranty bodies, that most new houses are built to. They give no figures for backs, the first bed,
 * full joints, gauge, perpends, single units, the size of a strap or an angle, and mortar: for those good practice answers (`limits.ts`).
 */
export const UNITED_KINGDOM: readonly Limit[] = [
  ...UNITED_KINGDOM_DECIDING,
  ...UNITED_KINGDOM_SHOWN,
  ...UNITED_KINGDOM_WALL,
];
