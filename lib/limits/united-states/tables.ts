import { inches } from '../../units';
import type { AngleRow, MortarRow } from '../limit';

/** Legs and thickness in inches, spans in feet for no storey above, one and two. */
export function angle(
  [vertical, horizontal, thickness]: readonly [number, number, number],
  [none, one, two]: readonly [number, number, number],
): AngleRow {
  return {
    vertical: inches(vertical),
    horizontal: inches(horizontal),
    thickness: inches(thickness),
    spans: { '0': inches(0, none), '1': inches(0, one), '2': inches(0, two) },
  };
}

export const SINGLE_ANGLES: readonly AngleRow[] = [
  angle([3, 3, 1 / 4], [6, 4.5, 3]),
  angle([4, 3, 1 / 4], [8, 6, 4.5]),
  angle([5, 3.5, 5 / 16], [10, 8, 6]),
  angle([6, 3.5, 5 / 16], [14, 9.5, 7]),
];

export const PAIRED_ANGLES: readonly AngleRow[] = [angle([6, 3.5, 5 / 16], [20, 12, 9.5])];

/** Sand to one volume of all that binds: the code prints it beside the table. */
export const SAND_LEAST = 2.25;

export const SAND_MOST = 3;

/** A row of the table. Lime runs over its first figure and up to its second; sand is what the two ratios allow at its widest. */
export function mix(
  type: string,
  portland: number,
  lime: readonly [number, number],
  masonryCement: string | null = null,
): MortarRow {
  const masonryCementVolume = masonryCement === null ? 0 : 1;
  const binds = portland + masonryCementVolume;
  return {
    type,
    portland,
    lime,
    masonryCement,
    masonryCementVolume,
    sand: [SAND_LEAST * (binds + lime[0]), SAND_MOST * (binds + lime[1])],
  };
}

export const NO_LIME = [0, 0] as const;

export const MORTARS: readonly MortarRow[] = [
  mix('M', 1, [0, 0.25]),
  mix('S', 1, [0.25, 0.5]),
  mix('N', 1, [0.5, 1.25]),
  mix('O', 1, [1.25, 2.5]),
  mix('M', 1, NO_LIME, 'mortar cement N'),
  mix('M', 0, NO_LIME, 'mortar cement M'),
  mix('S', 0.5, NO_LIME, 'mortar cement N'),
  mix('S', 0, NO_LIME, 'mortar cement S'),
  mix('N', 0, NO_LIME, 'mortar cement N'),
  mix('O', 0, NO_LIME, 'mortar cement N'),
  mix('M', 1, NO_LIME, 'masonry cement N'),
  mix('M', 0, NO_LIME, 'masonry cement M'),
  mix('S', 0.5, NO_LIME, 'masonry cement N'),
  mix('S', 0, NO_LIME, 'masonry cement S'),
  mix('N', 0, NO_LIME, 'masonry cement N'),
  mix('O', 0, NO_LIME, 'masonry cement N'),
];
