import type { AngleRow, MortarRow, TieRow } from '../limit';

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

export const TIE_ROWS: readonly TieRow[] = [
  { vertical: 400, horizontal: 800 },
  { vertical: 500, horizontal: 600 },
  { vertical: 600, horizontal: 400 },
];

export const NO_LIME = [0, 0] as const;

export const MORTARS: readonly MortarRow[] = [
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
