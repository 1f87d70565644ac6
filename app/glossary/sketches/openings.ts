import { box, CHALK, CONCRETE, column, filled, label, MORTAR, path, smallWall, WOOD } from './strokes';

const MIDDLE = { x: 300, y: 250 };
const INSIDE = 120;
const OUTSIDE = 190;
const WEDGES = 11;

function pointAt(radius: number, turn: number): string {
  return `${(MIDDLE.x + radius * Math.cos(turn)).toFixed(1)} ${(MIDDLE.y - radius * Math.sin(turn)).toFixed(1)}`;
}

/** Wedges of a half round arch, the key ringed. */
function ring(): string {
  const each = Math.PI / WEDGES;
  return Array.from({ length: WEDGES }, (_, at) => {
    const from = at * each + 0.02;
    const to = (at + 1) * each - 0.02;
    const edge = `M${pointAt(INSIDE, from)} L${pointAt(OUTSIDE, from)} L${pointAt(OUTSIDE, to)} L${pointAt(INSIDE, to)} Z`;
    const isKey = at === (WEDGES - 1) / 2;
    return filled(edge, at % 2 === 0 ? '#a4503a' : '#ae5a41') + (isKey ? path(edge, CHALK, 5) : '');
  }).join('');
}

const ARCH = [
  filled(
    `M${pointAt(OUTSIDE, 0)} A${OUTSIDE} ${OUTSIDE} 0 0 0 ${pointAt(OUTSIDE, Math.PI)} L${pointAt(INSIDE, Math.PI)} A${INSIDE} ${INSIDE} 0 0 1 ${pointAt(INSIDE, 0)} Z`,
    MORTAR,
  ),
  ring(),
  box(100, 250, 84, 40, '#9a4733'),
  box(416, 250, 84, 40, '#9a4733'),
].join('');

/** Words of openings, of corners and of the top of a wall. */
export const OPENINGS: Readonly<Record<string, readonly string[]>> = {
  arch: [ARCH, label('key', 400, 40, [304, 74]), label('wedge-shaped unit', 20, 50, [210, 120])],
  centering: [
    filled(
      `M${pointAt(INSIDE - 6, 0)} A${INSIDE - 6} ${INSIDE - 6} 0 0 0 ${pointAt(INSIDE - 6, Math.PI)} Z`,
      WOOD,
    ),
    box(200, 250, 14, 46, WOOD),
    box(386, 250, 14, 46, WOOD),
    ARCH,
    label('wooden frame', 20, 60, [262, 190]),
  ],
  sill: [
    box(150, 10, 120, 130, '#dfe6e8', 'stroke="#8d7a63" stroke-width="6"'),
    box(150, 190, 120, 110, WOOD),
    filled('M140 146 L400 178 L400 200 L384 200 L384 194 L140 170 Z', CONCRETE),
    column(300, 300, 2, 60),
    label('slopes away', 380, 110, [330, 166]),
    label('drip', 470, 240, [392, 202]),
  ],
  gable: [
    filled('M90 290 L90 150 L300 30 L510 150 L510 290 Z', '#a4503a'),
    ...[60, 90, 120, 150, 180, 210, 240, 270].map((y) =>
      path(
        `M${y < 150 ? 300 - ((y - 30) * 210) / 120 : 90} ${y} L${y < 150 ? 300 + ((y - 30) * 210) / 120 : 510} ${y}`,
        MORTAR,
        3,
      ),
    ),
    path('M70 162 L300 24 L530 162', '#59646b', 12),
    path('M110 150 L300 42 L490 150 Z', CHALK, 5),
    label('gable', 470, 60, [360, 110]),
  ],
  return: [
    filled('M60 80 L330 110 L330 280 L60 260 Z', '#a4503a'),
    filled('M330 110 L480 70 L480 230 L330 280 Z', '#81392f'),
    ...[1, 2, 3, 4, 5].map((at) =>
      path(`M60 ${80 + at * 30} L330 ${110 + at * 28} L480 ${70 + at * 27}`, MORTAR, 3),
    ),
    path('M330 110 L480 70 L480 230 L330 280 Z', CHALK, 5),
    label('return', 500, 40, [430, 100]),
    label('long wall', 100, 50, [180, 110]),
  ],
  scaffold: [
    smallWall(5),
    ...[120, 320, 520].map((x) => path(`M${x} 20 L${x} 290`, '#59646b', 7)),
    box(90, 130, 460, 12, WOOD),
    path('M120 90 L520 90', '#59646b', 5),
    label('boards', 360, 60, [400, 132]),
  ],
  crack: [
    smallWall(5),
    path(
      'M200 292 L200 250 L247 248 L247 208 L294 206 L294 166 L341 164 L341 124 L388 122 L388 82',
      '#1d1715',
      4,
    ),
    label('steps along the joints', 60, 40, [294, 180]),
  ],
  square: [
    path('M120 250 L480 250', '#a4503a', 26),
    path('M120 250 L120 40', '#a4503a', 26),
    path('M120 250 L400 250 L120 40 Z', CHALK, 4),
    path('M120 220 L150 220 L150 250', CHALK, 4),
    label('four parts', 240, 290, [260, 252]),
    label('three', 20, 30, [118, 120]),
    label('five', 320, 110, [266, 150]),
  ],
  'bee-holes': [
    smallWall(5),
    ...[
      [154, 210],
      [154, 234],
      [295, 168],
      [295, 192],
      [342, 126],
    ].map(([x = 0, y = 0]) => box(x, y, 5, 8, '#1d1715', 'rx="2"')),
    label('small dark holes', 400, 40, [346, 128]),
  ],
};
