import { box, CHALK, filled, label, MORTAR, path, STEEL, smallWall, unit, WOOD } from './strokes';

const BOB = filled('M288 190 L312 190 L312 214 L300 250 L288 214 Z', STEEL);

/** Tools, and what is done with them. */
export const TOOLS: Readonly<Record<string, readonly string[]>> = {
  batch: [
    ...[0, 1].map((at) =>
      box(60 + at * 90, 180, 76, 76, at === 0 ? '#9aa0a3' : '#ece8de', 'stroke="#59646b" stroke-width="3"'),
    ),
    ...[0, 1, 2, 3].map((at) =>
      box(260 + (at % 2) * 90, at < 2 ? 180 : 96, 76, 76, '#d8bb84', 'stroke="#59646b" stroke-width="3"'),
    ),
    label('cement', 30, 150, [96, 186]),
    label('lime', 170, 60, [190, 186]),
    label('sand', 480, 90, [420, 130]),
  ],
  'gauge-rod': [
    smallWall(),
    box(500, 10, 34, 282, WOOD),
    ...[0, 1, 2, 3, 4, 5].map((course) =>
      path(`M500 ${246 - course * 42} L534 ${246 - course * 42}`, CHALK, 4),
    ),
    label('mark of a course', 300, 26, [512, 36]),
  ],
  level: [
    box(80, 120, 440, 60, '#b57a12', 'rx="6"'),
    box(250, 132, 100, 36, '#d7e6b0', 'rx="16"'),
    `<ellipse cx="300" cy="146" rx="22" ry="9" fill="#f7fbe9" stroke="#4f6b3a" stroke-width="2"/>`,
    path('M276 132 L276 168 M324 132 L324 168', '#22272b', 3),
    label('bubble in the middle', 330, 80, [304, 142]),
    box(60, 184, 480, 30, '#9a4733'),
  ],
  line: [
    smallWall(4),
    path('M20 116 L580 116', CHALK, 4),
    box(4, 100, 22, 34, WOOD),
    box(574, 100, 22, 34, WOOD),
    label('line', 280, 70, [300, 116]),
    label('block', 40, 40, [16, 104]),
  ],
  tingle: [
    smallWall(4),
    path('M20 116 L580 116', CHALK, 4),
    box(270, 108, 60, 8, '#8c979f'),
    unit(262, 70, 76, 30, 2),
    path('M300 100 L300 116', '#8c979f', 6),
    label('holds up the middle', 380, 50, [330, 112]),
  ],
  'plumb-bob': [
    path('M300 20 L300 190', CHALK, 3),
    BOB,
    box(180, 10, 240, 14, WOOD),
    label('string', 400, 110, [302, 110]),
    label('weight', 400, 230, [310, 222]),
  ],
  straightedge: [
    path(
      'M60 200 C 200 200 260 150 330 150 C 400 150 460 200 540 200 L540 280 L60 280 Z',
      '#81392f',
      3,
      'fill="#9a4733"',
    ),
    filled('M70 132 L550 144 L549 156 L69 144 Z', '#8c979f'),
    label('true bar', 60, 100, [140, 138]),
    label('gap', 480, 110, [520, 170]),
  ],
  'hold-point': [
    box(60, 30, 480, 250, '#a98250'),
    ...[0, 1, 2, 3, 4].map((at) => box(80 + at * 104, 30, 22, 250, WOOD)),
    ...[0, 1, 2].flatMap((row) =>
      [0, 1, 2, 3, 4].map((at) => path(`M${91 + at * 104} ${80 + row * 80} l0 16`, STEEL, 7)),
    ),
    path(
      'M180 60 L180 30 L210 30 M420 60 L420 30 L390 30 M180 250 L180 280 L210 280 M420 250 L420 280 L390 280',
      CHALK,
      6,
    ),
    label('look and take a picture first', 20, 22, [300, 60]),
  ],
  retemper: [
    filled('M120 230 Q200 150 300 170 Q400 150 480 230 Z', MORTAR),
    box(90, 230, 420, 16, WOOD),
    ...[0, 1, 2].map((at) => filled(`M${260 + at * 40} 80 q-14 26 0 34 q14 -8 0 -34 Z`, CHALK)),
    label('water', 420, 90, [346, 100]),
    label('mortar on its board', 30, 290, [200, 210]),
  ],
};
