import { expect, test } from 'vitest';
import type { Shape } from '../../../lib/drawing/shape';
import { spacingDimensions } from '../../../lib/views/behind/tie-spacing';
import type { Tie } from '../../../lib/wall/model';
import { surveyOf } from '../../../lib/wall/survey';
import { HAND_TIE, handWall } from './hand-wall';

const tie = (id: Tie['id'], course: number, x: number, y: number): Tie => ({ ...HAND_TIE, id, course, x, y });
/** A column at 100 with ties 140 and 70 apart, and a second tie in its lowest row, 310 to the right. */
const TIES = [
  tie('A-tie1.1', 1, 100, 75),
  tie('A-tie1.2', 1, 410, 75),
  tie('A-tie3.1', 3, 100, 215),
  tie('A-tie4.1', 4, 100, 285),
];
const rings = (shape: Shape | undefined) => (shape?.kind === 'area' ? shape.rings : []);

test('the widest spacing up and along is dimensioned from tie to tie, clear of the straps, with strokes of four tenths of the text', () => {
  const { shapes, labels } = spacingDimensions(
    surveyOf(handWall({ ties: TIES })).panels,
    [{ panel: 'A', x: 1000 }],
    50,
    'mm',
  );
  const [, up, , along] = shapes;
  // A text's height of 50 to the right of the column: 1000 + 100 + 50; strokes of 20 either way.
  expect(rings(up)).toEqual([
    [
      [1150, 75],
      [1150, 215],
    ],
    [
      [1130, 75],
      [1170, 75],
    ],
    [
      [1130, 215],
      [1170, 215],
    ],
  ]);
  // Half of that over the row: 75 + 25.
  expect(rings(along)).toEqual([
    [
      [1100, 100],
      [1410, 100],
    ],
    [
      [1100, 80],
      [1100, 120],
    ],
    [
      [1410, 80],
      [1410, 120],
    ],
  ]);
  expect(labels.map(({ text }) => text)).toEqual(['140 mm', '310 mm']);
});
