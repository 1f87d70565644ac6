import type { Droppings, Flashing, FlashingShape } from '../../../lib/wall/flashing';
import type { Wall } from '../../../lib/wall/model';
import type { HeadId } from '../../../lib/wall/part-id';
import { type HandWall, hand, ledge, times, wallOf, wrong } from '../build';
import { openingWall } from '../build-opening';

const rules = 'good-practice';
const SOUND: FlashingShape = { up: 210, front: 8, leftDam: 30, rightDam: 30 };
const sheet = (fromX: number, toX: number, change: Partial<FlashingShape> = {}, y = 0): Flashing => ({
  panel: 'A',
  y,
  fromX,
  toX,
  shape: { ...SOUND, ...change },
});
const heap = (height: number, fromX: number, toX: number): Droppings => ({
  panel: 'A',
  y: 0,
  height,
  fromX,
  toX,
});

/**
 * Two courses of bricks on a ledge with a flashing; the joint after the n-th brick of course 1 has its middle at 200 n − 5. Ends that meet
 * nothing, ties left out: slips, so that nothing but water is asked.
 */
function drained(
  bricks: number,
  weeps: readonly number[],
  change: Partial<Wall> = {},
  shape: Partial<FlashingShape> = {},
): Wall {
  const row = times(bricks, 190);
  return wallOf([row, row], {
    heads: weeps.map((at) => ({ joint: `A1.${at}/${at + 1}` as HeadId, filled: 0 })),
    flashings: [sheet(0, 200 * bricks - 10, shape)],
    droppings: [],
    ...change,
  });
}

/** The joints of course 1 after these bricks. */
const joints = (...after: readonly number[]) => after.map((at) => `A1.${at}/${at + 1}`).join(' ');

/** Over the opening of `openingWall(2, 150)`: x 790..1,600, head at 800, lintel 640..1,750, joints of course 5 at 395 + 400 n. */
function overOpening(shape: Partial<FlashingShape>, change: Partial<Wall> = {}): Wall {
  const wall = openingWall(2, 150, { front: -5 });
  return {
    ...wall,
    heads: [
      { joint: 'A1.1/2', filled: 0 },
      { joint: 'A1.3/4', filled: 0 },
      { joint: 'A1.5/6', filled: 0 },
      { joint: 'A5.3/4', filled: 0 },
    ],
    flashings: [sheet(0, 2390), sheet(395, 1995, shape, 800)],
    droppings: [],
    ...change,
  };
}

export const WATER_WALLS: readonly HandWall[] = [
  // 595 from the end to the third joint, 600 on to the sixth, 595 to the other end, where 609.6 may be.
  hand('weeps three bricks apart', rules, drained(9, [3, 6])),
  // 0 to 595, then 595 to 1,790: 1,195.
  hand(
    'one weep left out',
    rules,
    drained(9, [3]),
    wrong('weeps-too-far-apart', 1195, 609.6, joints(4, 5, 6, 7, 8)),
  ),
  // No weep: 790 from end to end, 800 allowed in Canada.
  hand('no weep on a short stretch', 'canada', drained(4, [])),
  hand(
    'no weep at all',
    'canada',
    drained(5, []),
    wrong('weeps-too-far-apart', 990, 800, joints(1, 2, 3, 4)),
  ),
  hand(
    'no weep, United States',
    'united-states',
    drained(5, []),
    wrong('weeps-too-far-apart', 990, 838.2, joints(1, 2, 3, 4)),
  ),
  hand(
    'no weep, United Kingdom',
    'united-kingdom',
    drained(5, []),
    wrong('weeps-too-far-apart', 990, 900, joints(1, 2, 3, 4)),
  ),
  // An opening of 400 in course 1 parts the run: 390 and 590 long.
  hand('an opening parts the run', 'canada', {
    ...wallOf([[190, 190, -400, 190, 190, 190]], { flashings: [sheet(0, 1380)], droppings: [] }),
  }),
  // The flashing ends at 700: no further is asked.
  hand(
    'no weep past the flashing',
    'canada',
    drained(9, [], { flashings: [{ ...sheet(0, 700), shape: { ...SOUND } }] }),
  ),
  // A wall of an earlier engine tells nothing of droppings.
  hand(
    'a wall that does not tell how it drains',
    'canada',
    (({ droppings: _, ...told }) => told)(drained(9, [], {}, { up: 0 })),
  ),

  // Course 1 lies from 10 to 70. A heap of 65 leaves 5 of the weep at 595; 4.7625 is asked.
  hand('a heap that leaves enough', rules, drained(9, [3, 6], { droppings: [heap(65, 500, 700)] })),
  hand(
    'a heap a step too high',
    rules,
    drained(9, [3, 6], { droppings: [heap(65.25, 500, 700)] }),
    wrong('blocked-weep', 4.75, 4.7625, 'A1.3/4 A1.3 A1.4'),
  ),
  hand(
    'a heap over the top',
    rules,
    drained(9, [3, 6], { droppings: [heap(90, 595, 700)] }),
    wrong('blocked-weep', 0, 4.7625, 'A1.3/4 A1.3 A1.4'),
  ),
  hand('a heap beside the weep', rules, drained(9, [3, 6], { droppings: [heap(90, 595.125, 700)] })),

  hand('flashing turned up by the least', rules, drained(4, [2], {}, { up: 203.25 })),
  hand(
    'flashing turned up a step less',
    rules,
    drained(4, [2], {}, { up: 203.125 }),
    wrong('low-flashing', 203.125, 203.2, 'A-ledge'),
  ),
  hand('flashing turned up by the least, Canada', 'canada', drained(4, [2], {}, { up: 150 })),
  hand(
    'flashing turned up a step less, Canada',
    'canada',
    drained(4, [2], {}, { up: 149.875 }),
    wrong('low-flashing', 149.875, 150, 'A-ledge'),
  ),

  // The ledge ends at the face line; 5 past it is asked.
  hand('flashing past the edge by the least', rules, drained(4, [2], {}, { front: 5 })),
  hand(
    'flashing a step less past the edge',
    rules,
    drained(4, [2], {}, { front: 4.875 }),
    wrong('short-flashing', 4.875, 5, 'A-ledge'),
  ),
  hand(
    'flashing inside the edge',
    rules,
    drained(4, [2], {}, { front: -30 }),
    wrong('short-flashing', 0, 5, 'A-ledge'),
  ),
  // Two ledges under it: the foremost counts. Their length of course 1 is carried.
  hand(
    'flashing over two ledges',
    rules,
    drained(
      4,
      [2],
      {
        supports: [ledge(0, 390, { front: -12 }), ledge(390, 790, { id: 'A-ledge2', front: -4 })],
      },
      { front: 0.875 },
    ),
    wrong('short-flashing', 4.875, 5, 'A-ledge A-ledge2'),
  ),

  hand(
    'no flashing on the ledge',
    rules,
    drained(4, [], { flashings: [] }),
    wrong('no-flashing', 0, 1, 'A-ledge'),
  ),
  hand(
    'no flashing on wood',
    rules,
    drained(4, [], { flashings: [], supports: [ledge(0, 790, { material: 'wood' })] }),
  ),
  // Half a gauge is 35.
  hand(
    'a flashing half a gauge too high',
    rules,
    drained(4, [], { flashings: [sheet(0, 790, {}, 35)] }),
    wrong('no-flashing', 0, 1, 'A-ledge'),
  ),

  // Course 5 over the opening: from 395 to 1,195 is 800, to 1,995 is 800.
  hand('flashing over an opening', 'canada', overOpening({})),
  hand('end dam at the least', 'canada', overOpening({ leftDam: 25.5 })),
  hand(
    'end dam a step less',
    'canada',
    overOpening({ rightDam: 25.375 }),
    wrong('no-end-dam', 25.375, 25.4, 'A-lintel1'),
  ),
  hand(
    'both ends flat',
    'canada',
    overOpening({ leftDam: 0, rightDam: 0 }),
    wrong('no-end-dam', 0, 25.4, 'A-lintel1'),
  ),
  // The base flashing runs from end to end: no dam is asked.
  hand('no dam at the ends of the panel', rules, drained(4, [2], {}, { leftDam: 0, rightDam: 0 })),
];
