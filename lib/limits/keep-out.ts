import type { Mm } from '../units';
import { boundAt } from './bound';
import type { Limit } from './limit';
import { namedLimitOf } from './limits';

/** Of one country, and told wherever the reader is, since no other rule set has one: yours may ask more. */
export const KEEP_OUT = ownLimit('keep-out-beside');
const UNBRACED = ownLimit('unbraced-height');

/** How far people without work there stay away from a wall being built, on the side without scaffold and along the whole wall. */
export function keepOutOf(wallHeight: Mm): Mm {
  return wallHeight + boundAt(KEEP_OUT, {});
}

/** The limit itself still stands without bracing. */
export function isBraced(wallHeight: Mm): boolean {
  return wallHeight > boundAt(UNBRACED, {});
}

function ownLimit(id: string): Limit {
  const limit = namedLimitOf('united-states', id);
  if (limit === undefined) throw new RangeError(`united-states: no limit ${id}`);
  return limit;
}
