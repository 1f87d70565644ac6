import type { Limit } from '../limit';
import { atLeast, atMost, exactly, under } from '../rows';
import { LABC, LAYING, NHBC_2019, NHBC_2020, UK } from './standards';

const JOINTS: readonly Limit[] = [
  ...under(
    { ...LAYING, topic: 'joints', clause: 'joints' },
    exactly('joint-design', 'Bed joints, thickness to work to', 10),
  ),
];

const LINE: readonly Limit[] = [
  ...under(
    { ...NHBC_2019, topic: 'line', clause: '9.1.2' },
    atMost('reveal-line', 'External reveal out of line, in 1 m (3 ft 3 3/8 in)', 4, 'mm per m'),
  ),
  ...under(
    { ...LABC, topic: 'line', clause: 'Chapter 1' },
    atMost(
      'course-level-labc',
      'Bed joint out of level along a wall, by the other warranty body',
      { form: 'pro-rata', run: 5000, value: 10, beyond: 15 },
      'mm',
      { note: 'The stricter figure of the NHBC is used here.' },
    ),
  ),
];

const TIES: readonly Limit[] = [
  ...under(
    {
      ...UK,
      topic: 'ties',
      source: 'nhbc-2020-frame',
      edition: 'NHBC Standards 2020',
      clause: '6.2.14',
    },
    atMost('tie-top', 'Highest ties, distance from the top of the wall, gables too', 225),
  ),
  ...under(
    {
      ...NHBC_2020,
      topic: 'ties',
      clause: '6.1.18, Table 10',
      note: 'For two leaves of masonry. The walls here stand before a frame, so it decides nothing.',
    },
    atMost(
      'leaf-tie-spacing',
      'Ties between two masonry leaves, spacing up the wall and along it',
      { form: 'tie-rows', rows: [{ vertical: 450, horizontal: 900 }] },
      'table',
    ),
    atMost('leaf-tie-edge-distance', 'Ties between two masonry leaves, distance from an edge', 225),
    atMost('leaf-tie-edge-spacing', 'Ties between two masonry leaves, spacing up an edge', 300),
    atMost('tie-gable-slope', 'Ties between two masonry leaves at the top of a gable, along the slope', 225),
    atMost('tie-gable-vertical', 'Ties between two masonry leaves at the top of a gable, up the wall', 300),
  ),
  ...under(
    {
      ...UK,
      topic: 'ties',
      clause: 'Guidance to Approved Document A, Table 5',
      source: 'labc-ties',
      edition: 'LABC Warranty note on wall ties',
      howSure: 'second-hand',
    },
    atLeast('tie-density', 'Ties between two masonry leaves, to a square metre', 2.5, 'per m²', {
      note: 'The drawn spacing, 900 by 450 mm, makes 2.469: the rule and its own picture differ by 1.2 %.',
    }),
  ),
];

/** What the two warranty bodies also says: on the limits page, in lessons and questions; no check asks for it. */
export const UNITED_KINGDOM_SHOWN: readonly Limit[] = [...JOINTS, ...LINE, ...TIES];
