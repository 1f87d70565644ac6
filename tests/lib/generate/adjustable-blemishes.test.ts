import { expect, test } from 'vitest';
import { blemishChoices } from '../../../lib/drills/build/blemish-choices';
import { withBlemish } from '../../../lib/generate/adjustable/blemished-wall';
import { layTrue } from '../../../lib/generate/adjustable/true-wall';
import { inspect } from '../../../lib/inspect/inspect';
import { CONDITIONS, WALL_KINDS } from '../../../lib/wall/model';
import { parseWall } from '../../../lib/wall/schema';

test.each(WALL_KINDS)('a few units of a %s bear the mark, in several courses, and it stays sound', (kind) => {
  const wall = layTrue(kind, 'anchored', 'canada');
  const marked = withBlemish(wall, 'flake');
  const bearing = marked.units.filter(({ condition }) => condition === 'flake');
  expect(bearing.length).toBeGreaterThanOrEqual(5);
  expect(bearing.length).toBeLessThan(wall.units.length / 10);
  expect(bearing.every(({ panel, kind: piece }) => panel === 'A' && piece === 'stretcher')).toBe(true);
  expect(new Set(bearing.map(({ course }) => course)).size).toBeGreaterThanOrEqual(4);
  expect(inspect(marked, 'canada')).toEqual([]);
  expect(parseWall(marked)).toEqual(marked);
});

test('with nothing chosen the wall is the same one', () => {
  const wall = layTrue('plain-panel', 'adhered', 'canada');
  expect(withBlemish(wall, 'sound')).toBe(wall);
});

test('every mark can be chosen, the gravest last, and chips have the British figure', () => {
  const choices = blemishChoices('mm');
  expect(choices.map(({ condition }) => condition).sort()).toEqual(
    [...CONDITIONS].filter((each) => each !== 'sound').sort(),
  );
  expect(choices.at(-1)).toMatchObject({
    condition: 'flake',
    tells: 'could be loose, so have it looked at',
    figure: null,
  });
  // NHBC Standards 2019, 9.1.2.
  expect(choices.find(({ condition }) => condition === 'chip')?.figure).toMatch(/at most 15 mm.*9\.1\.2/i);
});
