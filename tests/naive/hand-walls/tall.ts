import type { Unit, Wall } from '../../../lib/wall/model';
import { changed, type HandWall, hand, times, wallOf, wrong } from '../build';

const SOLDIERS = ['A2.2', 'A2.3', 'A2.4', 'A2.5', 'A2.6'];
const same = (ids: readonly string[], change: Partial<Unit>): Record<string, Partial<Unit>> =>
  Object.fromEntries(ids.map((id) => [id, change]));

/**
 * Five courses, 990 long. Five soldiers 70 wide stand in courses 2 to 4 from x = 200 to 590: from y = 80 up to 280, level with course 4.
 * In courses 3 and 4 nothing else is laid there. Course 5 lies over them at y = 290.
 */
function withSoldiers(change: Partial<Unit> = {}): Wall {
  const through = [190, -410, 190, 190];
  const wall = wallOf([times(5, 190), [190, ...times(5, 70), 190, 190], through, through, times(5, 190)]);
  return changed(wall, same(SOLDIERS, { kind: 'soldier', height: 200, ...change }));
}

/**
 * Three courses, 990 long, a quoin of 290 through all of them at the left end. Beside it, from x = 300, a half in courses 1 and 3 and a
 * whole in course 2.
 */
function withQuoin(lowHalf: number, highHalf: number): Wall {
  const wall = wallOf([
    [290, 90, 190, 190, 190],
    [-300, 190, 190, 190, 90],
    [-300, 90, 190, 190, 190],
  ]);
  return changed(wall, {
    'A1.1': { kind: 'quoin', height: 200 },
    'A1.2': { kind: 'bat', length: lowHalf },
    'A3.1': { kind: 'bat', length: highHalf },
  });
}

export const TALL_WALLS: readonly HandWall[] = [
  // 70 is less than the 90 of the smallest piece, but a soldier is a whole unit on end.
  hand('soldiers through three courses', 'canada', withSoldiers()),
  // The bed over them is measured from their tops: 290 − 275 and 290 − 274.875.
  hand('soldiers 5 short: the bed over them at the most', 'canada', withSoldiers({ height: 195 })),
  hand(
    'soldiers a step shorter: the bed over them too thick',
    'canada',
    withSoldiers({ height: 194.875 }),
    wrong('thick-joint', 15.125, 15, 'A5.2-bed A5.2 A5.3-bed A5.3'),
  ),
  // Beside it A2.3 and A2.5, under it A1.2 and A1.3, over it, three courses up, A5.2 and A5.3: all at 0.
  hand(
    'a soldier proud of those beside, under and over it',
    'canada',
    changed(withSoldiers(), { 'A2.4': { set: 3.125 } }),
    wrong('proud-unit', 3.125, 3, 'A2.4'),
  ),
  hand('halves beside a quoin that come again', 'canada', withQuoin(89.875, 89.875)),
  hand('halves beside a quoin that come again within 3', 'canada', withQuoin(89.875, 92.875)),
  hand(
    'a half beside a quoin that does not come again',
    'canada',
    withQuoin(89.875, 93),
    wrong('sliver-piece', 89.875, 90, 'A1.2'),
  ),
];
