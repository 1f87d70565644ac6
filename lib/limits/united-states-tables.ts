import { inches } from '../units';
import { IRC } from './irc';
import type { AngleRow, Limit, MortarRow } from './limit';
import { atLeast, atMost, exactly, under } from './rows';

/** Legs and thickness in inches, spans in feet for no storey above, one and two. */
function angle(
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

const SINGLE_ANGLES: readonly AngleRow[] = [
  angle([3, 3, 1 / 4], [6, 4.5, 3]),
  angle([4, 3, 1 / 4], [8, 6, 4.5]),
  angle([5, 3.5, 5 / 16], [10, 8, 6]),
  angle([6, 3.5, 5 / 16], [14, 9.5, 7]),
];
const PAIRED_ANGLES: readonly AngleRow[] = [angle([6, 3.5, 5 / 16], [20, 12, 9.5])];

/** Sand to one volume of all that binds: the code prints it beside the table. */
const SAND_LEAST = 2.25;
const SAND_MOST = 3;

/** A row of the table. Lime runs over its first figure and up to its second; sand is what the two ratios allow at its widest. */
function mix(
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

const NO_LIME = [0, 0] as const;
const MORTARS: readonly MortarRow[] = [
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

export const UNITED_STATES_TABLES: readonly Limit[] = [
  ...under(
    { ...IRC, topic: 'openings', clause: 'Table R703.8.3.1' },
    atLeast(
      'angle-size',
      'Steel angle over an opening in veneer, by clear span and storeys above',
      { form: 'angle-table', caseBy: 'storeys above', rows: SINGLE_ANGLES },
      'table',
      {
        note: 'The longer leg stands up. IRC 2024 adds 5 × 3 in angles beside the last two rows. An older code (CABO) allowed shorter spans.',
      },
    ),
    atLeast(
      'angle-pair-size',
      'Two steel angles over an opening in veneer, by clear span and storeys above',
      { form: 'angle-table', caseBy: 'storeys above', rows: PAIRED_ANGLES },
      'table',
    ),
  ),
  ...under(
    { ...IRC, topic: 'mortar', clause: 'Table R606.2.8' },
    exactly(
      'mortar-proportions',
      'Mortar types by volume, sand damp and loose',
      { form: 'mortar-table', rows: MORTARS },
      'table',
      {
        note: 'The proportion table of ASTM C270. Lime: over the first figure, up to the second. Sand is worked out here for the least and most lime of each row; the two sand ratios bind.',
      },
    ),
    atMost('sand-ratio', 'Sand, in volumes to one of cement and lime together', SAND_MOST, 'volumes'),
    atLeast(
      'sand-ratio-least',
      'Sand, the least, in volumes to one of cement and lime together',
      SAND_LEAST,
      'volumes',
    ),
  ),
];
