import { BRICK, GAUGE, JOINT } from '../../../lib/drawing/brickwork';
import { cut, cutColumn, cutFrame, cutMortar, sheetMetal } from '../../../lib/drawing/cut';
import { ring } from '../../../lib/drawing/rings';
import { lines, rect } from '../../../lib/drawing/shape';
import { rectRing } from '../../../lib/geometry/polygon';
import { bar, houseWall, STEEL, solid, VENEER } from './pieces';
import { chalk, dashed, measured, ringed, type Sketch, sketch } from './sketch';

const { depth, height } = BRICK;
const { face, ledge, frame } = VENEER;
const back = face - depth;
const bed = (course: number) => ledge + course * GAUGE;
const FLASHING = [
  ...ring(frame + 3, bed(3), frame + 3, ledge + 26, frame + 14, ledge + 4),
  ...ring(face + 2, ledge + 4, face + 12, ledge - 8),
];
/** Courses one over another, the face of each where `faceOf` says. */
const pile = (courses: number, low: number, faceOf: (course: number) => number) =>
  Array.from({ length: courses }, (_, course) => {
    const y = low + course * GAUGE;
    const at = faceOf(course);
    return [
      cutMortar(Math.max(at, faceOf(course - 1)) - depth, Math.min(at, faceOf(course - 1)), y, y + JOINT),
      cut(rectRing(at - depth, y + JOINT, depth, height), 'url:cut-brick'),
    ];
  }).flat();
const bob = (x: number, top: number, low: number) => [
  chalk([x, top], [x, low + 40]),
  solid(ring(x - 12, low + 40, x + 12, low + 40, x + 12, low + 18, x, low, x - 12, low + 18), STEEL),
];

/** Words that show when a wall is cut through. */
export const SECTIONS: Readonly<Record<string, Sketch>> = {
  'anchored-veneer': sketch(
    900,
    houseWall(),
    ['frame', [170, 330], [330, 300]],
    ['tie', [640, 370], [490, bed(4) + 5]],
    ['brick', [640, 260], [530, 230]],
    ['ledge', [640, 70], [590, ledge - 4]],
  ),
  'adhered-veneer': sketch(
    500,
    [
      ...cutFrame(220, -10, 260),
      bar(222, -10, 12, 270, '#a7a094'),
      bar(234, -10, 12, 270, 'url:mortar'),
      ...[0, 1, 2, 3, 4].flatMap((course) => [
        cutMortar(246, 274, -26 + course * 60, -16 + course * 60, 3),
        cut(rectRing(246, -16 + course * 60, 28, 50), 'url:cut-stone'),
      ]),
    ],
    ['water barrier', [150, 214], [221, 200]],
    ['scratch coat', [330, 214], [229, 190]],
    ['setting mortar', [330, 130], [240, 120]],
    ['thin unit', [330, 60], [262, 66]],
  ),
  'air-space': sketch(
    900,
    [
      ...houseWall(),
      rect({ x: frame, y: ledge, width: back - frame, height: 420 }, '--chalk', 0.3),
      measured([frame, 250], [back, 250], 12),
    ],
    ['air space', [640, 380], [back - 8, 250]],
  ),
  wythe: sketch(
    900,
    [...houseWall(), ...ringed({ x: back, y: ledge, width: depth, height: 395 }, 6)],
    ['one wythe', [640, 260], [face + 6, 230]],
  ),
  'brick-ledge': sketch(
    900,
    [
      ...houseWall(5, [2]),
      chalk([frame, ledge + GAUGE], [frame, ledge], [face + 45, ledge], [face + 45, -20]),
    ],
    ['step', [660, 64], [597, ledge]],
    ['first course', [660, 190], [540, ledge + 40]],
  ),
  flashing: sketch(
    900,
    [
      ...houseWall(6, [4]),
      rect({ x: back, y: ledge + JOINT, width: depth, height }, '#1d1715', 0.85),
      lines([FLASHING], { paint: '--chalk', width: 6, thin: true }),
      lines([ring(frame + 8, 470, frame + 8, bed(2))], { paint: '#2a5c8f', width: 4, dash: [14, 6] }),
    ],
    ['water barrier laps over it', [400, 424], [frame + 8, bed(4)]],
    ['weep', [690, 200], [556, ledge + 44]],
    ['flashing', [690, 130], [face - 6, ledge + 5]],
    ['water out', [690, 24], [face + 12, ledge - 8]],
  ),
  overhang: sketch(
    420,
    [
      cut(rectRing(40, -20, 160, 80), 'url:concrete'),
      ...cutColumn(218, 60, 2),
      ...[200, 218].map((x) => dashed([x, 24], [x, 74])),
      measured([200, 40], [218, 40], 8),
    ],
    ['overhang', [270, 24], [213, 40]],
    ['edge of the ledge', [96, 196], [199, 58]],
  ),
  'shelf-angle': sketch(
    700,
    [
      cut(rectRing(60, 40, 240, 170), 'url:concrete'),
      rect({ x: 300, y: -10, width: 48, height: 380 }, '--air'),
      ...cutColumn(440, -85, 3),
      solid(ring(300, 130, 432, 130, 432, 139, 309, 139, 309, 210, 300, 210), 'url:cut-steel'),
      bar(250, 176, 66, 16, '#4b555c'),
      bar(316, 168, 12, 32, '#4b555c'),
      bar(348, 116, 92, 14, '#77746c'),
      ...cutColumn(440, 141, 3),
      ...sheetMetal(ring(304, 300, 304, 214, 313, 214, 313, 143, 442, 143, 450, 132)),
    ],
    ['soft joint', [500, 60], [432, 122]],
    ['flashing', [500, 220], [444, 143]],
    ['shelf angle', [190, 316], [306, 190]],
    ['bolt', [150, 16], [262, 180]],
  ),
  bulge: sketch(
    900,
    [...pile(6, 0, (course) => 440 + ([0, 14, 30, 36, 20][course] ?? 0)), dashed([440, -10], [440, 420])],
    ['stands out', [600, 250], [474, 240]],
    ['true plane', [290, 424], [440, 415]],
  ),
  plumb: sketch(
    900,
    [
      ...pile(5, 20, () => 270),
      ...bob(310, 440, 40),
      ...pile(5, 20, (course) => 570 + Math.max(0, course) * 13),
      ...bob(690, 440, 40),
    ],
    ['plumb', [100, 412], [180, 340]],
    ['leans', [460, 412], [540, 340]],
  ),
  proud: sketch(
    420,
    [...pile(3, -6, (course) => (course === 1 ? 212 : 198)), dashed([198, -10], [198, 210])],
    ['stands proud', [258, 110], [212, 96]],
    ['face', [100, 190], [197, 182]],
  ),
};
