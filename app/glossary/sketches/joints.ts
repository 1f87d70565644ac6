import {
  box,
  CHALK,
  filled,
  joint,
  label,
  MORTAR,
  path,
  SHEET,
  STEEL,
  smallWall,
  unit,
  WOOD,
} from './strokes';

/** Words of joints, of mortar and of the line. */
export const JOINTS: Readonly<Record<string, readonly string[]>> = {
  'flush-joint': [joint('L380 126 L380 176'), label('level with the face', 400, 110, [380, 150])],
  'weathered-joint': [joint('L360 126 L380 176'), label('slopes out', 400, 110, [370, 148])],
  pointing: [
    joint('L330 126 L330 176'),
    filled('M330 130 L350 130 L350 174 L330 174 Z', '#efe9dc'),
    filled('M352 142 L560 118 L560 132 L352 158 Z', STEEL),
    label('new mortar', 420, 230, [342, 166]),
  ],
  mortar: [
    unit(60, 190, 480, 80, 0),
    filled('M60 190 L60 164 Q150 150 300 162 Q450 150 540 164 L540 190 Z', MORTAR),
    unit(160, 84, 240, 78, 2),
    label('mortar', 460, 110, [470, 166]),
  ],
  'line-block': [
    smallWall(4),
    path('M40 116 L600 116', CHALK, 4),
    filled('M4 96 L40 96 L40 136 L22 136 L22 120 L4 120 Z', WOOD),
    label('block, held by the pull', 90, 60, [38, 104]),
  ],
  'line-pin': [
    smallWall(4),
    path('M60 132 L600 116', CHALK, 4),
    filled('M20 128 L86 132 L86 140 L20 144 Z', STEEL),
    label('steel pin in a joint', 120, 60, [70, 132]),
  ],
  trowel: [
    filled('M120 150 L300 80 L340 150 L300 220 Z', STEEL),
    path('M340 150 L400 150 L420 120', '#3c464d', 9),
    path('M420 120 L560 110', '#7a4f2c', 24),
    label('blade', 160, 60, [240, 120]),
    label('point', 30, 220, [126, 152]),
  ],
  mortarboard: [
    box(80, 190, 440, 16, WOOD),
    filled('M170 190 Q230 100 310 112 Q390 104 430 190 Z', MORTAR),
    path('M150 206 L150 270 M450 206 L450 270', WOOD, 14),
    label('board', 500, 160, [480, 192]),
  ],
  jointer: [
    path('M80 190 Q200 230 330 190 L380 150', STEEL, 14),
    path('M380 150 L520 110', '#7a4f2c', 26),
    label('round bar', 120, 120, [200, 206]),
    label('handle', 440, 60, [470, 118]),
  ],
  range: [
    ...[0, 1, 2, 3, 4].map((at) => unit(60 + at * 96, 120 + (at === 2 ? 26 : 0), 88, 60, at)),
    path('M40 180 L560 180', CHALK, 4, 'fill="none" stroke-dasharray="10 8"'),
    box(0, 0, SHEET.width, 4, '#f4f0e8'),
    label('seen from above', 40, 60, [120, 122]),
    label('out of line', 330, 260, [300, 206]),
  ],
};
