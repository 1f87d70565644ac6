import { describe, expect, test } from 'vitest';
import { type Corners, cornersOf } from '../../../lib/photo/homography';
import { measurePhotograph } from '../../../lib/photo/measure';
import type { Picture } from '../../../lib/photo/picture';
import { chanceOf } from './chance';

const SIZE = 320;
const CORNERS: Corners = [
  { x: 20, y: 25 },
  { x: 305, y: 20 },
  { x: 302, y: 306 },
  { x: 22, y: 303 },
];

/** Grey pictures from a rule that gives each pixel its tone. */
function drawn(tone: (x: number, y: number) => number): Picture {
  const data = new Uint8Array(SIZE * SIZE * 4).fill(255);
  for (let y = 0; y < SIZE; y++) {
    for (let x = 0; x < SIZE; x++)
      data.fill(Math.max(0, Math.min(255, tone(x, y))), 4 * (y * SIZE + x), 4 * (y * SIZE + x) + 3);
  }
  return { width: SIZE, height: SIZE, data };
}

/** Stones that touch, dark where two are equally near: each pixel by its nearest of many middles. */
function gravel(seed: number): Picture {
  const chance = chanceOf(seed);
  const stones = Array.from(
    { length: 220 },
    () => [chance.even(0, SIZE), chance.even(0, SIZE), chance.even(90, 200)] as const,
  );
  return drawn((x, y) => {
    let [first, second, tone] = [Infinity, Infinity, 0];
    for (const [u, v, own] of stones) {
      const away = Math.hypot(u - x, v - y);
      if (away < first) [second, first, tone] = [first, away, own];
      else if (away < second) second = away;
    }
    return (second - first < 2 ? 50 : tone) + chance.normal(6);
  });
}

/** Blades from the ground up, each a light slanted stroke over the ones behind it. */
function grass(seed: number): Picture {
  const chance = chanceOf(seed);
  const tones = new Float32Array(SIZE * SIZE).fill(60);
  for (let blade = 0; blade < 1200; blade++) {
    const [foot, root, lean, tone] = [
      chance.even(0, SIZE),
      chance.even(0, SIZE + 60),
      chance.normal(0.3),
      chance.even(70, 190),
    ];
    const long = chance.even(20, 70);
    for (let up = 0; up < long; up++) {
      const [x, y] = [Math.round(foot + lean * up), Math.round(root - up)];
      if (x >= 0 && x < SIZE - 1 && y >= 0 && y < SIZE) tones.fill(tone, y * SIZE + x, y * SIZE + x + 2);
    }
  }
  return drawn((x, y) => (tones[y * SIZE + x] ?? 0) + chance.normal(5));
}

/** An oval with brows, eyes, nose and mouth, a little different by its seed. */
function face(seed: number): Picture {
  const chance = chanceOf(seed);
  const shift = chance.even(-20, 20);
  const parts = [
    [160 + shift, 166, 100, 133, 190],
    [120 + shift, 113, 27, 6, 70],
    [200 + shift, 113, 27, 6, 70],
    [120 + shift, 133, 20, 9, 60],
    [200 + shift, 133, 20, 9, 60],
    [160 + shift, 177, 12, 27, 165],
    [160 + shift, 233, 40, 9, 100],
  ] as const;
  return drawn((x, y) => {
    let tone = 110 + 0.1 * x;
    for (const [u, v, wide, high, own] of parts) {
      if (((x - u) / wide) ** 2 + ((y - v) / high) ** 2 < 1) tone = own + 0.05 * (x - y);
    }
    return tone + chance.normal(4);
  });
}

/** Boards one over the other, with a dark line under each and no upright joints. */
function boards(seed: number): Picture {
  const chance = chanceOf(seed);
  return drawn((_, y) => (y % 40 < 4 ? 80 : 190) + chance.normal(5));
}

function plain(seed: number): Picture {
  const chance = chanceOf(seed);
  return drawn((x) => 150 + 0.05 * x + chance.normal(5));
}

describe.each([
  ['gravel', gravel],
  ['grass', grass],
  ['a face', face],
  ['boards', boards],
  ['plain render', plain],
] as const)('%s is no masonry', (_, picture) => {
  test.each([1, 2, 3])('of seed %d', (seed) => {
    const shown = picture(seed);
    for (const size of [600, 1500]) {
      expect(() =>
        measurePhotograph(
          shown,
          { kind: 'rectangle', corners: CORNERS, width: size, height: size },
          { rules: 'canada' },
        ),
      ).toThrow(/^the picture: /);
    }
  });
});

describe('four points that are no rectangle seen from in front', () => {
  const spots = (...numbers: readonly number[]) =>
    [0, 2, 4, 6].map((at) => ({ x: numbers[at] ?? 0, y: numbers[at + 1] ?? 0 }));

  test.each([
    [
      'three in one line',
      spots(0, 0, 100, 0, 200, 0, 0, 200),
      /three of the four points lie as good as in one line/,
    ],
    [
      'all at one place',
      spots(5, 5, 5, 5, 5, 5, 5, 5),
      /three of the four points lie as good as in one line/,
    ],
    ['one inside the others', spots(0, 0, 200, 0, 60, 50, 0, 200), /must go round a rectangle/],
    ['the wrong way round', spots(0, 0, 0, 200, 200, 200, 200, 0), /must go round a rectangle/],
  ])('%s', (_, four, message) => {
    expect(() => cornersOf(four)).toThrow(message);
  });

  test('told row by row, they are put in order', () => {
    expect(cornersOf(spots(129, 72, 302, 76, 90, 185, 326, 193))).toEqual(
      spots(129, 72, 302, 76, 326, 193, 90, 185),
    );
  });
});
