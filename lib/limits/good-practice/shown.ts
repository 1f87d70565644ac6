import { inches } from '../../units';
import type { Limit } from '../limit';
import { atLeast, atMost, under } from '../rows';
import { LEVEL, PRACTICE, TMS } from './practice';

const BACKS: readonly Limit[] = [
  ...under(
    {
      ...PRACTICE,
      topic: 'back mortar',
      source: 'ansi-a108-5',
      edition: 'ANSI A108.5',
      clause: '2.2.3',
      howSure: 'second-hand',
      note: 'A rule for ceramic tile out of doors and in wet rooms, used for thin brick only because it is alike.',
    },
    atLeast('back-contact-dry', 'Back of a tile in a dry room, in contact with mortar', 80, '%'),
    atLeast('back-contact-sample', 'Units lifted to judge contact', 3, 'units'),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'back mortar',
      source: 'thin-brick-articles',
      edition: 'The Construction Specifier',
      clause: 'parts 2 and 5',
      note: 'If one of the three fails, three more are lifted. If one of those fails, all are laid again.',
    },
    atMost('back-contact-lot', 'Thin units set for every sample of three that is lifted', 150, 'units'),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'back mortar',
      source: 'ansi-a108-articles',
      edition: 'Articles on ANSI A108.5',
      clause: 'best practice',
      howSure: 'second-hand',
      note: 'Advice of one author for tile, not part of the standard: no bare place over 2 square inches.',
    },
    atLeast('void-from-edge', 'Bare place on the back, distance from edges and corners', inches(2)),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'back mortar',
      source: 'ansi-a108-5',
      edition: 'ANSI A108.5',
      clause: '2.2.2',
      howSure: 'second-hand',
    },
    atLeast(
      'back-mortar-thickness',
      'Mortar behind a tile after it is pressed in, thickness',
      inches(3 / 32),
    ),
  ),
];

const OPENINGS: readonly Limit[] = [
  ...under(
    {
      ...PRACTICE,
      topic: 'openings',
      source: 'beall-2004',
      edition: 'Beall, Masonry and Concrete',
      clause: 'page 258',
      howSure: 'second-hand',
    },
    atLeast('lintel-stiffness', 'Lintel under masonry: span over its deflection', 600, 'times', {
      note: 'And no more than 0.3 in (7.6 mm).',
    }),
  ),
];

const LINE: readonly Limit[] = [
  ...under(
    TMS,
    atMost('top-level', 'Top of a bearing wall out of level', LEVEL),
    atMost('column-plumb-bearing', 'Bearing column, top from bottom', inches(1 / 2)),
    atMost('column-plumb', 'Column that bears nothing, top from bottom', inches(3 / 4)),
  ),
  ...under(
    { ...TMS, topic: 'joints' },
    atMost('structural-bed', 'Bed joint of structural masonry, from its design thickness', inches(1 / 8)),
    atMost('structural-head-over', 'Head joint of structural masonry, wider than designed by', inches(3 / 8)),
    atMost(
      'structural-head-under',
      'Head joint of structural masonry, narrower than designed by',
      inches(1 / 4),
    ),
    atMost('structural-first-bed', 'First bed on concrete, fully grouted masonry: thickness', inches(1.25)),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'line',
      source: 'bia-28c',
      edition: 'BIA Technical Note 28C, April 2014',
      clause: 'summary',
      note: 'The wall behind, before thin brick is stuck to it. A brick maker asks for 1/4 in in 8 ft.',
    },
    atMost('substrate-plane', 'Surface for thin brick out of plane, in 10 ft', inches(1 / 4)),
  ),
];

/** Ties and mortar. */
const TIES: readonly Limit[] = [
  ...under(
    {
      ...PRACTICE,
      topic: 'ties',
      source: 'bia-28-1980',
      edition: 'BIA Technical Note 28, 1980',
      clause: 'ties',
      howSure: 'second-hand',
    },
    atLeast('tie-embedment-1980', 'Tie, length in the veneer, as taught in 1980', inches(2)),
    atMost('tie-nail-to-bend', 'Strap tie, from its nail to the bend', inches(5 / 8)),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'ties',
      source: 'csa-a370',
      edition: 'CSA A370-14',
      clause: 'tie spacing',
      howSure: 'memory',
      note: 'From memory: nobody has looked it up for this site. It decides nothing. Engineered work in Canada.',
    },
    atMost('engineered-tie-vertical', 'Ties of engineered work, vertical spacing', 600),
    atMost('engineered-tie-horizontal', 'Ties of engineered work, horizontal spacing', 800),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'mortar',
      source: 'bia-8',
      edition: 'BIA Technical Note 8, March 2020',
      clause: 'summary',
    },
    atMost('pigment', 'Pigment of metal oxide, of the weight of the cement', 10, '%', {
      note: 'Carbon black: 2 %.',
    }),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'mortar',
      source: 'nzs-4210',
      edition: 'NZS 4210:2001',
      clause: '2.2',
      howSure: 'second-hand',
    },
    atLeast('veneer-mortar-strength', 'Mortar of veneer in New Zealand, strength', 12.5, 'MPa'),
  ),
];

/** What trade bodies also say: on the limits page, in lessons and questions; no check asks for it. */
export const GOOD_PRACTICE_SHOWN: readonly Limit[] = [...BACKS, ...OPENINGS, ...LINE, ...TIES];
