import { BRICK, brickFaces, brickwork, GAUGE, JOINT, runningBond } from '../../../lib/drawing/brickwork';
import { arc, ring, round } from '../../../lib/drawing/rings';
import { lines, polygon, rect, type Shape } from '../../../lib/drawing/shape';
import { type Ring, rectRing } from '../../../lib/geometry/polygon';
import { bar, FOOT, fromAbove, handle, STEEL, solid, TIMBER, wall } from './pieces';
import { chalk, dashed, outlined, type Sketch, sketch } from './sketch';

const { height } = BRICK;
const y = (course: number) => FOOT + course * GAUGE;

/** The end of a wall at x 160: courses up to the line, which is stretched at the top of the one to be laid. */
const endOfWall = (courses: number): readonly Shape[] => [
  rect({ x: 160, y: 0, width: 900, height: FOOT - JOINT }, 'url:concrete'),
  ...brickwork(runningBond(160, 1100, courses, FOOT)),
];
const LINE_UP = y(3) + height;

/** A lead: each course ends half a unit before the one below. */
const lead = (mirror: (x: number, width: number) => number): readonly Shape[] =>
  brickwork(
    runningBond(0, 612, 5, 40)
      .filter(({ x, y: low, width }) => x + width <= 612 - Math.round((low - 40) / GAUGE) * 102)
      .map((unit) => ({ ...unit, x: mirror(unit.x, unit.width) })),
  );

const heap: Ring = [[150, 100], ...arc(300, 100, 150, Math.PI, 0, 92)];
const bubble = (x: number, low: number): readonly Shape[] => [
  solid(rectRing(x - 60, low, 120, 30), '#dbe8a8', { paint: '#4f6b3a', width: 2, thin: true }),
  solid(round(x, low + 17, 24, 9), '#f7fbe9'),
  lines(
    [x - 30, x + 30].map((at): Ring => ring(at, low, at, low + 30)),
    { paint: '#22272b', width: 2, thin: true },
  ),
];

/** Tools, and what is done with them. */
export const TOOLS: Readonly<Record<string, Sketch>> = {
  batch: sketch(
    900,
    [
      bar(60, 60, 115, 115, '#9aa0a3'),
      bar(200, 60, 115, 115, '#f1eee6'),
      ...[380, 510, 640].flatMap((x) => [60, 190].map((low) => bar(x, low, 115, 115, '#d8bb84'))),
    ],
    ['cement', [117, 290], [117, 150]],
    ['lime', [257, 290], [257, 150]],
    ['sand', [560, 400], [560, 290]],
  ),
  'gauge-rod': sketch(
    900,
    [
      ...endOfWall(5),
      bar(84, 20, 46, 410, TIMBER),
      ...Array.from({ length: 6 }, (_, course) => chalk([84, y(course) + height], [130, y(course) + height])),
    ],
    ['mark for each course', [460, 412], [130, y(4) + height]],
  ),
  level: sketch(
    900,
    [...wall(3), bar(120, y(3) - JOINT, 660, 62, '#b9852c'), ...bubble(450, y(3) + 8)],
    ['bubble in the middle', [450, 400], [450, y(3) + 26]],
  ),
  line: sketch(
    900,
    [
      ...endOfWall(3),
      ...brickwork([{ x: 160, y: y(3), width: 92, height }]),
      chalk([154, LINE_UP], [900, LINE_UP]),
      bar(128, LINE_UP - 26, 30, 52, TIMBER),
    ],
    ['line', [560, 400], [560, LINE_UP]],
    ['block', [80, 400], [140, LINE_UP + 24]],
  ),
  'line-block': sketch(
    450,
    [
      ...brickwork(runningBond(130, 600, 3, 0)),
      solid(ring(78, 104, 128, 104, 128, 150, 158, 150, 158, 192, 78, 192), TIMBER),
      chalk([158, 191], [450, 191]),
    ],
    ['block', [60, 40], [92, 106]],
    ['line', [330, 110], [330, 190]],
  ),
  'line-pin': sketch(
    450,
    [
      ...brickwork(runningBond(-92, 230, 4, -60).filter(({ y: low }) => low > GAUGE - 60)),
      ...brickwork(runningBond(-92, 600, 2, -60)),
      solid(ring(160, 136, 296, 142, 306, 136, 296, 130), STEEL),
      chalk([288, 131], [450, 131]),
    ],
    ['steel pin in a joint', [250, 100], [262, 134]],
    ['line', [380, 180], [380, 132]],
  ),
  lead: sketch(
    1600,
    [
      rect({ x: 0, y: 0, width: 1600, height: 30 }, 'url:concrete'),
      ...lead((x) => 60 + x),
      ...lead((x, width) => 1540 - x - width),
      chalk([50, 40 + height], [1550, 40 + height]),
    ],
    ['lead', [400, 560], [200, 350]],
    ['lead', [1200, 560], [1400, 350]],
    ['line', [800, 300], [800, 40 + height]],
  ),
  tingle: sketch(
    900,
    [
      ...wall(3),
      ...brickwork([{ x: 340, y: y(3), width: 194, height }]),
      chalk([0, LINE_UP], [900, LINE_UP]),
      solid(ring(400, LINE_UP + 8, 480, LINE_UP + 8, 474, LINE_UP - 14, 406, LINE_UP - 14), STEEL),
      ...brickFaces([{ x: 350, y: LINE_UP + 8, width: 180, height: 50 }]),
    ],
    ['twig', [250, 412], [404, LINE_UP]],
    ['line', [760, 400], [740, LINE_UP]],
  ),
  'plumb-bob': sketch(
    500,
    [
      ...brickwork(runningBond(270, 460, 4, -30)),
      bar(170, 224, 130, 12, TIMBER),
      chalk([210, 224], [210, 80]),
      solid(ring(196, 80, 224, 80, 224, 52, 210, 18, 196, 52), STEEL),
    ],
    ['string', [130, 170], [209, 160]],
    ['weight', [130, 60], [198, 60]],
  ),
  straightedge: sketch(
    1100,
    [...brickwork(fromAbove([200, 182, 170, 182, 200])), bar(30, 292, 1040, 44, STEEL)],
    ['straightedge', [300, 440], [340, 320]],
    ['gap at a hollow', [700, 100], [550, 276]],
    ['from above', [180, 100], [150, 210]],
  ),
  trowel: sketch(
    500,
    [
      solid(ring(60, 120, 190, 176, 258, 156, 266, 120, 258, 84, 190, 64), STEEL),
      polygon(ring(60, 120, 190, 176, 258, 156, 266, 120), '#ffffff', 0.18),
      lines([ring(262, 120, 312, 120, 330, 146, 350, 150)], { paint: '#4b555c', width: 9 }),
      ...handle([346, 150], [460, 152], 26),
    ],
    ['point', [90, 200], [66, 124]],
    ['blade', [210, 30], [190, 90]],
    ['handle', [400, 60], [400, 138]],
  ),
  jointer: sketch(
    500,
    [
      lines([ring(60, 112, 130, 96, 230, 96, 290, 120, 320, 150)], { paint: '#4b555c', width: 19 }),
      lines([ring(60, 114, 130, 98, 230, 98, 290, 122, 320, 152)], { paint: STEEL, width: 11 }),
      ...handle([316, 148], [440, 156], 28),
    ],
    ['round bar', [170, 40], [170, 94]],
    ['handle', [400, 60], [390, 140]],
  ),
  mortarboard: sketch(
    900,
    [
      bar(60, 84, 480, 18, 'url:wood'),
      bar(110, 20, 60, 64, TIMBER),
      bar(430, 20, 60, 64, TIMBER),
      solid(heap, 'url:mortar'),
      bar(650, 190, 190, 10, STEEL),
      solid([[672, 200], ...arc(745, 200, 73, Math.PI, 0, 52)], 'url:mortar'),
      ...handle([745, 188], [745, 90], 30),
    ],
    ['mortarboard', [300, 260], [300, 150]],
    ['hawk, held in the hand', [660, 400], [720, 240]],
  ),
  retemper: sketch(
    900,
    [
      bar(60, 40, 480, 18, 'url:wood'),
      solid([[150, 58], ...arc(300, 58, 150, Math.PI, 0, 92)], 'url:mortar'),
      ...[250, 300, 350].map((x) =>
        solid([[x, 262], ...arc(x, 226, 15, -0.4, Math.PI + 0.4 - 2 * Math.PI, 17)], '#6f9cc0'),
      ),
    ],
    ['a little water', [560, 330], [366, 232]],
    ['mortar', [620, 130], [420, 110]],
  ),
  authority: sketch(
    400,
    [
      bar(140, 20, 120, 150, '#f4efe2'),
      bar(140, 142, 120, 28, '#d8cfb8'),
      lines([ring(154, 124, 246, 124), ring(154, 106, 246, 106), ring(154, 88, 220, 88)], {
        paint: '#77746c',
        width: 3,
      }),
      outlined(round(226, 50, 22)),
      chalk([214, 50], [223, 41], [240, 62]),
    ],
    ['permit', [96, 156], [146, 156]],
    ['inspected', [290, 50], [248, 50]],
  ),
  'hold-point': sketch(
    2600,
    [
      bar(60, 60, 2480, 1040, '#cdb48a'),
      rect({ x: 60, y: 60, width: 2480, height: 1040 }, 'url:wood', 0.35),
      ...Array.from({ length: 6 }, (_, index) => {
        const x = 300 + index * 400;
        return [dashed([x, 60], [x, 1100]), ...[300, 700].map((low) => bar(x - 14, low, 28, 110, STEEL))];
      }).flat(),
      ...brickwork(runningBond(60, 2540, 3, 70)),
    ],
    ['look, and photograph the ties', [1300, 1200], [1300, 900]],
    ['brick will cover them', [1300, 560], [1300, 270]],
  ),
};
