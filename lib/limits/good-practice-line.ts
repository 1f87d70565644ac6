import { inches } from '../units';
import type { Bound, Limit } from './limit';
import { OURS, PRACTICE } from './practice';
import { atMost, under } from './rows';

/** Level, plumb and line as a yardstick. */
const TMS = {
  ...PRACTICE,
  kind: 'standard tolerance',
  topic: 'line',
  source: 'tms-602',
  edition: 'TMS 602-13 and -16',
  clause: 'Article 3.3 F',
  howSure: 'second-hand',
  note: 'A yardstick only: these tolerances are for structural masonry and do not bind veneer (IBC 1404.6.1 says so).',
} as const;

const TEN_FEET = { run: inches(0, 10), value: inches(1 / 4) };
const TWENTY_FEET = { run: inches(0, 20), value: inches(3 / 8) };
const LEVEL: Bound = { form: 'any-run', runs: [TEN_FEET], overall: inches(1 / 2) };
const PLUMB: Bound = { form: 'any-run', runs: [TEN_FEET, TWENTY_FEET], overall: inches(1 / 2) };

export const GOOD_PRACTICE_LINE: readonly Limit[] = [
  ...under(
    TMS,
    atMost('course-level', 'Bed joint out of level along a wall', LEVEL),
    atMost('plumb', 'Face out of plumb', PLUMB),
    atMost('face-line', 'Face out of a true line', PLUMB),
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
    { ...OURS, topic: 'line' },
    atMost('gauge', 'Height of the courses against the gauge rod', 3, 'mm per 4 courses'),
    atMost('perpend-line', 'Head joints of one upright row, farthest left to farthest right', 10),
    atMost('unit-twist', 'Face of one unit, one end prouder than the other by', 3),
    atMost('unit-set', 'Face of one unit, prouder or deeper than its neighbours by', 3),
    atMost('corner-square', 'Return of a corner off square', 5, 'mm per m'),
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
