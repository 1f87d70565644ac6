import { inches } from '../../units';
import type { Bound, Limit } from '../limit';
import { atLeast, atMost, byClause, exactly, noted, PRESENT, shareOfDepth, stepped } from '../rows';
import {
  BEALL,
  BIA_28B,
  LEVEL,
  NEW_ZEALAND,
  OURS,
  PRACTICE,
  SECOND_HAND,
  TEN_FEET,
  TILE,
  TILE_ARTICLES,
  TMS,
} from './practice';

const THREE_ABOUT_TEN =
  'Given for veneer in Canada (CSA A371) and in New Zealand (NZS 4210), each by a trade body: 10 mm, and 3 mm either way.';

const TWENTY_FEET = { run: inches(0, 20), value: inches(3 / 8) };

const PLUMB: Bound = { form: 'any-run', runs: [TEN_FEET, TWENTY_FEET], overall: inches(1 / 2) };

const FROM_IRC = {
  ...PRACTICE,
  source: 'irc-2021',
  edition: 'IRC 2021',
  note: 'Borrowed from the IRC.',
} as const;

const FROM_NBC = {
  ...PRACTICE,
  source: 'nbc-2020',
  edition: 'NBC 2020',
  note: 'Borrowed from Canada.',
} as const;

/** 0.25 m² */
const TIE_AREA = 250_000;

/** Joints, backs, bond, support and openings: what the checks ask for. */
export const GOOD_PRACTICE_DECIDING: readonly Limit[] = [
  ...byClause({ ...SECOND_HAND, source: 'csa-a371', edition: 'CSA A371-14; NZS 4210:2001' }, 'joints', {
    'joint thickness': noted(
      THREE_ABOUT_TEN,
      atMost('bed-joint-most', 'Bed joint: greatest thickness', 13),
      atLeast('bed-joint-least', 'Bed joint: least thickness', 7),
      atMost('head-joint-most', 'Head joint: greatest width', 13),
      atLeast('head-joint-least', 'Head joint: least width', 7),
    ),
  }),
  ...byClause({ ...PRACTICE, source: 'irc-2021', edition: 'IRC 2021' }, 'joints', {
    'R606.3.1': noted(
      'Borrowed from the IRC.',
      atLeast('first-bed-least', 'First bed joint, on the foundation: least thickness', inches(1 / 4)),
    ),
  }),
  ...byClause(NEW_ZEALAND, 'joints', {
    'first bed': noted(
      'Borrowed from New Zealand, where it may take up what the slab is out.',
      atMost('first-bed-most', 'First bed joint, on the foundation: greatest thickness', 20),
    ),
  }),
  ...byClause(OURS, 'joints', {
    'training default': atMost('bed-taper', 'Bed under one unit, one end thicker than the other by', 4),
  }),
  ...byClause(BEALL, 'joints', {
    'page 157': noted(
      'Ends of units fully buttered. 95 % is our reading of full: as near as a probe can tell.',
      atLeast('head-fill', 'Head joint of solid units, share of its area that is filled', 95, '%'),
    ),
  }),
  ...byClause(TILE, 'back mortar', {
    '2.2.3': noted(
      'A rule for ceramic tile out of doors and in wet rooms, used for thin brick only because it is alike.',
      atLeast('back-contact', 'Back of an adhered unit, in contact with mortar', 95, '%'),
    ),
  }),
  ...byClause(TILE_ARTICLES, 'back mortar', {
    'best practice': noted(
      'Advice of one author for tile, not part of the standard: no bare place over 2 square inches.',
      atMost('back-void', 'Largest bare place on the back of an adhered unit', 1290, 'mm²'),
    ),
  }),
  ...byClause(
    { ...SECOND_HAND, source: 'round-openings', edition: 'Masonry Construction magazine' },
    'bond',
    {
      'cut pieces': noted(
        'A piece shorter than the unit is wide holds badly. New Zealand asks for the larger of that and a quarter of the length. Closers set out at ends and reveals are not meant. A piece cut to a slope is measured halfway up (common practice).',
        atLeast('smallest-piece', 'Shortest piece in a wall, against its depth', shareOfDepth(1)),
      ),
    },
  ),
  ...byClause({ ...PRACTICE, source: 'nbc-2020', edition: 'NBC 2020' }, 'support', {
    '9.20.8.5': noted(
      'Borrowed from Canada; in the United States two thirds must bear, which comes to the same.',
      atMost(
        'overhang-share',
        'Face of the veneer past the edge of its support, by its thickness',
        shareOfDepth(1 / 3),
      ),
    ),
    '9.20.5.1.(1)': noted(
      'Borrowed from Canada.',
      atLeast(
        'supported-share',
        'Length of the first course that stands on masonry, concrete or steel',
        100,
        '%',
      ),
    ),
  }),
  ...byClause({ ...PRACTICE, source: 'irc-2021', edition: 'IRC 2021' }, 'openings', {
    'R703.8.3': noted(
      'Borrowed from the IRC.',
      exactly('lintel-present', 'Lintel over an opening in the veneer', PRESENT, 'there or not'),
      atLeast('lintel-bearing', 'Lintel, bearing at each end', inches(4)),
    ),
  }),
  ...byClause(BEALL, 'openings', {
    'page 258': [
      atLeast('angle-thickness', 'Steel angle over an opening, thickness', inches(1 / 4)),
      ...noted(
        'Others ask for 3 1/2 in.',
        atLeast('angle-leg', 'Steel angle under a 4 in wythe, leg it stands on', inches(3)),
      ),
    ],
  }),
  ...byClause(TMS, 'line', {
    'Article 3.3 F': [
      atMost('course-level', 'Bed joint out of level along a wall', LEVEL),
      atMost('plumb', 'Face out of plumb', PLUMB),
      atMost('face-line', 'Face out of a true line', PLUMB),
    ],
  }),
  ...byClause(OURS, 'line', {
    'training default': [
      atMost('gauge', 'Height of the courses against the gauge rod', 3, 'mm per 4 courses'),
      atMost('perpend-line', 'Head joints of one upright row, farthest left to farthest right', 10),
      atMost('unit-twist', 'Face of one unit, one end prouder than the other by', 3),
      atMost('unit-set', 'Face of one unit, prouder or deeper than its neighbours by', 3),
      atMost('corner-square', 'Return of a corner off square', 5, 'mm per m'),
    ],
  }),
  ...byClause(BIA_28B, 'ties', {
    'summary of recommendations': noted(
      'The note prints one tie to 2 2/3 ft², 0.25 m²: the rounded metric figure is used.',
      atMost(
        'tie-spacing',
        'Ties of veneer, spacing up the wall and across it, and wall area of each',
        { form: 'tie-area', vertical: inches(18), horizontal: inches(32), area: TIE_AREA },
        'table',
      ),
    ),
  }),
  ...byClause(FROM_IRC, 'ties', {
    'R703.8.4.1.1': [
      atMost('tie-edge-distance', 'Ties at openings and free ends, distance from the edge', inches(12)),
      atMost('tie-edge-spacing', 'Ties at openings and free ends, spacing up the edge', inches(36)),
      atMost('tie-opening', 'Opening that needs no ties round it, either way', inches(16)),
    ],
    'R703.8.4': [
      atLeast('tie-embedment', 'Tie, length in the mortar of the veneer', inches(1.5)),
      atLeast('tie-cover', 'Tie, mortar between its end and the face', inches(5 / 8)),
    ],
  }),
  ...byClause(FROM_NBC, 'ties', {
    '9.20.9.5.(1)': [
      ...noted(
        'Borrowed from Canada; the IRC asks for the same (No. 22 gage), BIA for No. 20, about 0.9 mm.',
        atLeast('tie-thickness', 'Corrugated strap tie, thickness', 0.76),
      ),
      atLeast('tie-width', 'Corrugated strap tie, width', 22),
    ],
  }),
  ...byClause(BIA_28B, 'water', {
    'summary of recommendations': [
      atMost('weep-spacing', 'Weep holes that are open head joints, spacing', inches(24)),
      atLeast('flashing-upstand', 'Flashing up the backing', inches(8)),
      atLeast('end-dam', 'End dam of flashing, turned up into the head joint', inches(1)),
    ],
  }),
  ...byClause(FROM_IRC, 'water', {
    'R703.8.5': exactly(
      'flashing-present',
      'Flashing under the first course above ground and at every support',
      PRESENT,
      'there or not',
    ),
    'R703.8.6': atLeast('weep-size', 'Weep hole, smallest way through', inches(3 / 16)),
  }),
  ...byClause(FROM_NBC, 'water', {
    '9.20.13.6': noted(
      'Borrowed from Canada. BIA says that it never stops behind the face of the brick.',
      atLeast('flashing-past-face', 'Flashing under weep holes, past the face of what is below', 5),
    ),
  }),
  ...byClause(FROM_NBC, 'mortar', {
    '9.20.3.2.(5)': noted(
      'Borrowed from Canada: an hour and a half when the air is at 25 °C or over, two and a half below that.',
      atMost(
        'mortar-life',
        'Mortar, from mixing to its final place',
        stepped('air temperature', [
          [24.999, 150],
          [Number.POSITIVE_INFINITY, 90],
        ]),
        'minutes',
      ),
    ),
  }),
  ...byClause({ ...PRACTICE, source: 'irc-2021', edition: 'IRC 2021' }, 'mortar', {
    'Table R606.2.8': noted(
      'Borrowed from the IRC, which prints the table of ASTM C270.',
      atMost('sand-ratio', 'Sand, in volumes to one of cement and lime together', 3, 'volumes'),
    ),
  }),
];
