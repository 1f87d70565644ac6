import { box, CHALK, CONCRETE, column, filled, label, MORTAR, path, STEEL, unit, WOOD } from './strokes';

const BACKING = box(150, 10, 46, 250, WOOD) + box(196, 10, 10, 250, '#a98250');
const FOUNDATION =
  filled('M120 260 L340 260 L340 300 L120 300 Z', CONCRETE) + path('M120 260 L340 260', '#7d7a73', 2);
const TIES =
  path('M200 176 L212 176 L212 181 L290 181', STEEL, 5) + path('M200 92 L212 92 L212 97 L290 97', STEEL, 5);
/** A house wall cut through: frame, boards, air, brick on its ledge. */
const VENEER = BACKING + FOUNDATION + column(250, 260, 6) + TIES;

const LEDGE = (out: number) =>
  filled('M150 180 L330 180 L330 300 L150 300 Z', CONCRETE) + column(260 + out, 180, 4, 80);

/** Words that show when a wall is cut through. */
export const SECTIONS: Readonly<Record<string, readonly string[]>> = {
  'anchored-veneer': [
    VENEER,
    label('frame of the house', 380, 60, [190, 60]),
    label('tie', 440, 120, [270, 97]),
    label('brick', 440, 190, [300, 160]),
    label('ledge', 440, 270, [290, 266]),
  ],
  'adhered-veneer': [
    box(170, 10, 40, 280, WOOD),
    box(210, 10, 12, 280, '#8f8b84'),
    box(222, 10, 12, 280, MORTAR),
    ...[0, 1, 2, 3, 4].map((at) => unit(234, 14 + at * 56, 26, 48, at)),
    label('mortar', 380, 90, [228, 90]),
    label('thin unit', 380, 170, [248, 150]),
    label('base coat', 380, 240, [216, 240]),
  ],
  'air-space': [
    VENEER,
    path('M228 40 L228 250', CHALK, 22, 'fill="none" opacity="0.35"'),
    label('air space', 400, 140, [228, 140]),
  ],
  wythe: [
    VENEER,
    box(246, 8, 64, 254, 'none', `stroke="${CHALK}" stroke-width="4" rx="6"`),
    label('one wythe', 400, 120, [310, 120]),
  ],
  flashing: [
    VENEER,
    path('M206 180 L206 246 L318 256', CHALK, 6),
    path('M316 256 L328 264', CHALK, 6),
    label('flashing', 400, 200, [262, 251]),
    label('water runs out', 400, 282, [330, 266]),
  ],
  overhang: [
    LEDGE(30),
    path('M330 190 L330 230 M370 190 L370 230', CHALK, 3),
    path('M330 216 L370 216', CHALK, 3),
    label('overhang', 430, 260, [352, 216]),
  ],
  bearing: [
    LEDGE(30),
    path('M290 190 L290 230 M330 190 L330 230', CHALK, 3),
    path('M290 216 L330 216', CHALK, 3),
    label('bearing', 60, 260, [308, 216]),
  ],
  'shelf-angle': [
    box(120, 10, 90, 280, CONCRETE),
    column(240, 130, 2),
    column(240, 290, 3),
    path('M214 96 L214 150 L290 150', CHALK, 9),
    path('M196 124 L216 124', STEEL, 8),
    label('shelf angle', 400, 190, [284, 151]),
    label('soft joint below', 400, 240, [280, 160]),
  ],
  lintel: [
    box(60, 40, 480, 120, MORTAR),
    ...[0, 1, 2].flatMap((course) =>
      [0, 1, 2, 3, 4, 5].map((at) =>
        unit(60 + at * 82 - (course % 2) * 20, 44 + course * 39, 74, 32, at + course * 2),
      ),
    ),
    box(0, 40, 60, 250, '#f4f0e8'),
    box(60, 160, 110, 130, '#a4503a'),
    box(430, 160, 110, 130, '#9a4733'),
    box(170, 168, 260, 122, '#dfe6e8'),
    box(120, 158, 360, 10, CHALK),
    label('lintel', 260, 220, [300, 166]),
  ],
  'end-dam': [
    filled('M80 250 L440 250 L500 210 L140 210 Z', '#9fb0bd'),
    filled('M440 250 L500 210 L500 130 L440 170 Z', CHALK),
    path('M140 210 L140 90 L500 90 L500 210', '#7f8d98', 3),
    label('end dam', 300, 150, [470, 170]),
  ],
  'scratch-coat': [
    box(120, 20, 360, 260, '#b9b1a3'),
    ...[0, 1, 2, 3, 4, 5, 6].map((at) =>
      path(`M130 ${52 + at * 34} q45 -10 90 0 t90 0 t90 0 t70 0`, '#8b8376', 5),
    ),
    label('scratches', 20, 290, [180, 222]),
  ],
  bulge: [
    path('M300 20 C 300 90 340 130 340 160 C 340 200 300 230 300 285', '#9a4733', 40),
    path('M318 20 L318 285', CHALK, 4, 'fill="none" stroke-dasharray="10 8"'),
    label('bulge', 440, 150, [362, 160]),
    label('true plane', 60, 60, [318, 60]),
  ],
  plumb: [
    box(200, 40, 60, 240, '#9a4733'),
    path('M150 20 L150 230', CHALK, 3),
    filled('M140 230 L160 230 L150 262 Z', STEEL),
    path('M360 280 L400 40', '#9a4733', 58),
    path('M470 20 L470 230', CHALK, 3),
    filled('M460 230 L480 230 L470 262 Z', STEEL),
    label('plumb', 20, 150, [200, 150]),
    label('leans', 500, 110, [410, 110]),
  ],
  proud: [
    box(200, 20, 70, 80, '#a4503a'),
    box(224, 108, 70, 80, '#ae5a41'),
    box(200, 196, 70, 80, '#934031'),
    box(200, 100, 66, 8, MORTAR),
    box(200, 188, 66, 8, MORTAR),
    path('M270 20 L270 276', CHALK, 3, 'fill="none" stroke-dasharray="8 8"'),
    label('proud', 400, 150, [294, 150]),
    label('seen from the side', 360, 60, [272, 60]),
  ],
};
