import { inches } from '../../units';
import type { Bound, Limit } from '../limit';
import { atMost, under } from '../rows';
import { LEVEL, OURS, TEN_FEET, TMS } from './practice';

const TWENTY_FEET = { run: inches(0, 20), value: inches(3 / 8) };
const PLUMB: Bound = { form: 'any-run', runs: [TEN_FEET, TWENTY_FEET], overall: inches(1 / 2) };

/** Level, plumb, line and gauge: what the checks ask for. */
export const LINE_DECIDING: readonly Limit[] = [
  ...under(
    TMS,
    atMost('course-level', 'Bed joint out of level along a wall', LEVEL),
    atMost('plumb', 'Face out of plumb', PLUMB),
    atMost('face-line', 'Face out of a true line', PLUMB),
  ),
  ...under(
    { ...OURS, topic: 'line' },
    atMost('gauge', 'Height of the courses against the gauge rod', 3, 'mm per 4 courses'),
    atMost('perpend-line', 'Head joints of one upright row, farthest left to farthest right', 10),
    atMost('unit-twist', 'Face of one unit, one end prouder than the other by', 3),
    atMost('unit-set', 'Face of one unit, prouder or deeper than its neighbours by', 3),
    atMost('corner-square', 'Return of a corner off square', 5, 'mm per m'),
  ),
];
