import type { Flashing } from '../../../lib/wall/flashing';
import type { Wall } from '../../../lib/wall/model';
import type { HeadId } from '../../../lib/wall/part-id';
import { BRICK, changed, type HandWall, hand, wallOf, wrong } from '../build';

const rules = 'good-practice';
/** Two units in one course; the joint between them is `width`. */
const pair = (width: number) => changed(wallOf([[190, 190]]), { 'A1.2': { x: 190 + width } });
const joint = 'A1.1/2 A1.1 A1.2';

const STACKED = wallOf([
  [190, 190],
  [190, 190],
]);
const flashing = (fromX: number, toX: number, y = 0): Flashing => ({ panel: 'A', y, fromX, toX });
const filled = (id: HeadId, share: number, flashings: readonly Flashing[] = []): Wall => ({
  ...STACKED,
  heads: [{ joint: id, filled: share }],
  flashings,
});

const raked = (depth: number, recess: number, profile: 'raked' | 'concave' = 'raked') =>
  wallOf([[190, 190]], { family: { ...BRICK, depth } }, { profile, recess });

export const HEAD_WALLS: readonly HandWall[] = [
  hand('head at the most', rules, pair(13)),
  hand('head a step above', rules, pair(13.125), wrong('thick-joint', 13.125, 13, joint)),
  hand('head a step below the most', rules, pair(12.875)),
  hand('head at the least', rules, pair(7)),
  hand('head a step below', rules, pair(6.875), wrong('thin-joint', 6.875, 7, joint)),
  hand('head a step above the least', rules, pair(7.125)),
  hand('head at the most, Canada', 'canada', pair(15)),
  hand('head a step above, Canada', 'canada', pair(15.125), wrong('thick-joint', 15.125, 15, joint)),
  hand('head a step below, Canada', 'canada', pair(4.875), wrong('thin-joint', 4.875, 5, joint)),
  hand('head at the least, United Kingdom', 'united-kingdom', pair(7)),
  hand(
    'head a step below, United Kingdom',
    'united-kingdom',
    pair(6.875),
    wrong('thin-joint', 6.875, 7, joint),
  ),
  // Half a unit is 95: at 95 the gap is an opening, a step below it is a very bad joint.
  hand('gap of half a unit is no joint', rules, pair(95)),
  hand('gap a step below half a unit is one', rules, pair(94.875), wrong('thick-joint', 94.875, 13, joint)),
  // Two joints in one course are two findings.
  hand(
    'two thick heads side by side',
    rules,
    changed(wallOf([[190, 190, 190]]), { 'A1.2': { x: 204 }, 'A1.3': { x: 409 } }),
    wrong('thick-joint', 14, 13, joint),
    wrong('thick-joint', 15, 13, 'A1.2/3 A1.2 A1.3'),
  ),

  hand('head filled at the least', rules, filled('A1.1/2', 95)),
  hand('head filled a step above', rules, filled('A1.1/2', 96)),
  hand('head filled a step below', rules, filled('A1.1/2', 94), wrong('open-head', 94, 95, joint)),
  hand('open head', rules, filled('A1.1/2', 0), wrong('open-head', 0, 95, joint)),
  // Course 1 lies 10 above the flashing, less than half a gauge (35).
  hand('weep', rules, filled('A1.1/2', 0, [flashing(0, 390)])),
  // Course 2 lies 80 above it.
  hand(
    'open head above the weeps',
    rules,
    filled('A2.1/2', 0, [flashing(0, 390)]),
    wrong('open-head', 0, 95, 'A2.1/2 A2.1 A2.2'),
  ),
  // The joint runs from 190 to 200; the flashing ends before it.
  hand(
    'open head beside the flashing',
    rules,
    filled('A1.1/2', 0, [flashing(0, 180)]),
    wrong('open-head', 0, 95, joint),
  ),
  // Ends belong: a flashing as long as the joint is wide.
  hand('weep over a flashing that just reaches', rules, filled('A1.1/2', 0, [flashing(190, 200)])),
  // Rise 80 − 80 = 0 still counts; 80 − 45 = 35 is half a gauge and does not; 80 − 81 is below the flashing.
  hand('weep right on the flashing', rules, filled('A2.1/2', 0, [flashing(0, 390, 80)])),
  hand(
    'open head half a gauge above a flashing',
    rules,
    filled('A2.1/2', 0, [flashing(0, 390, 45)]),
    wrong('open-head', 0, 95, 'A2.1/2 A2.1 A2.2'),
  ),
  hand(
    'open head under a flashing',
    rules,
    filled('A2.1/2', 0, [flashing(0, 390, 81)]),
    wrong('open-head', 0, 95, 'A2.1/2 A2.1 A2.2'),
  ),

  // Under 90 mm nothing may be raked out; from 90 mm there is no bound.
  hand('raked at 90 mm', 'canada', raked(90, 6)),
  hand('raked a step under 90 mm', 'canada', raked(89.875, 6), wrong('raked-thin-veneer', 6, 0, 'A')),
  hand('raked at 75 mm', 'canada', raked(75, 0.125), wrong('raked-thin-veneer', 0.125, 0, 'A')),
  hand('raked by nothing', 'canada', raked(75, 0)),
  hand('not raked', 'canada', raked(75, 0, 'concave')),
  hand(
    'called concave, and 6 back',
    'canada',
    raked(75, 6, 'concave'),
    wrong('raked-thin-veneer', 6, 0, 'A'),
  ),
];
