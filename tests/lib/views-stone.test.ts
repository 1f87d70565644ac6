import { expect, test } from 'vitest';
import { unitColours } from '../../lib/views/colours';
import { svgOf } from '../../lib/views/print-svg';
import { finishOf } from '../../lib/views/stone-faces';
import { handUnits, handWall } from './views-hand-wall';

const stuck = (lot: number, texture: 'smooth' | 'rock-face' = 'smooth') =>
  handWall({
    masonry: 'adhered',
    cavity: 0,
    supports: [],
    ties: [],
    tone: { mortar: 0, lot },
    units: handUnits().map((unit) => ({ ...unit, texture })),
  });

test.each([
  ['what stands on a ledge', handWall({ tone: { mortar: 0, lot: 3 } }), 'brick'],
  ['stuck on, first lots', stuck(1), 'brick'],
  ['stuck on, last lots', stuck(2), 'squared stone'],
  ['stuck on, split faces', stuck(0, 'rock-face'), 'squared stone'],
] as const)('%s: %s', (_, wall, finish) => {
  expect(finishOf(wall)).toBe(finish);
});

test('stone has colours of its own, no brick red among them', () => {
  const reddish = (colour: string) => {
    const [r = 0, g = 0] = [1, 3].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
    return r > 1.35 * g;
  };
  for (const lot of [2, 3]) {
    expect(unitColours(stuck(lot))).toHaveLength(8);
    expect(unitColours(stuck(lot)).filter(reddish)).toEqual([]);
  }
  expect(unitColours(stuck(0)).filter(reddish).length).toBe(8);
});

test('still one path a unit, and six more for all faces; two more where they are split', () => {
  const paths = (wall: ReturnType<typeof stuck>) =>
    svgOf(wall, { kind: 'front' }).match(/<path/g)?.length ?? 0;
  expect(paths(stuck(2, 'rock-face')) - paths(stuck(2))).toBe(2);
  expect(svgOf(stuck(2), { kind: 'front' }).match(/fill="url\(#unit\d[ab]\)"/g)).toHaveLength(14);
});
