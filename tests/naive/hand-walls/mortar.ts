import type { Batch } from '../../../lib/wall/model';
import { type HandWall, hand, wallOf, wrong } from '../build';

const SOUND: Batch = {
  id: 'batch-1',
  fromCourse: 2,
  toCourse: 3,
  portland: 1,
  lime: 1,
  sand: 6,
  air: 20,
  minutes: 60,
};
const laidWith = (change: Partial<Batch>) =>
  wallOf([[190], [190], [190], [190]], { batches: [{ ...SOUND, ...change }] });
const PARTS = 'batch-1 A2 A3';

export const MORTAR_WALLS: readonly HandWall[] = [
  // Under 25 °C 2 1/2 h, from 25 °C 1 1/2 h.
  hand('mortar at its age in mild air', 'canada', laidWith({ minutes: 150, air: 24 })),
  hand(
    'mortar a minute too old',
    'canada',
    laidWith({ minutes: 151, air: 24 }),
    wrong('stale-mortar', 151, 150, PARTS),
  ),
  hand('mortar a minute younger', 'canada', laidWith({ minutes: 149, air: 24 })),
  hand('mortar at its age in hot air', 'canada', laidWith({ minutes: 90, air: 25 })),
  hand(
    'mortar a minute too old in hot air',
    'canada',
    laidWith({ minutes: 91, air: 25 }),
    wrong('stale-mortar', 91, 90, PARTS),
  ),
  // ASTM C270 has one life, 2 1/2 h, for any air.
  hand('mortar at its age in hot air, United States', 'united-states', laidWith({ minutes: 150, air: 35 })),
  hand(
    'mortar a minute too old in hot air, United States',
    'united-states',
    laidWith({ minutes: 151, air: 35 }),
    wrong('stale-mortar', 151, 150, PARTS),
  ),
  // 6 of sand to 1 and 1: 3.
  hand('sand at the most', 'united-states', laidWith({})),
  // 6.125 / 2.
  hand(
    'sand a step above',
    'united-states',
    laidWith({ sand: 6.125 }),
    wrong('lean-mortar', 3.0625, 3, PARTS),
  ),
  hand('sand a step below', 'united-states', laidWith({ sand: 5.875 })),
  // Without lime: 4 / 1.
  hand('sand without lime', 'canada', laidWith({ lime: 0, sand: 4 }), wrong('lean-mortar', 4, 3, PARTS)),
  // 4.5 / 1.5 = 3.
  hand('half a volume of lime', 'canada', laidWith({ lime: 0.5, sand: 4.5 })),
  // Both at once are two findings.
  hand(
    'old and lean',
    'canada',
    laidWith({ sand: 8, minutes: 200 }),
    wrong('stale-mortar', 200, 150, PARTS),
    wrong('lean-mortar', 4, 3, PARTS),
  ),
  // Beyond the top course there is nothing laid.
  hand(
    'batch that outlasts the wall',
    'canada',
    laidWith({ fromCourse: 4, toCourse: 6, minutes: 151 }),
    wrong('stale-mortar', 151, 150, 'batch-1 A4'),
  ),
];
