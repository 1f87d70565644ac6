import type { AngleRow, Limit, MortarRow, TieRow } from './limit';
import { NBC } from './nbc';
import { atLeast, atMost, exactly, under } from './rows';

/** Legs and thickness in mm, then the longest clear span in mm; 0 where that veneer may not stand on it. */
export type AngleLine = readonly [
  vertical: number,
  horizontal: number,
  thickness: number,
  ...spans: readonly number[],
];

/** Lines of an angle table as rows, the spans named by `cases` in order. */
export function angleRows(cases: readonly string[], lines: readonly AngleLine[]): readonly AngleRow[] {
  return lines.map(([vertical, horizontal, thickness, ...spans]) => ({
    vertical,
    horizontal,
    thickness,
    spans: Object.fromEntries(
      cases.flatMap((name, index) => {
        const span = spans[index];
        return span === undefined || span === 0 ? [] : [[name, span]];
      }),
    ),
  }));
}

/** Table 9.20.5.2. of the NBC; the first lines of the table in the Ontario code. Veneer of 75 (Ontario 70), 90 and 100 mm. */
export const VENEER_ANGLES: readonly AngleLine[] = [
  [89, 76, 6.4, 2550, 0, 0],
  [89, 89, 6.4, 2590, 2470, 2300],
  [102, 89, 6.4, 2790, 2660, 2480],
  [127, 89, 7.9, 3470, 3310, 3080],
  [127, 89, 11, 3640, 3480, 3240],
];

const TIE_ROWS: readonly TieRow[] = [
  { vertical: 400, horizontal: 800 },
  { vertical: 500, horizontal: 600 },
  { vertical: 600, horizontal: 400 },
];

const NO_LIME = [0, 0] as const;
const MORTARS: readonly MortarRow[] = [
  { type: 'S', portland: 1, lime: [0.5, 0.5], masonryCement: null, masonryCementVolume: 0, sand: [3.5, 4.5] },
  {
    type: 'S',
    portland: 0,
    lime: NO_LIME,
    masonryCement: 'masonry cement S',
    masonryCementVolume: 1,
    sand: [2.25, 3],
  },
  {
    type: 'S',
    portland: 0.5,
    lime: NO_LIME,
    masonryCement: 'masonry cement N',
    masonryCementVolume: 1,
    sand: [3.5, 4.5],
  },
  { type: 'N', portland: 1, lime: [1, 1], masonryCement: null, masonryCementVolume: 0, sand: [4.5, 6] },
  {
    type: 'N',
    portland: 0,
    lime: NO_LIME,
    masonryCement: 'masonry cement N',
    masonryCementVolume: 1,
    sand: [2.25, 3],
  },
];

export const CANADA_TABLES: readonly Limit[] = [
  ...under(
    { ...NBC, topic: 'openings', clause: 'Table 9.20.5.2.' },
    atLeast(
      'angle-size',
      'Steel angle over an opening in veneer, by clear span and thickness of the veneer',
      { form: 'angle-table', caseBy: 'unit depth', rows: angleRows(['75', '90', '100'], VENEER_ANGLES) },
      'table',
      { note: 'The longer leg stands up. The third column is for stone of 100 mm.' },
    ),
  ),
  ...under(
    { ...NBC, topic: 'ties', clause: 'Table 9.20.9.5.' },
    atMost(
      'tie-spacing',
      'Ties of veneer, spacing up the wall and across it',
      { form: 'tie-rows', rows: TIE_ROWS },
      'table',
      {
        note: 'A pair passes when one row allows both. Read strictly, studs 16 in apart (406 mm) fall into the second row.',
      },
    ),
  ),
  ...under(
    { ...NBC, topic: 'mortar', clause: 'Table 9.20.3.2.-B' },
    exactly(
      'mortar-proportions',
      'Mortar types by volume, sand damp and loose',
      { form: 'mortar-table', rows: MORTARS },
      'table',
      { note: 'Table 9.20.3.2.-A asks for type N or S in veneer above ground.' },
    ),
    atMost('sand-ratio', 'Sand, in volumes to one of cement and lime together', 3, 'volumes', {
      howSure: 'worked out',
      note: 'From the most sand the table allows: type S 4 1/2 to 1 1/2, type N 6 to 2. Each is 3.',
    }),
  ),
];
