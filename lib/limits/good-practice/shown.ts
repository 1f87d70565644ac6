import { inches } from '../../units';
import type { Limit } from '../limit';
import { atLeast, atMost, byClause, exactly, noted } from '../rows';
import {
  BEALL,
  BIA_28B,
  LEVEL,
  NEW_ZEALAND,
  PRACTICE,
  SECOND_HAND,
  TILE,
  TILE_ARTICLES,
  TMS,
} from './practice';

const BIA_18A = {
  ...PRACTICE,
  source: 'bia-18a',
  edition: 'BIA Technical Note 18A, 2019',
} as const;

const AUSTRALIA = {
  ...PRACTICE,
  kind: 'code minimum',
  source: 'abcb-2022',
  edition: 'ABCB Housing Provisions, NCC 2022',
  note: 'An Australian rule, shown to compare. No check uses it.',
} as const;

const METRE = 1000;

const metres = (feet: number) => inches(0, feet) / METRE;

/** What trade bodies also say: on the limits page, in lessons and questions; no check asks for it. */
export const GOOD_PRACTICE_SHOWN: readonly Limit[] = [
  ...byClause(TILE, 'back mortar', {
    '2.2.3': noted(
      'A rule for ceramic tile out of doors and in wet rooms, used for thin brick only because it is alike.',
      atLeast('back-contact-dry', 'Back of a tile in a dry room, in contact with mortar', 80, '%'),
      atLeast('back-contact-sample', 'Units lifted to judge contact', 3, 'units'),
    ),
  }),
  ...byClause(
    { ...PRACTICE, source: 'thin-brick-articles', edition: 'The Construction Specifier' },
    'back mortar',
    {
      'parts 2 and 5': noted(
        'If one of the three fails, three more are lifted. If one of those fails, all are laid again.',
        atMost('back-contact-lot', 'Thin units set for every sample of three that is lifted', 150, 'units'),
      ),
    },
  ),
  ...byClause(TILE_ARTICLES, 'back mortar', {
    'best practice': noted(
      'Advice of one author for tile, not part of the standard: no bare place over 2 square inches.',
      atLeast('void-from-edge', 'Bare place on the back, distance from edges and corners', inches(2)),
    ),
  }),
  ...byClause(TILE, 'back mortar', {
    '2.2.2': atLeast(
      'back-mortar-thickness',
      'Mortar behind a tile after it is pressed in, thickness',
      inches(3 / 32),
    ),
  }),
  ...byClause(BEALL, 'openings', {
    'page 258': noted(
      'And no more than 0.3 in (7.6 mm).',
      atLeast('lintel-stiffness', 'Lintel under masonry: span over its deflection', 600, 'times'),
    ),
  }),
  ...byClause(TMS, 'line', {
    'Article 3.3 F': [
      atMost('top-level', 'Top of a bearing wall out of level', LEVEL),
      atMost('column-plumb-bearing', 'Bearing column, top from bottom', inches(1 / 2)),
      atMost('column-plumb', 'Column that bears nothing, top from bottom', inches(3 / 4)),
    ],
  }),
  ...byClause(TMS, 'joints', {
    'Article 3.3 F': [
      atMost('structural-bed', 'Bed joint of structural masonry, from its design thickness', inches(1 / 8)),
      atMost(
        'structural-head-over',
        'Head joint of structural masonry, wider than designed by',
        inches(3 / 8),
      ),
      atMost(
        'structural-head-under',
        'Head joint of structural masonry, narrower than designed by',
        inches(1 / 4),
      ),
      atMost('structural-first-bed', 'First bed on concrete, fully grouted masonry: thickness', inches(1.25)),
    ],
  }),
  ...byClause({ ...PRACTICE, source: 'bia-28c', edition: 'BIA Technical Note 28C, April 2014' }, 'line', {
    summary: noted(
      'The wall behind, before thin brick is stuck to it. A brick maker asks for 1/4 in in 8 ft.',
      atMost('substrate-plane', 'Surface for thin brick out of plane, in 10 ft', inches(1 / 4)),
    ),
  }),
  // Ties and mortar.
  ...byClause({ ...SECOND_HAND, source: 'bia-28-1980', edition: 'BIA Technical Note 28, 1980' }, 'ties', {
    ties: [
      atLeast('tie-embedment-1980', 'Tie, length in the veneer, as taught in 1980', inches(2)),
      atMost('tie-nail-to-bend', 'Strap tie, from its nail to the bend', inches(5 / 8)),
    ],
  }),
  ...byClause({ ...PRACTICE, source: 'csa-a370', edition: 'CSA A370-14', howSure: 'memory' }, 'ties', {
    'tie spacing': noted(
      'From memory: nobody has looked it up for this site. It decides nothing. Engineered work in Canada.',
      atMost('engineered-tie-vertical', 'Ties of engineered work, vertical spacing', 600),
      atMost('engineered-tie-horizontal', 'Ties of engineered work, horizontal spacing', 800),
    ),
  }),
  ...byClause({ ...PRACTICE, source: 'bia-8', edition: 'BIA Technical Note 8, March 2020' }, 'mortar', {
    summary: noted(
      'Carbon black: 2 %.',
      atMost('pigment', 'Pigment of metal oxide, of the weight of the cement', 10, '%'),
    ),
  }),
  ...byClause(NEW_ZEALAND, 'mortar', {
    '2.2': atLeast('veneer-mortar-strength', 'Mortar of veneer in New Zealand, strength', 12.5, 'MPa'),
  }),
  ...byClause(BIA_28B, 'height and thickness', {
    'summary of recommendations': noted(
      '38 ft (11.6 m) at a gable.',
      atMost('veneer-height', 'Veneer on its foundation, height to the plate', metres(30), 'm'),
    ),
  }),
  ...byClause(BIA_28B, 'water', {
    'summary of recommendations': [
      atLeast('air-space-wished', 'Air space behind veneer, recommended', inches(2)),
      atLeast('air-space', 'Air space behind veneer', inches(1)),
      atMost('veneer-to-frame', 'Veneer to frame', inches(4.5)),
      atLeast('flashing-lap', 'Flashing under the water barrier, lap', inches(4)),
      atLeast('base-flashing-height', 'Base flashing above the ground', inches(6)),
      atMost('weep-spacing-wick', 'Weep holes with wicks or tubes, spacing', inches(16)),
    ],
  }),
  ...byClause(BIA_18A, 'movement', {
    summary: [
      atMost('movement-plain', 'Movement joints in brickwork without openings, spacing', metres(25), 'm'),
      atMost(
        'movement-openings',
        'Movement joints in brickwork with many openings, spacing',
        metres(20),
        'm',
      ),
      atLeast('under-shelf-angle', 'Open space under a shelf angle', inches(1 / 4)),
    ],
  }),
  ...byClause(BEALL, 'openings', {
    'pages 258 to 264': [
      atMost('minor-arch', 'Minor arch, span', metres(6), 'm'),
      atLeast('arch-props', 'Centering under an arch stays for', 7, 'days'),
      atLeast('arch-joint', 'Joint of an arch at its narrow end', inches(1 / 4)),
    ],
  }),
  ...byClause({ ...PRACTICE, source: 'bia-31b', edition: 'BIA Technical Note 31B, May 1987' }, 'openings', {
    'first page': atMost(
      'loose-angle-span',
      'Loose steel angle without side support, usual span',
      metres(8),
      'm',
    ),
  }),
  ...byClause(
    { ...SECOND_HAND, source: 'concrete-lintels', edition: 'Masonry Construction magazine' },
    'openings',
    {
      'rule of thumb': noted(
        'And 1 in for each foot of span.',
        atLeast('concrete-lintel-bearing', 'Concrete masonry lintel, bearing at each end', inches(6)),
      ),
    },
  ),
  ...byClause(NEW_ZEALAND, 'bond', {
    '1.3': [
      atLeast('lap-least', 'Running bond: least lap over the unit below, of its length', 25, '%'),
      atMost('lap-most', 'Running bond: greatest lap over the unit below, of its length', 75, '%'),
    ],
  }),
  ...byClause(
    { ...NEW_ZEALAND, kind: 'looks', source: 'bbfnz', edition: 'BBFNZ best practice guide' },
    'judging the face',
    {
      preface: atLeast('viewing-distance', 'Finished brickwork is looked at from, in soft light', 6.1, 'm'),
    },
  ),
  ...byClause({ ...SECOND_HAND, source: 'bre-cracks', edition: 'Bands of BRE Digest 251' }, 'movement', {
    'bands 0 to 2': noted(
      'No width is a pass. That an engineer sees what is wider is common practice. One that grows or steps out goes to an engineer however fine it is.',
      exactly(
        'crack-width',
        'Crack that does not grow and has no step: the bands speak of filling and pointing up to a width of',
        5,
      ),
    ),
  }),
  ...byClause(
    {
      ...PRACTICE,
      kind: 'looks',
      source: 'saskatchewan-2014',
      edition: 'New Home Warranty Program of Saskatchewan, 2014',
    },
    'judging the face',
    {
      '4.15 to 4.20': noted(
        'What a Canadian new home warranty accepts.',
        atLeast('warranty-distance', 'Finished brickwork is looked at from, in daylight', 6, 'm'),
        atMost('warranty-bed-line', 'Bed joint out of its line', 12),
      ),
    },
  ),
  ...byClause(AUSTRALIA, 'support', {
    'Part 5.7, (4)': atMost('australia-overhang', 'Australia: outer leaf past the edge of the slab', 15),
  }),
  ...byClause(AUSTRALIA, 'water', {
    'Part 5.7, (1)': [
      atLeast('australia-cavity-least', 'Australia: clear cavity behind veneer: least width', 25),
      atMost('australia-cavity-most', 'Australia: clear cavity behind veneer: greatest width', 75),
    ],
  }),
  ...byClause(AUSTRALIA, 'ties', {
    'Part 5.6': [
      atLeast('australia-embedment', 'Australia: tie, length in each leaf', 50),
      atMost('australia-joint-ties', 'Australia: ties beside a movement joint, distance from it', 300),
    ],
  }),
];
