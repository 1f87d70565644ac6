import type { Limit } from '../limit';
import { atLeast, atMost, exactly, under } from '../rows';
import { NHBC_2019, NHBC_2020, UK } from './standards';

const NHBC_2022 = { ...UK, source: 'nhbc-2022', edition: 'NHBC Standards 2022' } as const;
const GUIDE = {
  ...UK,
  source: 'nhbc-guide',
  edition: 'NHBC good craftsmanship guide',
  clause: 'brickwork and blockwork',
  howSure: 'second-hand',
} as const;
const EUROCODE = {
  ...UK,
  source: 'en-1996-2',
  edition: 'EN 1996-2:2006',
  clause: 'Table 3.1',
  howSure: 'memory',
  note: 'From memory: nobody has looked it up for this site. It decides nothing. A limit for strength, not for looks.',
} as const;

/** Shown on the limits page, asked for by no check yet. */
export const UNITED_KINGDOM_WALL: readonly Limit[] = [
  ...under(
    { ...NHBC_2019, topic: 'judging the face', kind: 'looks', clause: '9.1.2' },
    atLeast('viewing-distance', 'Finished brickwork is looked at from, in daylight', 10, 'm'),
    atMost('chip-size', 'Chips and marks on a facing brick, across', 15),
  ),
  ...under(
    {
      ...UK,
      topic: 'line',
      clause: 'gauge',
      source: 'glossary',
      edition: 'Trade glossary',
      howSure: 'second-hand',
    },
    exactly('gauge-design', 'Four courses with their beds, height to work to', 300),
  ),
  ...under(
    {
      ...UK,
      topic: 'height and thickness',
      clause: 'height',
      source: 'labc-laying',
      edition: 'LABC Warranty guide to laying bricks and blocks',
    },
    atMost('height-in-a-day', 'Masonry laid in one day, height', 1.5, 'm'),
  ),
  ...under(
    { ...NHBC_2020, topic: 'height and thickness', clause: '6.1.12' },
    atMost('leaf-difference', 'One leaf above the other beside a lintel while building', 225),
  ),
  ...under(
    { ...NHBC_2022, topic: 'bond', clause: '6.1.11' },
    atMost('partition-ties', 'Ties that bond a partition, vertical spacing', 300),
  ),
  ...under(
    {
      ...UK,
      topic: 'ties',
      clause: 'TG 6.1/32',
      source: 'nhbc-tg',
      edition: 'NHBC Technical Guidance 6.1/32, October 2018',
      howSure: 'second-hand',
    },
    atMost(
      'tie-pairs',
      'Ties in pairs where the courses of two leaves do not meet at an edge, vertical spacing',
      450,
    ),
  ),
  ...under(
    { ...GUIDE, topic: 'water' },
    atLeast('cavity-clear', 'Clear cavity as built', 50),
    atLeast('dpc-height', 'Damp-proof course above ground or paving', 150),
    atLeast('cavity-fill', 'Cavity fill stops below the damp-proof course by', 225),
  ),
  ...under(
    { ...GUIDE, topic: 'movement' },
    exactly('movement-joint', 'Movement joint in clay facing brick, width', 16),
    exactly('movement-spacing-usual', 'Movement joints in clay facing brick, usual spacing', 12, 'm'),
    atMost('movement-spacing', 'Movement joints in clay facing brick, spacing', 15, 'm', {
      note: 'Half for parapets; the first joint from a return at half the spacing.',
    }),
  ),
  ...under(
    { ...NHBC_2022, topic: 'weather', clause: '6.1.20', note: 'Until 2020 the figure was 2 °C.' },
    atLeast('laying-temperature', 'Air while laying, when it is getting colder', 3, '°C'),
    atLeast(
      'laying-temperature-rising',
      'Air while laying, when it is getting warmer and will pass 3 °C (37 °F)',
      1,
      '°C',
    ),
  ),
  ...under(
    { ...EUROCODE, topic: 'line' },
    atMost('structural-plumb', 'Out of plumb in one storey, for strength', 20),
    atMost('structural-plumb-total', 'Out of plumb over three storeys or more, for strength', 50),
  ),
];
