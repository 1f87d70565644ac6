import { BRICK, brickFaces, brickwork, GAUGE, JOINT, runningBond } from '../../../lib/drawing/brickwork';
import { cut, cutMortar } from '../../../lib/drawing/cut';
import { ring } from '../../../lib/drawing/rings';
import { rect } from '../../../lib/drawing/shape';
import type { Box } from '../../../lib/geometry/box';
import { rectRing } from '../../../lib/geometry/polygon';
import { bar, block, bond, FOOT, solid, unitAt, wall } from './pieces';
import { chalk, dashed, ringed, type Sketch, sketch } from './sketch';

const { length, height, depth } = BRICK;
const y = (course: number) => FOOT + course * GAUGE;

/** Units side by side off both ends of the sheet. */
function row(low: number, width: number, high: number): readonly Box[] {
  const count = Math.ceil(1000 / (width + JOINT));
  return Array.from({ length: count }, (_, index) => ({
    x: -30 + index * (width + JOINT),
    y: low,
    width,
    height: high,
  }));
}

/** Flemish bond: stretchers and headers in turn, each header over the middle of a stretcher. */
const flemish = [0, 1, 2, 3, 4].flatMap((course) =>
  Array.from({ length: 5 }, (_, index): readonly Box[] => {
    const x = (course % 2 === 0 ? -252 : -99) + index * 306;
    return [
      { x, y: y(course), width: length, height },
      { x: x + length + JOINT, y: y(course), width: depth, height },
    ];
  }).flat(),
);

/** What is left of a wall that goes on later: every second course stands out by half a unit. */
const toothed = [0, 1, 2, 3, 4].flatMap((course) =>
  runningBond(-150, 1100, 5, FOOT).filter(
    (unit) => unit.y === y(course) && unit.x + unit.width <= (course % 2 === 0 ? 660 : 560),
  ),
);

/** Words for a unit, how it lies and what is cut from it. */
export const UNITS: Readonly<Record<string, Sketch>> = {
  stretcher: sketch(
    900,
    [...wall(5), ...ringed(unitAt(bond(5), 400, 3), 4)],
    ['long face', [640, 412], [460, y(3) + 40]],
  ),
  header: sketch(
    900,
    [
      rect({ x: 0, y: 0, width: 900, height: FOOT - JOINT }, 'url:concrete'),
      ...brickwork(flemish),
      ...ringed({ x: 411, y: y(3), width: depth, height }, 4),
    ],
    ['short face', [640, 412], [457, y(3) + 40]],
  ),
  rowlock: sketch(
    900,
    [
      ...wall(3),
      ...brickwork(row(y(3), height, depth)),
      ...ringed({ x: 439, y: y(3), width: height, height: depth }, 4),
    ],
    ['on its edge, end to you', [450, 400], [467, y(3) + 70]],
  ),
  soldier: sketch(
    900,
    [
      ...wall(2),
      ...brickwork(row(y(2), height, length)),
      ...ringed({ x: 439, y: y(2), width: height, height: length }, 4),
    ],
    ['on its end', [640, 412], [467, y(2) + 150]],
  ),
  bat: sketch(
    520,
    [
      ...brickFaces([
        { x: 60, y: 90, width: length, height },
        { x: 310, y: 90, width: depth, height },
      ]),
      dashed([157, 70], [157, 168]),
    ],
    ['whole', [60, 210], [90, 140]],
    ['cut', [190, 210], [157, 160]],
    ['half', [356, 210], [356, 140]],
  ),
  toothing: sketch(
    900,
    [rect({ x: 0, y: 0, width: 670, height: FOOT - JOINT }, 'url:concrete'), ...brickwork(toothed)],
    ['left for a later wall', [620, 412], [640, y(4) + 30]],
  ),
  corbel: sketch(
    420,
    [
      ...Array.from({ length: 3 }, (_, course) => course).flatMap((course) => {
        const face = 180 + course * 10;
        const low = course * GAUGE - 20;
        return [
          cutMortar(face - depth - 8, Math.min(face, 180 + Math.max(0, course - 1) * 10), low, low + JOINT),
          cut(rectRing(face - depth, low + JOINT, depth, height), 'url:cut-brick'),
        ];
      }),
      chalk([180, -10], [180, 200]),
    ],
    ['steps out a little', [238, 150], [200, 150]],
    ['face below', [238, 40], [181, 30]],
  ),
  butter: sketch(
    400,
    [
      bar(80, 60, length, height, 'url:unit4a'),
      rect({ x: 80, y: 60, width: length, height }, 'url:fleck'),
      solid(ring(274, 58, 288, 64, 294, 88, 287, 112, 274, 119), 'url:mortar'),
    ],
    ['mortar over the whole end', [270, 168], [285, 110]],
  ),
  suction: (() => {
    const { shapes, top } = block(60, 36);
    const drops = Array.from({ length: 24 }, (_, index) => {
      const turn = (index * Math.PI) / 12;
      return top(97 + 26 * Math.cos(turn), 46 + 26 * Math.sin(turn));
    });
    return sketch(
      400,
      [...shapes, solid(drops, '#6f9cc0')],
      ['drops in a ring', [200, 178], [185, 118]],
      ['bed of a dry brick', [200, 14], [130, 100]],
    );
  })(),
};
