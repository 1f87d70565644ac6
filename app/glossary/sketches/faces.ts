import {
  box,
  CHALK,
  filled,
  label,
  MORTAR,
  path,
  placeInWall,
  ringed,
  SHEET,
  smallWall,
  unit,
} from './strokes';

function around(course: number, place: number): string {
  const at = placeInWall(course, place);
  return ringed(at.x - 6, at.y - 6, at.width + 12, at.height + 12);
}

/** Two units and the joint between them, cut through; `face` is the line of the mortar's face. */
function joint(face: string): string {
  return [
    unit(140, 30, 240, 96, 0),
    unit(140, 176, 240, 96, 1),
    filled(`M140 126 L380 126 ${face} L380 176 L140 176 Z`, MORTAR),
  ].join('');
}

const FREE_END = box(470, 0, 130, 292, '#dfe6e8');

/** Words that show on the face of a wall. */
export const FACES: Readonly<Record<string, readonly string[]>> = {
  arris: [
    filled('M120 120 L400 120 L470 70 L190 70 Z', '#b66547'),
    filled('M120 120 L400 120 L400 240 L120 240 Z', '#a4503a'),
    filled('M400 120 L470 70 L470 190 L400 240 Z', '#81392f'),
    path('M120 120 L400 120 M400 120 L470 70 M400 120 L400 240', CHALK, 5),
    label('arris', 490, 130, [404, 170]),
  ],
  bond: [
    smallWall(),
    path(`M${placeInWall(2, 2).x - 4} 128 L${placeInWall(2, 2).x - 4} 208`, CHALK, 5),
    around(3, 2),
    label('each unit laps', 20, 30, [placeInWall(3, 2).x + 10, placeInWall(3, 2).y]),
  ],
  bloom: [
    smallWall(),
    ...[
      [120, 120],
      [210, 150],
      [300, 110],
      [360, 170],
      [180, 200],
    ].map(([x = 0, y = 0]) => `<ellipse cx="${x}" cy="${y}" rx="60" ry="22" fill="#ffffff" opacity="0.55"/>`),
    label('white salt', 430, 40, [330, 112]),
  ],
  closer: [
    smallWall(),
    FREE_END,
    ...[1, 3, 5].map((course) => {
      const { y } = placeInWall(course, 0);
      return box(420, y, 50, 34, MORTAR) + unit(440, y, 30, 34, course) + ringed(436, y - 4, 38, 42);
    }),
    label('closers', 500, 150, [472, placeInWall(3, 0).y + 16]),
  ],
  sliver: [
    smallWall(),
    FREE_END,
    box(452, placeInWall(2, 0).y, 18, 34, '#81392f') + ringed(446, placeInWall(2, 0).y - 6, 30, 46),
    label('sliver', 500, 90, [474, placeInWall(2, 0).y + 10]),
  ],
  jamb: [
    smallWall(),
    box(240, 60, 200, 232, '#dfe6e8'),
    path('M240 60 L240 292 M440 60 L440 292', CHALK, 6),
    label('jamb', 300, 150, [242, 170]),
    label('jamb', 330, 220, [438, 230]),
  ],
  'movement-joint': [
    smallWall(),
    box(290, 30, 14, 262, '#6d6a63'),
    ringed(282, 26, 30, 268),
    label('soft joint', 400, 24, [298, 60]),
  ],
  spall: [
    smallWall(),
    filled(
      `M${placeInWall(2, 2).x + 8} ${placeInWall(2, 2).y + 6} l50 -4 l18 14 l-10 14 l-40 2 Z`,
      '#d08a6b',
    ),
    around(2, 2),
    label('flake gone', 430, 40, [placeInWall(2, 2).x + 50, placeInWall(2, 2).y]),
  ],
  weep: [
    smallWall(),
    ...[1, 3, 5].map((place) => box(placeInWall(0, place).x - 8, 250, 8, 34, '#1d1715')),
    path('M0 288 L600 288', '#59646b', 4),
    label('weeps', 460, 30, [placeInWall(0, 5).x - 4, 252]),
    label('flashing', 20, 30, [60, 288]),
  ],
  'concave-joint': [joint('Q352 151 380 176'), label('smooth hollow', 420, 156, [366, 151])],
  'raked-joint': [joint('L320 126 L320 176'), label('cut back', 420, 156, [322, 151])],
  tooling: [
    joint('Q352 151 380 176'),
    filled('M366 138 L520 96 L530 116 L372 164 Z', '#59646b'),
    label('jointing iron', 430, 60, [470, 108]),
  ],
  furrow: [
    unit(60, 180, 480, 90, 0),
    filled('M60 180 L60 140 Q150 96 250 140 Q300 176 350 140 Q450 96 540 140 L540 180 Z', MORTAR),
    label('furrow', 330, 60, [300, 152]),
    label('bed of mortar', 40, 100, [150, 126]),
  ],
  'back-butter': [
    box(120, 70, 300, 160, '#9a4733', 'rx="3"'),
    filled('M132 82 Q270 60 408 82 L408 218 Q270 236 132 218 Z', MORTAR),
    path(
      'M160 110 q60 14 120 0 t110 0 M160 150 q60 14 120 0 t110 0 M160 190 q60 14 120 0 t110 0',
      '#b5ad9d',
      4,
    ),
    filled('M430 130 L520 100 L540 150 Z', '#8c979f'),
    path('M530 126 L580 110', '#7a4f2c', 12),
    label('back of the unit', 20, 280, [150, 222]),
  ],
  lead: [
    box(0, 276, SHEET.width, 16, MORTAR),
    ...[0, 1, 2, 3, 4].flatMap((course) =>
      Array.from({ length: 4 - Math.ceil(course * 0.8) + (course === 4 ? 1 : 0) }, (_, at) => [
        unit(
          30 + at * 62 - (course % 2) * 0,
          246 - course * 34,
          course % 2 === 1 && at === 0 ? 28 : 56,
          28,
          course + at,
        ),
        unit(514 - at * 62, 246 - course * 34, 56, 28, course * 2 + at),
      ]).flat(),
    ),
    path('M30 242 L570 242', CHALK, 3),
    label('line', 280, 200, [300, 242]),
    label('lead', 180, 80, [100, 130]),
  ],
};
