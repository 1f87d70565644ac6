import { BRICK, brickwork, GAUGE, JOINT, runningBond } from '../../../lib/drawing/brickwork';
import { cut, cutColumn, cutFrame, cutMortar, sheetMetal } from '../../../lib/drawing/cut';
import { ring, round } from '../../../lib/drawing/rings';
import { polygon, rect } from '../../../lib/drawing/shape';
import type { Box } from '../../../lib/geometry/box';
import type { Point, Ring } from '../../../lib/geometry/polygon';
import { around, bar, FOOT, fromAbove, STEEL, solid, windowIn } from './pieces';
import { chalk, measured, outlined, ringed, type Sketch, sketch } from './sketch';

const { height } = BRICK;

/** An opening under a lintel whose ends lie in the wall. */
const UNDER: Box = { x: 248, y: -20, width: 418, height: FOOT + 2 * GAUGE + 10 };
const HEAD = UNDER.y + UNDER.height;
const overOpening = around(runningBond(-150, 1100, 5, FOOT), UNDER);
const sill: Ring = ring(372, 226, 562, 204, 562, 164, 552, 164, 552, 174, 540, 174, 540, 164, 372, 164);

/** A wall's long face and the short one that runs back from its corner. */
const BACK = (x: number, y: number): Point => [500 + x * 0.62, y + x * 0.18];
const RETURN = [BACK(0, 14), BACK(500, 14), BACK(500, 349), BACK(0, 349)];

/** Words of openings, of corners and of the top of a wall. */
export const OPENINGS: Readonly<Record<string, Sketch>> = {
  lintel: sketch(
    900,
    [
      ...brickwork(overOpening),
      ...windowIn({ ...UNDER, height: UNDER.height - 2 }),
      bar(128, HEAD - 9, 658, 9, '#56616a'),
      ...[128, 666].map((from) => measured([from, HEAD + 26], [from + 120, HEAD + 26], 12)),
    ],
    ['lintel', [450, 100], [450, HEAD - 6]],
    ['bearing', [130, 412], [188, HEAD + 26]],
    ['bearing', [770, 412], [726, HEAD + 26]],
  ),
  bearing: sketch(
    500,
    [
      ...brickwork(around(runningBond(-62, 620, 4, -44), { x: 234, y: -60, width: 700, height: 150 })),
      ...windowIn({ x: 234, y: -40, width: 500, height: 122 }),
      bar(114, 82, 420, 9, '#56616a'),
      measured([114, 116], [234, 116], 9),
    ],
    ['bearing', [174, 226], [174, 116]],
    ['lintel', [340, 226], [330, 88]],
  ),
  'end-dam': sketch(
    900,
    [
      ...brickwork(
        around(around(runningBond(-150, 1100, 5, FOOT), UNDER), { x: 100, y: 154, width: 714, height: 140 }),
      ),
      ...windowIn({ ...UNDER, height: UNDER.height - 14 }),
      rect({ x: 100, y: 148, width: 714, height: 146 }, '#6b4f33', 0.85),
      rect({ x: 100, y: 148, width: 714, height: 146 }, 'url:wood', 0.35),
      bar(150, 141, 614, 9, '#56616a'),
      solid(ring(140, 150, 774, 150, 774, 250, 762, 250, 762, 196, 152, 196, 152, 250, 140, 250), '#aeb9c0'),
      polygon(ring(152, 150, 762, 150, 762, 160, 152, 160), '#5d6a73', 0.6),
      ...ringed({ x: 140, y: 150, width: 12, height: 100 }, 7),
      ...ringed({ x: 762, y: 150, width: 12, height: 100 }, 7),
    ],
    ['end dam', [250, 412], [146, 258]],
    ['end dam', [650, 412], [768, 258]],
    ['flashing', [450, 90], [450, 170]],
  ),
  sill: sketch(
    900,
    [
      rect({ x: 388, y: -20, width: 40, height: 190 }, '--air'),
      ...cutFrame(388, -20, 150),
      ...cutColumn(520, -57, 3),
      bar(236, 150, 152, 12, 'url:cut-wood'),
      cutMortar(428, 520, 144, 164, 2),
      cut(sill, 'url:concrete'),
      bar(404, 300, 14, 200, '#9db6c4'),
      cut(ring(372, 226, 450, 217, 450, 300, 372, 300), 'url:cut-wood'),
      ...sheetMetal(ring(374, 230, 374, 163, 520, 163)),
    ],
    ['slopes away', [640, 300], [510, 210]],
    ['drip', [640, 120], [546, 170]],
    ['window', [250, 390], [402, 360]],
  ),
  return: sketch(
    900,
    [
      // The long face: its courses end at the corner with a header where the return shows a stretcher.
      ...brickwork(
        runningBond(-214, 602, 5, 24).flatMap((unit) => {
          const width = Math.min(unit.width, 500 - unit.x);
          return width > JOINT ? [{ ...unit, width }] : [];
        }),
      ),
      ...brickwork(
        Array.from({ length: 5 }, (_, course) =>
          (course % 2 === 0 ? [194, 194, 92] : [92, 194, 194]).map((width, index, all) => ({
            x: all.slice(0, index).reduce((sum, one) => sum + one + JOINT, 0),
            y: 24 + course * GAUGE,
            width,
            height,
          })),
        ).flat(),
        BACK,
      ),
      polygon(RETURN, '#170c08', 0.28),
      outlined(RETURN),
    ],
    ['return', [560, 424], [580, 330]],
    ['long wall', [260, 412], [260, 330]],
  ),
  scaffold: sketch(
    2700,
    [
      rect({ x: -10, y: -10, width: 2800, height: 70 }, 'url:earth'),
      ...cutColumn(560, 60, 14),
      ...cutFrame(428, 60, 1400),
      ...[640, 1700].flatMap((x) => [
        bar(x - 70, 60, 300, 38, 'url:cut-wood'),
        bar(x - 60, 98, 160, 12, STEEL),
        bar(x - 4, 110, 48, x > 1000 ? 1190 : 640, STEEL),
      ]),
      bar(600, 470, 1200, 48, STEEL),
      ...Array.from({ length: 4 }, (_, index) => bar(704 + index * 232, 518, 225, 38, 'url:cut-wood')),
      bar(1655, 556, 38, 150, 'url:cut-wood'),
      ...[830, 1130].map((y) => solid(round(1670, y, 26), STEEL)),
    ],
    ['guard rail', [1960, 1170], [1690, 1130]],
    ['mid rail', [1960, 880], [1690, 830]],
    ['toe board', [1960, 660], [1690, 640]],
    ['boards', [1150, 700], [1150, 540]],
    ['sole board', [1160, 200], [1560, 80]],
  ),
  square: sketch(
    900,
    [
      ...brickwork([0, 1, 2, 3].map((index) => ({ x: 230 + index * 204, y: 36, width: 194, height: 92 }))),
      ...brickwork([0, 1].map((index) => ({ x: 230, y: 138 + index * 204, width: 92, height: 194 }))),
      outlined(ring(322, 128, 690, 128, 322, 404)),
      chalk([322, 160], [354, 160], [354, 128]),
    ],
    ['four parts', [470, 190], [470, 128]],
    ['three', [190, 300], [320, 300]],
    ['five', [660, 330], [506, 266]],
    ['from above', [760, 220], [760, 110]],
  ),
  range: sketch(
    1100,
    [...brickwork(fromAbove([215, 215, 180, 215, 215])), chalk([20, 208], [1080, 208])],
    ['line', [180, 90], [240, 208]],
    ['out of range', [700, 90], [560, 182]],
    ['seen from above', [300, 420], [330, 290]],
  ),
};
