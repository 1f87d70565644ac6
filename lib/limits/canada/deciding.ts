import type { Limit } from '../limit';
import { atLeast, atMost, byClause, exactly, noted, PRESENT, shareOfDepth, stepped } from '../rows';
import { NBC } from './nbc';
import { angleRows, TIE_ROWS, VENEER_ANGLES } from './tables';

/** The last depth below 90 mm on the grid of walls here (eighths of a millimetre), so that 90 itself takes the next step. */
const BELOW_90 = 89.875;
/** Degrees are whole on the walls here: the last one below the 25 °C at which the clock changes lies under this. */
const BELOW_HOT = 24.999;

/** What the checks ask the National Building Code for. */
export const CANADA_DECIDING: readonly Limit[] = [
  ...byClause(NBC, 'joints', {
    '9.20.4.1.(1) and (2)': [
      atMost('bed-joint-most', 'Bed joint: greatest thickness', 15),
      atLeast('bed-joint-least', 'Bed joint: least thickness', 5),
      atMost('head-joint-most', 'Head joint: greatest width', 15),
      atLeast('head-joint-least', 'Head joint: least width', 5),
      ...noted(
        'The code gives the first bed no figure of its own, so it is held to the same one.',
        atMost('first-bed-most', 'First bed joint, on the foundation: greatest thickness', 15),
        atLeast('first-bed-least', 'First bed joint, on the foundation: least thickness', 5),
      ),
    ],
    '9.20.4.2.(3)': noted(
      'The code says full, but for open weep holes and vents. 95 % is our reading of full: as near as a probe can tell.',
      atLeast('head-fill', 'Head joint of solid units, share of its area that is filled', 95, '%'),
    ),
    '9.20.6.4.(3)': noted(
      'Veneer of 90 mm and more may be raked; the code then gives no depth.',
      atMost(
        'rake-on-thin-veneer',
        'Raked joint, depth behind the face, on veneer under 90 mm (3 9/16 in) thick',
        stepped('unit depth', [
          [BELOW_90, 0],
          [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY],
        ]),
      ),
    ),
  }),
  ...byClause(NBC, 'support', {
    '9.20.8.5': noted(
      'The same code prints a second rule for this (9.20.12.3). Both are kept: the stricter governs. Rough stone goes by averages.',
      atMost(
        'overhang-share',
        'Face of the veneer past the edge of its support, by its thickness',
        shareOfDepth(1 / 3),
      ),
    ),
    '9.20.12.3': noted(
      'The older of the two rules the code prints (see 9.20.8.5): 12 mm under 90 mm thick, else 25 mm. The stricter governs.',
      atMost(
        'overhang-fixed',
        'Face of the veneer past the edge of its support, as a length',
        stepped('unit depth', [
          [BELOW_90, 12],
          [Number.POSITIVE_INFINITY, 25],
        ]),
      ),
    ),
    '9.20.5.1.(1)': noted(
      'Wood does not count. One exception: veneer on a wood-frame foundation built to 9.15.2.4.',
      atLeast(
        'supported-share',
        'Length of the first course that stands on masonry, concrete or steel',
        100,
        '%',
      ),
    ),
  }),
  ...byClause(NBC, 'openings', {
    '9.20.5.2': [
      exactly('lintel-present', 'Lintel over an opening in the veneer', PRESENT, 'there or not'),
      ...noted(
        'Ontario asks for 150 mm, the IRC for 4 in.',
        atLeast('lintel-bearing', 'Steel lintel, bearing at each end', 90),
      ),
    ],
  }),
  ...byClause(NBC, 'ties', {
    '9.20.9.5.(1)': [
      atLeast('tie-thickness', 'Corrugated strap tie, thickness', 0.76),
      atLeast('tie-width', 'Corrugated strap tie, width', 22),
    ],
  }),
  ...byClause(NBC, 'water', {
    '9.20.13.8.(1)': noted(
      'At the foot of the air space and over lintels that are flashed.',
      atMost('weep-spacing', 'Weep holes, spacing along the wall', 800),
    ),
    '9.20.13.3': noted(
      'Under weep holes; and over an opening, but close under a wide eave.',
      exactly('flashing-present', 'Flashing at the foot and over openings', PRESENT, 'there or not'),
    ),
    '9.20.13.6': [
      ...noted(
        'Behind the sheathing membrane.',
        atLeast('flashing-upstand', 'Flashing under weep holes, up the framed wall', 150),
      ),
      atLeast('flashing-past-face', 'Flashing under weep holes, past the face of what is below', 5),
    ],
  }),
  ...byClause(NBC, 'mortar', {
    '9.20.3.2.(5)': noted(
      'An hour and a half when the air is at 25 °C or over, two and a half below that. Retarded mortar: as its maker states.',
      atMost(
        'mortar-life',
        'Mortar, from mixing to its final place',
        stepped('air temperature', [
          [BELOW_HOT, 150],
          [Number.POSITIVE_INFINITY, 90],
        ]),
        'minutes',
      ),
    ),
  }),
  ...byClause(NBC, 'openings', {
    'Table 9.20.5.2.': noted(
      'The longer leg stands up. The third column is for stone of 100 mm.',
      atLeast(
        'angle-size',
        'Steel angle over an opening in veneer, by clear span and thickness of the veneer',
        { form: 'angle-table', caseBy: 'unit depth', rows: angleRows(['75', '90', '100'], VENEER_ANGLES) },
        'table',
      ),
    ),
  }),
  ...byClause(NBC, 'ties', {
    'Table 9.20.9.5.': noted(
      'A pair passes when one row allows both. Read strictly, studs 16 in apart (406 mm) fall into the second row.',
      atMost(
        'tie-spacing',
        'Ties of veneer, spacing up the wall and across it',
        { form: 'tie-rows', rows: TIE_ROWS },
        'table',
      ),
    ),
  }),
  ...byClause({ ...NBC, howSure: 'worked out' }, 'mortar', {
    'Table 9.20.3.2.-B': noted(
      'From the most sand the table allows: type S 4 1/2 to 1 1/2, type N 6 to 2. Each is 3.',
      atMost('sand-ratio', 'Sand, in volumes to one of cement and lime together', 3, 'volumes'),
    ),
  }),
];
