import { expect, test } from 'vitest';
import { laidWall } from '../../app/server/laid-walls';
import { type Brief, parseBrief } from '../../lib/generate/brief';
import { layWall } from '../../lib/generate/generate';
import { inspect } from '../../lib/inspect/inspect';
import { fingerprintOf } from '../../lib/wall/print';

const briefOf = (seed: number): Brief =>
  parseBrief({ topic: 'mixed', kind: 'plain-panel', difficulty: 2, rules: 'canada', seed });

test('a kept wall is the wall of its own brief, with its own hash and key, also when more are asked for than are kept', () => {
  for (const seed of [...Array(130).keys(), 0, 129, 64, 1]) {
    const laid = laidWall(briefOf(seed), 'canada');
    const wall = layWall(briefOf(seed));
    expect(laid.fingerprint).toBe(fingerprintOf(wall));
    expect(laid.findings).toEqual(inspect(wall, 'canada'));
  }
});

test('one wall judged by two rule sets has the key of each', () => {
  const uk = laidWall(briefOf(3), 'united-kingdom');
  const canada = laidWall(briefOf(3), 'canada');
  expect(uk.findings).toEqual(inspect(uk.wall, 'united-kingdom'));
  expect(canada.findings).toEqual(inspect(canada.wall, 'canada'));
});
