import { expect, test } from 'vitest';
import { layWall } from '../../../lib/generate/generate';
import { inspect } from '../../../lib/inspect/inspect';
import { WALL_KINDS, type Wall } from '../../../lib/wall/model';
import { openingsUpOf } from '../../../lib/wall-page/open-wall';

/** Some 430 patches: a share of 95 % of a hundred would hang on two of them. */
const SEEDS = 46;
/** A patch is four courses high, so a searcher opens every fourth course. */
const ROWS = 4;

/** Units lifted by a searcher who spends the whole number evenly: along every fourth course, as close as it allows. */
function fairSearch(wall: Wall): ReadonlySet<string> {
  const most = openingsUpOf(wall);
  const rows = wall.panels.flatMap(({ id, courses }) =>
    Array.from({ length: Math.floor((courses - 1) / ROWS) }, (_, index) =>
      wall.units.filter((unit) => unit.panel === id && unit.course === (index + 1) * ROWS),
    ),
  );
  let lifted: ReadonlySet<string> = new Set();
  for (let step = 120; step >= 20; step--) {
    const tried = new Set(rows.flatMap((row) => everySo(row, step / 20)));
    if (tried.size > most) break;
    lifted = tried;
  }
  return lifted;
}

function everySo(row: Wall['units'], step: number): readonly string[] {
  return Array.from(
    { length: Math.ceil(row.length / step) },
    (_, index) => row[Math.floor((index + 0.5) * step)]?.id ?? [],
  ).flat();
}

test('spent evenly, the openings-up meet at least 95 % of the patches without mortar', () => {
  let walls = 0;
  let met = 0;
  for (const kind of WALL_KINDS) {
    for (const difficulty of [1, 3, 5]) {
      for (let seed = 0; seed < SEEDS; seed++) {
        const wall = layWall({ topic: 'back-mortar', kind, difficulty, rules: 'canada', seed });
        const patches = inspect(wall, 'canada').filter(({ check }) => check.includes('back'));
        const lifted = fairSearch(wall);
        for (const { parts } of patches) {
          walls++;
          if (parts.some((part) => lifted.has(part))) met++;
        }
      }
    }
  }
  expect(walls).toBeGreaterThan(400);
  expect(met / walls).toBeGreaterThanOrEqual(0.95);
});

test('a wall of 432 stuck-on units may have 31 lifted, one in fourteen; a wall on ties six', () => {
  const units = Array.from({ length: 432 }, () => ({})) as unknown as Wall['units'];
  const like = (masonry: Wall['masonry']) => ({ masonry, units }) as Wall;
  expect([openingsUpOf(like('adhered')), openingsUpOf(like('anchored'))]).toEqual([31, 6]);
});
