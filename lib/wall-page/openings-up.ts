import type { Wall } from '../wall/model';

/**
 * One unit in so many may be lifted off a wall whose units are stuck on. Sparing, and yet fair: with so many spread evenly over every
 * fourth course at least 95 % of the patches without mortar are met (tests/lib/classes/openings-up.test.ts).
 */
const UNITS_AN_OPENING = 14;
/** Walls on ties show their ties before cover: a unit is lifted to look at a strap, not to search. */
const ON_TIES = 6;

/** How many units of a wall may be lifted. */
export function openingsUpOf({ masonry, units }: Wall): number {
  return masonry === 'adhered' ? Math.ceil(units.length / UNITS_AN_OPENING) : ON_TIES;
}
