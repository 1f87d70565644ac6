import { BRICK, brickwork, runningBond } from '../../../lib/drawing/brickwork';
import { cut } from '../../../lib/drawing/cut';
import { arc, ring, round } from '../../../lib/drawing/rings';
import { lines, polygon, type Shape } from '../../../lib/drawing/shape';
import { type Ring, rectRing } from '../../../lib/geometry/polygon';
import { bar, block, handle, LINE, STEEL, solid } from './pieces';
import { type Sketch, sketch } from './sketch';

/** A joint cut through at its true size: the face of the bricks stands at x 100, the joint lies from 35 to 45. */
const FACE = 100;
const LOW = 35;
const HIGH = 45;

/** Two bricks and the mortar between; `face` is the line of its face from the foot up. */
function jointWith(face: Ring, mortar = 'url:mortar'): readonly Shape[] {
  return [
    cut(rectRing(FACE - BRICK.depth, LOW - BRICK.height, BRICK.depth, BRICK.height), 'url:cut-brick'),
    cut(rectRing(FACE - BRICK.depth, HIGH, BRICK.depth, BRICK.height), 'url:cut-brick'),
    solid([[FACE - BRICK.depth, LOW], ...face, [FACE - BRICK.depth, HIGH]], mortar),
  ];
}

/** An arc 3.5 mm deep. */
const HOLLOW: Ring = arc(FACE + 1.8, (LOW + HIGH) / 2, 5.3, (250 * Math.PI) / 180, (110 * Math.PI) / 180);
const concave: Ring = [[FACE, LOW], ...HOLLOW, [FACE, HIGH]];
const cutBack: Ring = ring(FACE - 10, LOW, FACE - 10, HIGH);

/** Words of joints and of the mortar in them. */
export const JOINTS: Readonly<Record<string, Sketch>> = {
  'concave-joint': sketch(160, jointWith(concave), ['smooth hollow', [112, 62], [FACE - 2.6, 40]]),
  'flush-joint': sketch(160, jointWith(ring(FACE, LOW, FACE, HIGH)), ['in line', [112, 62], [FACE, 40]]),
  'raked-joint': sketch(
    160,
    jointWith(cutBack),
    ['cut back', [112, 62], [FACE - 10, 41]],
    ['a small shelf', [112, 18], [FACE - 3, LOW]],
  ),
  'weathered-joint': sketch(160, jointWith(ring(FACE, LOW, FACE - 4, HIGH)), [
    'slopes out',
    [112, 62],
    [FACE - 2, 40],
  ]),
  tooling: sketch(
    160,
    [
      ...jointWith(concave),
      solid(round(FACE + 2, 40, 5.2), STEEL),
      ...handle([FACE + 8, 40], [FACE + 48, 47], 9),
    ],
    ['jointing iron', [112, 64], [FACE + 3, 43]],
  ),
  pointing: sketch(
    160,
    [
      ...jointWith(ring(FACE - 20, LOW, FACE - 20, HIGH)),
      polygon(rectRing(FACE - BRICK.depth, LOW, BRICK.depth - 20, 10), '#5c5140', 0.45),
      solid(ring(FACE - 20, LOW, FACE - 8, LOW, FACE - 10, HIGH, FACE - 20, HIGH), '#ece6d8'),
      solid(ring(FACE - 8, LOW + 2, FACE + 30, LOW + 8, FACE + 30, LOW + 11, FACE - 8, LOW + 6), STEEL),
      ...handle([FACE + 30, LOW + 10], [FACE + 56, LOW + 15], 8),
    ],
    ['new mortar', [112, 66], [FACE - 13, 41]],
    ['old mortar', [112, 14], [FACE - 30, 38]],
  ),
  furrow: sketch(
    260,
    [
      cut(rectRing(84, 14, BRICK.depth, BRICK.height), 'url:cut-brick'),
      solid(
        [
          [82, 71],
          [178, 71],
          ...arc(154, 71, 24, 0, 2.1, 24),
          [130, 84],
          ...arc(106, 71, 24, 1.05, Math.PI, 24),
        ],
        'url:mortar',
      ),
    ],
    ['furrow', [130, 118], [130, 86]],
    ['mortar bed', [198, 90], [174, 80]],
  ),
  mortar: sketch(
    700,
    [
      bar(0, 0, 700, 20, 'url:concrete'),
      ...brickwork(runningBond(-100, 900, 2, 30)),
      solid(ring(0, 154, 0, 172, 120, 178, 250, 170, 420, 180, 560, 172, 700, 178, 700, 154), 'url:mortar'),
      ...brickwork([{ x: 20, y: 164, width: 194, height: 57 }]),
    ],
    ['mortar', [440, 270], [420, 170]],
  ),
  'back-butter': sketch(
    500,
    [
      bar(40, 40, 290, 130, 'url:unit4a'),
      solid(ring(44, 46, 180, 43, 325, 46, 327, 110, 324, 164, 170, 167, 45, 165, 43, 100), 'url:mortar'),
      lines(
        [56, 70, 84, 98, 112, 126, 140, 154].map((low) => ring(52, low, 180, low + 3, 318, low - 1)),
        { ...LINE, paint: '#9d9483', width: 2 },
      ),
      solid(ring(270, 96, 390, 60, 400, 100, 380, 128), STEEL),
      ...handle([396, 94], [470, 122], 16),
    ],
    ['mortar on all of the back', [200, 222], [150, 150]],
  ),
  'core-holes': (() => {
    const { shapes, top } = block(40, 40);
    const holes = [0.2, 0.5, 0.8].map((share) => {
      const [x, y] = top(BRICK.length * share, BRICK.depth / 2);
      return solid(round(x, y, 17, 9), '#2b130d');
    });
    return sketch(400, [...shapes, ...holes], ['holes right through', [230, 180], [166, 121]]);
  })(),
  frog: (() => {
    const { shapes, top } = block(40, 40);
    const ring = (inset: number): Ring => [
      top(22 + inset, 20 + inset),
      top(BRICK.length - 22 - inset, 20 + inset),
      top(BRICK.length - 22 - inset, BRICK.depth - 20 - inset),
      top(22 + inset, BRICK.depth - 20 - inset),
    ];
    return sketch(
      400,
      [...shapes, solid(ring(0), '#5a2a1e'), polygon(ring(9), '#7c4030')],
      ['hollow', [210, 180], [166, 121]],
    );
  })(),
};
