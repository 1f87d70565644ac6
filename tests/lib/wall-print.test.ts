import { expect, test } from 'vitest';
import { layWall } from '../../lib/generate/generate';
import { TOPICS } from '../../lib/generate/topics';
import { RULE_SETS } from '../../lib/limits/limit';
import { WALL_KINDS } from '../../lib/wall/model';
import { printWall } from '../../lib/wall/print';

const WALLS = 200;

/** What the text is by its definition: every key of every object in alphabetical order. */
function byDefinition(value: unknown): string {
  return JSON.stringify(value, (_, each) =>
    each === null || typeof each !== 'object' || Array.isArray(each)
      ? each
      : Object.fromEntries(
          Object.keys(each)
            .sort()
            .map((key) => [key, each[key]]),
        ),
  );
}

const pick = <T>(list: readonly T[], at: number) => list[at % list.length] as T;

test(`the text of ${WALLS} walls of all kinds, topics and rules has every key, in alphabetical order`, () => {
  const walls = Array.from({ length: WALLS }, (_, seed) =>
    layWall({
      topic: pick(TOPICS, seed),
      kind: pick(WALL_KINDS, Math.floor(seed / TOPICS.length)),
      difficulty: pick([1, 2, 3] as const, seed),
      rules: pick(RULE_SETS, seed),
      seed,
    }),
  );
  expect(walls.filter((wall) => printWall(wall) !== byDefinition(wall))).toEqual([]);
});
