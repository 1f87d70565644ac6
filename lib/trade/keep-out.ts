import { inches, type Mm } from '../units';
import { refuseNotPositive } from './refusals';

/** Beside the height: 4 ft. Source: US OSHA, 29 CFR 1926.706(a), read in a digest. */
const BESIDE: Mm = inches(0, 4);
/** Walls higher than this are braced until the building holds them: 8 ft. Source: 29 CFR 1926.706(b), read in a digest. */
const BRACE_ABOVE: Mm = inches(0, 8);

/**
 * How far people without work there stay away from a wall being built, on the side without scaffold, mm: its height + 4 ft, along the
 * whole wall. The rule of one country; yours may ask more. @throws RangeError for a height not above zero.
 */
export function keepOutOf(wallHeight: Mm): Mm {
  refuseNotPositive('wall height', wallHeight);
  return wallHeight + BESIDE;
}

/** 8 ft itself is not braced. @throws RangeError for a height not above zero. */
export function isBraced(wallHeight: Mm): boolean {
  refuseNotPositive('wall height', wallHeight);
  return wallHeight > BRACE_ABOVE;
}
