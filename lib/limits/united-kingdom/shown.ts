import type { Limit } from '../limit';
import { atLeast, atMost, byClause, exactly, noted } from '../rows';
import { LABC, LAYING, NHBC_2019, NHBC_2020, UK } from './standards';

const NHBC_2022 = { ...UK, source: 'nhbc-2022', edition: 'NHBC Standards 2022' } as const;

const GUIDE = {
  ...UK,
  source: 'nhbc-guide',
  edition: 'NHBC good craftsmanship guide',
  howSure: 'second-hand',
} as const;

const EUROCODE = {
  ...UK,
  source: 'en-1996-2',
  edition: 'EN 1996-2:2006',
  howSure: 'memory',
  note: 'From memory: nobody has looked it up for this site. It decides nothing. A limit for strength, not for looks.',
} as const;

/** What the two warranty bodies also say: on the limits page, in lessons and questions; no check asks for it. */
export const UNITED_KINGDOM_SHOWN: readonly Limit[] = [
  ...byClause(LAYING, 'joints', {
    joints: exactly('joint-design', 'Bed joints, thickness to work to', 10),
  }),
  ...byClause(NHBC_2019, 'line', {
    '9.1.2': atMost('reveal-line', 'External reveal out of line, in 1 m (3 ft 3 3/8 in)', 4, 'mm per m'),
  }),
  ...byClause(LABC, 'line', {
    'Chapter 1': noted(
      'The stricter figure of the NHBC is used here.',
      atMost('course-level-labc', 'Bed joint out of level along a wall, by the other warranty body', {
        form: 'pro-rata',
        run: 5000,
        value: 10,
        beyond: 15,
      }),
    ),
  }),
  ...byClause({ ...UK, source: 'nhbc-2020-frame', edition: 'NHBC Standards 2020' }, 'ties', {
    '6.2.14': atMost('tie-top', 'Highest ties, distance from the top of the wall, gables too', 225),
  }),
  ...byClause(NHBC_2020, 'ties', {
    '6.1.18, Table 10': noted(
      'For two leaves of masonry. The walls here stand before a frame, so it decides nothing.',
      atMost(
        'leaf-tie-spacing',
        'Ties between two masonry leaves, spacing up the wall and along it',
        { form: 'tie-rows', rows: [{ vertical: 450, horizontal: 900 }] },
        'table',
      ),
      atMost('leaf-tie-edge-distance', 'Ties between two masonry leaves, distance from an edge', 225),
      atMost('leaf-tie-edge-spacing', 'Ties between two masonry leaves, spacing up an edge', 300),
      atMost(
        'tie-gable-slope',
        'Ties between two masonry leaves at the top of a gable, along the slope',
        225,
      ),
      atMost('tie-gable-vertical', 'Ties between two masonry leaves at the top of a gable, up the wall', 300),
    ),
  }),
  ...byClause(
    { ...UK, source: 'labc-ties', edition: 'LABC Warranty note on wall ties', howSure: 'second-hand' },
    'ties',
    {
      'Guidance to Approved Document A, Table 5': noted(
        'The drawn spacing, 900 by 450 mm, makes 2.469: the rule and its own picture differ by 1.2 %.',
        atLeast('tie-density', 'Ties between two masonry leaves, to a square metre', 2.5, 'per m²'),
      ),
    },
  ),
  ...byClause({ ...NHBC_2019, kind: 'looks' }, 'judging the face', {
    '9.1.2': [
      atLeast('viewing-distance', 'Finished brickwork is looked at from, in daylight', 10, 'm'),
      atMost('chip-size', 'Chips and marks on a facing brick, across', 15),
    ],
  }),
  ...byClause({ ...UK, source: 'glossary', edition: 'Trade glossary', howSure: 'second-hand' }, 'line', {
    gauge: exactly('gauge-design', 'Four courses with their beds, height to work to', 300),
  }),
  ...byClause(
    { ...UK, source: 'labc-laying', edition: 'LABC Warranty guide to laying bricks and blocks' },
    'height and thickness',
    {
      height: atMost('height-in-a-day', 'Masonry laid in one day, height', 1.5, 'm'),
    },
  ),
  ...byClause(NHBC_2020, 'height and thickness', {
    '6.1.12': atMost('leaf-difference', 'One leaf above the other beside a lintel while building', 225),
  }),
  ...byClause(NHBC_2022, 'bond', {
    '6.1.11': atMost('partition-ties', 'Ties that bond a partition, vertical spacing', 300),
  }),
  ...byClause(
    {
      ...UK,
      source: 'nhbc-tg',
      edition: 'NHBC Technical Guidance 6.1/32, October 2018',
      howSure: 'second-hand',
    },
    'ties',
    {
      'TG 6.1/32': atMost(
        'tie-pairs',
        'Ties in pairs where the courses of two leaves do not meet at an edge, vertical spacing',
        450,
      ),
    },
  ),
  ...byClause(GUIDE, 'water', {
    'brickwork and blockwork': [
      atLeast('cavity-clear', 'Clear cavity as built', 50),
      atLeast('dpc-height', 'Damp-proof course above ground or paving', 150),
      atLeast('cavity-fill', 'Cavity fill stops below the damp-proof course by', 225),
    ],
  }),
  ...byClause(GUIDE, 'movement', {
    'brickwork and blockwork': [
      exactly('movement-joint', 'Movement joint in clay facing brick, width', 16),
      exactly('movement-spacing-usual', 'Movement joints in clay facing brick, usual spacing', 12, 'm'),
      ...noted(
        'Half for parapets; the first joint from a return at half the spacing.',
        atMost('movement-spacing', 'Movement joints in clay facing brick, spacing', 15, 'm'),
      ),
    ],
  }),
  ...byClause(NHBC_2022, 'weather', {
    '6.1.20': noted(
      'Until 2020 the figure was 2 °C.',
      atLeast('laying-temperature', 'Air while laying, when it is getting colder', 3, '°C'),
      atLeast(
        'laying-temperature-rising',
        'Air while laying, when it is getting warmer and will pass 3 °C (37 °F)',
        1,
        '°C',
      ),
    ),
  }),
  ...byClause(EUROCODE, 'line', {
    'Table 3.1': [
      atMost('structural-plumb', 'Out of plumb in one storey, for strength', 20),
      atMost('structural-plumb-total', 'Out of plumb over three storeys or more, for strength', 50),
    ],
  }),
];
