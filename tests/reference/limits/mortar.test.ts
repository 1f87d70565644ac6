import { describe, expect, test } from 'vitest';
import { boundAt } from '../../../lib/limits/bound';
import { limitOf, namedLimitOf } from '../../../lib/limits/limits';
import { mortarTypesOf } from '../../../lib/limits/mortar';

const NONE: readonly string[] = [];

// ASTM C270 as IRC Table R606.2.8 prints it, sand 2 1/4 to 3 times; NBC Table 9.20.3.2.-B, which has no such ratio but ranges of sand.
describe('cement, lime and sand by volume', () => {
  test.each<
    [
      portland: number,
      lime: number,
      sand: number,
      ratio: number,
      c270: readonly string[],
      nbc: readonly string[],
    ]
  >([
    [1, 0.25, 3.5, 2.8, ['M'], NONE],
    [1, 0.5, 4.5, 3, ['S'], ['S']],
    [1, 0.5, 3.375, 2.25, ['S'], NONE],
    [1, 0.5, 3.5, 2.333, ['S'], ['S']],
    [1, 1, 6, 3, ['N'], ['N']],
    [1, 1, 4.5, 2.25, ['N'], ['N']],
    [1, 1, 6.5, 3.25, NONE, NONE],
    [1, 1, 4.25, 2.125, NONE, NONE],
    [1, 2, 9, 3, ['O'], NONE],
    [1, 3, 12, 3, NONE, NONE],
    [1, 0.51, 4.5, 2.98, ['N'], NONE],
    [2, 1, 9, 3, ['S'], ['S']],
    [3, 3, 18, 3, ['N'], ['N']],
    [1, 0, 3, 3, NONE, NONE],
    [0, 1, 3, 3, NONE, NONE],
  ])('%d : %d : %d, ratio %d: C270 %j, NBC %j', (portland, lime, sand, ratio, c270, nbc) => {
    expect(sand / (portland + lime)).toBeCloseTo(ratio, 2);
    const mix = { portland, lime, sand };
    expect(mortarTypesOf('united-states', mix)).toEqual(c270);
    expect(mortarTypesOf('canada', mix)).toEqual(nbc);
    expect(mortarTypesOf('ontario', mix)).toEqual(nbc);
  });

  test.each<[portland: number, name: string, sand: number, c270: readonly string[], nbc: readonly string[]]>([
    [0, 'masonry cement N', 3, ['N', 'O'], ['N']],
    [0, 'masonry cement S', 3, ['S'], ['S']],
    [0, 'masonry cement S', 2, NONE, NONE],
    [0.5, 'masonry cement N', 4.5, ['S'], ['S']],
    [0.5, 'masonry cement N', 3.375, ['S'], NONE],
    [1, 'masonry cement N', 6, ['M'], NONE],
    [0, 'mortar cement M', 3, ['M'], NONE],
    [0, 'mortar cement N', 2.25, ['N', 'O'], NONE],
  ])('%d Portland, 1 %s, %d sand: C270 %j, NBC %j', (portland, name, sand, c270, nbc) => {
    const mix = { portland, lime: 0, sand, masonryCement: { name, volume: 1 } };
    expect(mortarTypesOf('united-states', mix)).toEqual(c270);
    expect(mortarTypesOf('canada', mix)).toEqual(nbc);
  });

  test('the United Kingdom has no such table here', () => {
    expect(mortarTypesOf('united-kingdom', { portland: 1, lime: 1, sand: 6 })).toEqual([]);
  });
});

// The most sand of the NBC table: S 4.5 to 1.5, N 6 to 2; of C270: three times.
test.each(['canada', 'ontario', 'united-states', 'united-kingdom', 'good-practice'] as const)(
  '%s: three volumes of sand at most',
  (rules) => {
    const limit = limitOf(rules, 'sand-ratio');
    if (limit === undefined) throw new Error('no sand ratio');
    expect(boundAt(limit, {})).toBe(3);
  },
);

// ASTM C270 property table in a trade magazine of October 2000: 2500, 1800, 750 and 350 psi.
test.each([
  ['m', 17.2],
  ['s', 12.4],
  ['n', 5.2],
  ['o', 2.4],
])('strength of type %s: %d MPa', (type, strength) => {
  const limit = namedLimitOf('united-states', `mortar-strength-${type}`);
  if (limit === undefined) throw new Error('no strength');
  expect(boundAt(limit, {})).toBe(strength);
});
