import { expect, test } from 'vitest';
import { drawingOf } from '../../../lib/views/draw-view';
import { svgOf } from '../../../lib/views/print-svg';
import type { View } from '../../../lib/views/view';
import { quoinColours, unitColours } from '../../../lib/views/wall-colours';
import type { Wall } from '../../../lib/wall/model';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { handTall, handUnits, handWall } from './hand-wall';

const stone = (lot: number, other: Partial<Wall> = {}) =>
  handWall({ finish: 'squared stone', tone: { mortar: 0, lot }, ...other });

const STUCK: Partial<Wall> = { masonry: 'adhered', cavity: 0, supports: [], ties: [], flashings: [] };
const SPLIT = handUnits().map((unit) => ({ ...unit, texture: 'rock-face' as const }));

const reddish = (colour: string) => {
  const [r = 0, g = 0] = [1, 3].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
  return r > 1.35 * g;
};

test('stone has colours of its own, no brick red among them; so have quoins, whatever they stand beside', () => {
  for (const lot of [0, 1, 2, 3]) {
    expect(unitColours(stone(lot))).toHaveLength(8);
    expect(unitColours(stone(lot)).filter(reddish)).toEqual([]);
    for (const wall of [stone(lot), handWall({ tone: { mortar: 0, lot } })]) {
      expect(quoinColours(wall)).toHaveLength(8);
      expect(quoinColours(wall).filter(reddish)).toEqual([]);
      expect(quoinColours(wall).filter((colour) => unitColours(wall).includes(colour))).toEqual([]);
    }
  }
  expect(unitColours(handWall()).filter(reddish)).toHaveLength(8);
});

test('the finish decides, not how the wall stands nor how its faces are worked', () => {
  const isStone = (wall: Wall) => svgOf(surveyedWall(wall), { kind: 'front' }).includes('fill="#fff8e8"');
  expect(isStone(stone(0))).toBe(true);
  expect(isStone(stone(0, STUCK))).toBe(true);
  expect(isStone(handWall({ ...STUCK, units: SPLIT, tone: { mortar: 0, lot: 3 } }))).toBe(false);
  // A quoin is dressed in a wall of brick, too.
  expect(isStone(handTall())).toBe(true);
});

test.each<View>([
  { kind: 'side-section', panel: 'A', x: 310 },
  { kind: 'section', at: 'base' },
])('cut stone is hatched as stone: $kind', (view) => {
  const fills = (wall: Wall) => drawingOf(surveyedWall(wall), view, 'mm').shapes.map(({ fill }) => fill);
  expect(fills(stone(0))).toContain('url:cut-stone');
  expect(fills(stone(0))).not.toContain('url:cut-brick');
  expect(fills(handWall())).not.toContain('url:cut-stone');
});

test('still one path a unit; two more for all faces where they are split', () => {
  const paths = (wall: Wall) => svgOf(surveyedWall(wall), { kind: 'front' }).match(/<path/g)?.length ?? 0;
  expect(paths(stone(2, { units: SPLIT })) - paths(stone(2))).toBe(2);
  expect(svgOf(surveyedWall(stone(2)), { kind: 'front' }).match(/fill="url\(#unit\d[ab]\)"/g)).toHaveLength(
    14,
  );
});
