import { inches, squareFeet } from '../../units';
import type { Limit } from '../limit';
import { atLeast, atMost, byClause, exactly, noted, PRESENT, shareOfDepth } from '../rows';
import { IRC } from './irc';
import { SAND_MOST, SINGLE_ANGLES } from './tables';

/** What the checks ask the International Residential Code for. */
export const UNITED_STATES_DECIDING: readonly Limit[] = [
  ...byClause(IRC, 'joints', {
    'R606.3.1': [
      atMost('first-bed-most', 'First bed joint, on the foundation: greatest thickness', inches(3 / 4)),
      atLeast('first-bed-least', 'First bed joint, on the foundation: least thickness', inches(1 / 4)),
    ],
    'R606.3.2.1': noted(
      'The code says full head and bed joints. 95 % is our reading of full: as near as a probe can tell.',
      atLeast('head-fill', 'Head joint of solid units, share of its area that is filled', 95, '%'),
    ),
  }),
  ...byClause({ ...IRC, howSure: 'worked out' }, 'support', {
    'R606.6.1; R703.8.2.1': noted(
      'The code says that two thirds of the thickness must bear: a third may stand past the edge.',
      atMost(
        'overhang-share',
        'Face of the veneer past the edge of its support, by its thickness',
        shareOfDepth(1 / 3),
      ),
    ),
    'R606.6.1; Table R703.8(1)': noted(
      'No clause prints a share of the length. The height table counts from a foundation that cannot burn, and each wythe must bear: that all of the first course must is our reading. Veneer on wood framing has conditions of its own (R703.8.2), not drawn here.',
      atLeast(
        'supported-share',
        'Length of the first course that stands on masonry, concrete or steel',
        100,
        '%',
      ),
    ),
  }),
  ...byClause(IRC, 'openings', {
    'R703.8.3': [
      exactly(
        'lintel-present',
        'Lintel that cannot burn, over an opening in the veneer',
        PRESENT,
        'there or not',
      ),
      atLeast('lintel-bearing', 'Lintel, bearing at each end', inches(4)),
    ],
  }),
  ...byClause(IRC, 'ties', {
    'R703.8.4.1': [
      ...noted(
        'Both spacings and the area must hold. Rows 24 in apart on studs 16 in apart make 2.667 ft²: allowed. The code prints 635 mm beside 24 in; the inches are right.',
        atMost(
          'tie-spacing',
          'Ties of veneer, spacing up the wall and across it, and wall area of each',
          { form: 'tie-area', vertical: inches(24), horizontal: inches(32), area: squareFeet(2.67) },
          'table',
        ),
      ),
      atLeast('tie-thickness', 'Corrugated strap tie, thickness (No. 22 gage)', inches(0.0299)),
      atLeast('tie-width', 'Corrugated strap tie, width', inches(7 / 8)),
    ],
    'R703.8.4.1.1': [
      atMost('tie-edge-distance', 'Ties round an opening, distance from its edge', inches(12)),
      ...noted(
        'The code prints 9144 mm beside 3 ft: a slip. The feet are right.',
        atMost('tie-edge-spacing', 'Ties round an opening, spacing along its edge', inches(36)),
      ),
      atMost('tie-opening', 'Opening that needs no ties round it, either way', inches(16)),
    ],
    'R703.8.4; R606.3.3': [
      atLeast('tie-embedment', 'Tie, length in the mortar of the veneer', inches(1.5)),
      atLeast('tie-cover', 'Tie, mortar between its end and the face', inches(5 / 8)),
    ],
  }),
  ...byClause(IRC, 'water', {
    'R703.8.5': exactly(
      'flashing-present',
      'Flashing under the first course above ground and at every support',
      PRESENT,
      'there or not',
    ),
    'R703.8.6': [
      atMost('weep-spacing', 'Weep holes, spacing along the wall', inches(33)),
      ...noted('Directly above the flashing.', atLeast('weep-size', 'Weep hole, diameter', inches(3 / 16))),
    ],
  }),
  // The IRC has mortar made to ASTM C270 (R606.2.8), whatever the temperature of the air.
  ...byClause(
    {
      rules: 'united-states',
      kind: 'standard tolerance',
      source: 'astm-c270',
      edition: 'ASTM C270, as told in 1978 and 1988',
      howSure: 'second-hand',
    },
    'mortar',
    {
      'use of mortar': atMost('mortar-life', 'Mortar, from mixing to its final place', 150, 'minutes'),
    },
  ),
  ...byClause(IRC, 'openings', {
    'Table R703.8.3.1': noted(
      'The longer leg stands up. IRC 2024 adds 5 × 3 in angles beside the last two rows. An older code (CABO) allowed shorter spans.',
      atLeast(
        'angle-size',
        'Steel angle over an opening in veneer, by clear span and storeys above',
        { form: 'angle-table', caseBy: 'storeys above', rows: SINGLE_ANGLES },
        'table',
      ),
    ),
  }),
  ...byClause(IRC, 'mortar', {
    'Table R606.2.8': atMost(
      'sand-ratio',
      'Sand, in volumes to one of cement and lime together',
      SAND_MOST,
      'volumes',
    ),
  }),
];
