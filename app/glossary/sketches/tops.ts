import { BRICK, brickwork, GAUGE, runningBond } from '../../../lib/drawing/brickwork';
import { cut, cutColumn, sheetMetal } from '../../../lib/drawing/cut';
import { ring } from '../../../lib/drawing/rings';
import { rect, type Shape } from '../../../lib/drawing/shape';
import { rectRing } from '../../../lib/geometry/polygon';
import { bar, solid } from './pieces';
import { chalk, measured, type Sketch, sketch } from './sketch';

const { depth } = BRICK;

/** A wall two wythes thick, cut through: its faces stand at `left` and 194 mm to the right of it. */
function thickWall(left: number, low: number, courses: number): readonly Shape[] {
  return [depth, 2 * depth + 10].flatMap((face) => cutColumn(left + face, low, courses));
}

const CHIMNEY = { x: 500, width: 398, foot: 100, courses: 6 } as const;
const top = CHIMNEY.foot + CHIMNEY.courses * GAUGE;

/** What stands on a wall above the roof. */
export const TOPS: Readonly<Record<string, Sketch>> = {
  chimney: sketch(
    1400,
    [
      ...brickwork(runningBond(CHIMNEY.x, CHIMNEY.x + CHIMNEY.width, CHIMNEY.courses, CHIMNEY.foot)),
      solid(ring(0, 0, 1400, 0, 1400, 40, 0, 300), '#5b6166'),
      bar(630, top + 20, 138, 90, '#b4653f'),
      solid(
        ring(470, top, 928, top, 928, top + 28, 780, top + 56, 618, top + 56, 470, top + 28),
        'url:concrete',
      ),
      chalk([500, 207], [500, 250], [898, 176], [898, 133]),
    ],
    ['cap', [1060, 600], [920, top + 20]],
    ['flue liner', [460, 640], [660, 600]],
    ['flashing', [1040, 300], [898, 160]],
    ['roof', [1180, 190], [1180, 70]],
  ),
  parapet: sketch(
    1200,
    [
      ...thickWall(560, -20, 8),
      cut(rectRing(-10, 190, 570, 60), 'url:wood'),
      ...sheetMetal(ring(-10, 256, 556, 256, 556, 400)),
      cut(ring(530, 516, 784, 516, 784, 556, 530, 540), 'url:concrete'),
      measured([870, 256], [870, 516], 16),
    ],
    ['coping', [420, 560], [540, 530]],
    ['parapet', [910, 390], [872, 390]],
    ['roof', [240, 330], [240, 258]],
    ['wall', [910, 110], [752, 100]],
  ),
  coping: sketch(
    500,
    [
      ...thickWall(150, -30, 2),
      rect({ x: 150, y: 104, width: 194, height: 12 }, 'url:mortar'),
      ...sheetMetal(ring(128, 96, 136, 109, 358, 109, 366, 96)),
      cut(
        [
          ...ring(112, 116, 122, 116, 122, 124, 132, 124, 132, 116),
          ...ring(362, 116, 362, 124, 372, 124, 372, 116, 382, 116, 382, 170, 112, 150),
        ],
        'url:concrete',
      ),
    ],
    ['slope', [250, 222], [250, 161]],
    ['drip', [420, 70], [367, 122]],
    ['flashing', [104, 40], [131, 104]],
  ),
};
