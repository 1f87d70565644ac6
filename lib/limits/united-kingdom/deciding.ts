import type { Limit } from '../limit';
import { atLeast, atMost, byClause, noted, stepped } from '../rows';
import { LABC, LAYING, NHBC_2019, NHBC_2020, TRAYS, UK } from './standards';

const NHBC_2011 = { ...UK, source: 'nhbc-2011', edition: 'NHBC Standards 2011' } as const;

/** What the checks ask the two warranty bodies for. */
export const UNITED_KINGDOM_DECIDING: readonly Limit[] = [
  ...byClause(LABC, 'joints', {
    'Chapter 1': atMost('bed-from-mean-of-eight', 'Bed joint, from the mean of any eight beds in a row', 5),
  }),
  ...byClause(LAYING, 'joints', {
    joints: atLeast('head-joint-least', 'Perpend (head joint): least width', 7),
  }),
  ...byClause(NHBC_2011, 'line', {
    '1.2-S1(a)': noted(
      'In proportion when the wall is shorter than 5 m. LABC Warranty allows 10 mm, and 15 mm beyond 5 m.',
      atMost('course-level', 'Bed joint out of level along a wall', {
        form: 'pro-rata',
        run: 5000,
        value: 8,
        beyond: 12,
      }),
    ),
  }),
  ...byClause(NHBC_2019, 'line', {
    '9.1.2': [
      ...noted(
        '8 mm in any length up to 5 m. The walls here are no longer than that, so 8 mm is used overall too.',
        atMost('face-line', 'Face of a fair-faced wall out of line, in plan', {
          form: 'any-run',
          runs: [{ run: 5000, value: 8 }],
          overall: 8,
        }),
      ),
      ...noted(
        '8 mm in a storey of about 2.5 m. A figure for walls over 5 m high was seen only in weak copies: 8 mm is used overall.',
        atMost('plumb', 'Face out of plumb', {
          form: 'any-run',
          runs: [{ run: 2500, value: 8 }],
          overall: 8,
        }),
      ),
    ],
  }),
  ...byClause(NHBC_2020, 'support', {
    '6.1.12': noted(
      'Printed for masonry over a lintel; used here for any support.',
      atMost('overhang-fixed', 'Face of the masonry past the edge of its support, as a length', 25),
    ),
  }),
  ...byClause(NHBC_2020, 'openings', {
    '6.1.12, Table 5': noted(
      'Simple lintels. One with a built-in tray needs 150 mm at any span.',
      atLeast(
        'lintel-bearing',
        'Lintel, bearing at each end',
        stepped('clear span', [
          [1200, 100],
          [Number.POSITIVE_INFINITY, 150],
        ]),
      ),
    ),
  }),
  ...byClause({ ...UK, source: 'nhbc-2020-frame', edition: 'NHBC Standards 2020' }, 'ties', {
    '6.2.14': [
      ...noted(
        'Each is fixed to a stud, is of austenitic stainless steel, and lies level or falls outwards.',
        atMost(
          'tie-spacing',
          'Ties of brick on a timber frame, spacing up the wall and along it',
          { form: 'tie-rows', rows: [{ vertical: 450, horizontal: 600 }] },
          'table',
        ),
      ),
      ...noted(
        'Printed for the sides of openings; used here for free ends too.',
        atMost('tie-edge-distance', 'Ties at jambs and free ends, distance from the edge', 225),
        atMost('tie-edge-spacing', 'Ties at jambs and free ends, spacing up the edge', 300),
      ),
    ],
  }),
  ...byClause(NHBC_2020, 'ties', {
    '6.1.18': noted(
      'Printed for each of two masonry leaves; used here for brick on a frame. Built in as the work goes up, never pushed in after.',
      atLeast('tie-embedment', 'Wall tie, length in the mortar', 50),
    ),
  }),
  ...byClause(TRAYS, 'water', {
    openings: noted(
      'Printed for cavity trays over openings; used here for the foot of the wall too.',
      atMost('weep-spacing', 'Weep holes, spacing along the tray', 900),
    ),
  }),
];
