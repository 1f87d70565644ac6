import { BRICK, brickwork, GAUGE, JOINT, runningBond } from '../../../lib/drawing/brickwork';
import { SLOT } from '../../../lib/drawing/colours';
import { sheetMetal } from '../../../lib/drawing/cut';
import { ring, round } from '../../../lib/drawing/rings';
import { lines, polygon, rect } from '../../../lib/drawing/shape';
import type { Box } from '../../../lib/geometry/box';
import { rectRing } from '../../../lib/geometry/polygon';
import { around, bar, block, bond, FOOT, unitAt, wall, windowIn } from './pieces';
import { chalk, measured, ringed, type Sketch, sketch } from './sketch';

const { length, height } = BRICK;
const five = bond(5);
const y = (course: number) => FOOT + course * GAUGE;
const brick = block(60, 36);
const WINDOW: Box = { x: 248, y: y(1), width: 418, height: 500 };

/** English bond at a corner: in each course of headers a closer stands next to the first one. */
const headers = (course: number): readonly Box[] => {
  const short = { y: y(course), height, width: 92 };
  return [
    { ...short, x: 120 },
    { ...short, x: 222, width: 41 },
    ...Array.from({ length: 8 }, (_, index) => ({ ...short, x: 273 + index * 102 })),
  ];
};
const english = [0, 1, 2, 3, 4].flatMap((course) =>
  course % 2 === 1 ? headers(course) : runningBond(120, 1080, 1, y(course)),
);
const slivers = runningBond(-150, 594, 5, FOOT);

/** A crack in steps along the joints, and what a unit has lost of its face, both in courses of the bond above. */
const CRACK = [
  ...ring(146, 20, 150, 91, 200, 91, 249, 93, 253, 159, 300, 160, 354, 158),
  ...ring(356, 225, 400, 224, 456, 227, 459, 294, 510, 293, 558, 294, 560, 355),
];
const FLAKE = ring(380, 235, 470, 233, 496, 251, 484, 277, 421, 281, 387, 265);
const SCRATCHES = Array.from({ length: 17 }, (_, row) =>
  Array.from({ length: 31 }, (_each, at) => [at * 30, 12 + row * 21 + 3 * Math.sin(at * 0.9 + row)] as const),
);

/** Words that show on the face of a wall. */
export const FACES: Readonly<Record<string, Sketch>> = {
  arris: sketch(
    400,
    [
      ...brick.shapes,
      chalk([60, 36 + height], [60 + length, 36 + height], brick.top(length, BRICK.depth)),
      chalk([60 + length, 36], [60 + length, 36 + height]),
    ],
    ['arris', [340, 60], [60 + length, 66]],
    ['arris', [80, 170], [120, 36 + height]],
  ),
  bond: sketch(
    900,
    [
      ...wall(5),
      ...ringed(unitAt(five, 400, 3), 4),
      chalk([455, y(2)], [455, y(3) + height + 18]),
      measured([350, y(3) + height + 18], [455, y(3) + height + 18], 12),
    ],
    ['each unit laps the two below', [450, 412], [402, y(3) + height + 18]],
  ),
  bloom: sketch(
    900,
    [
      ...wall(5),
      ...[
        [100, 2],
        [300, 2],
        [240, 3],
        [420, 3],
        [500, 2],
        [330, 4],
        [700, 2],
      ].map(([x = 0, course = 0], index) => {
        return rect(unitAt(five, x, course), index % 2 === 0 ? 'url:blooma' : 'url:bloomb');
      }),
    ],
    ['white salt', [640, 412], [450, y(3) + 40]],
  ),
  closer: sketch(
    900,
    [
      rect({ x: 120, y: 0, width: 900, height: FOOT - JOINT }, 'url:concrete'),
      ...brickwork(english),
      ...[1, 3].flatMap((course) => ringed({ x: 222, y: y(course), width: 41, height }, 5)),
    ],
    ['closer', [330, 412], [243, y(3) + 50]],
    ['corner', [86, 412], [121, y(4) + 40]],
  ),
  sliver: sketch(
    900,
    [
      ...brickwork(slivers),
      ...windowIn({ x: 594, y: -20, width: 400, height: 500 }),
      ...[1, 3].flatMap((course) => ringed({ x: 564, y: y(course), width: 30, height }, 6)),
    ],
    ['sliver', [640, 412], [582, y(3) + 50]],
    ['window', [740, 200], [690, 160]],
  ),
  jamb: sketch(
    900,
    [
      ...brickwork(around(bond(6), WINDOW)),
      ...windowIn(WINDOW),
      chalk([248, WINDOW.y], [248, 430]),
      chalk([666, WINDOW.y], [666, 430]),
    ],
    ['jamb', [360, 300], [250, 260]],
    ['jamb', [560, 230], [664, 190]],
  ),
  'movement-joint': sketch(
    900,
    [
      rect({ x: 0, y: 0, width: 900, height: FOOT - JOINT }, 'url:concrete'),
      rect({ x: 446, y: FOOT - JOINT, width: 20, height: 345 }, '#77746c'),
      ...brickwork(runningBond(-156, 448, 5, FOOT)),
      ...brickwork(runningBond(462, 1100, 5, FOOT)),
      ...ringed({ x: 448, y: FOOT - JOINT, width: 14, height: 345 }, 6),
    ],
    ['soft joint, all the way up', [500, 412], [455, 360]],
  ),
  spall: sketch(
    900,
    [
      ...wall(5),
      polygon(ring(378, 237, 470, 235, 498, 253, 486, 279, 420, 284, 384, 267), '#2a130b', 0.75),
      polygon(FLAKE, '#cf8b6c'),
      polygon(FLAKE, 'url:grain', 0.9),
    ],
    ['flake broken off', [430, 412], [450, y(3) + 34]],
  ),
  weep: sketch(
    900,
    [
      ...wall(5),
      ...[44, 452, 860].map((x) => polygon(rectRing(x, y(0), 10, height), SLOT)),
      ...sheetMetal(ring(-10, FOOT - 9, 910, FOOT - 9)),
    ],
    ['weep', [560, 412], [457, y(0) + 40]],
    ['edge of the flashing', [300, 412], [240, FOOT - 9]],
  ),
  'bee-holes': sketch(
    900,
    [
      ...wall(5),
      ...[
        [248, 2, 40],
        [456, 2, 8],
        [352, 3, 30],
        [556, 3, 42],
        [250, 4, 20],
        [146, 1, 34],
      ].map(([x = 0, course = 0, up = 0]) => polygon(round(x + 3, y(course) + up, 4, 7), SLOT)),
    ],
    ['small dark holes', [560, 412], [355, y(3) + 32]],
  ),
  crack: sketch(
    900,
    [...wall(5), lines([CRACK], { paint: SLOT, width: 6 })],
    ['steps along the joints', [330, 412], [352, y(2) + 30]],
  ),
  'scratch-coat': sketch(
    900,
    [
      bar(0, 0, 900, 360, '#b9b1a3'),
      rect({ x: 0, y: 0, width: 900, height: 360 }, 'url:grain'),
      lines(SCRATCHES, { paint: '#7d7568', width: 4.5 }),
      ...brickwork([
        { x: -20, y: 20, width: 240, height: 60 },
        { x: 230, y: 20, width: 170, height: 60 },
        { x: -20, y: 90, width: 150, height: 100 },
      ]),
    ],
    ['level scratches', [640, 412], [640, 300]],
    ['thin unit', [300, 412], [300, 62]],
  ),
};
