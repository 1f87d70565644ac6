import { describe, expect, test } from 'vitest';
import { firstMeasured, seedAfter } from '../../../lib/drills/faulty-brief';
import { faultyWall } from '../../../lib/drills/faulty-wall';
import { measuredPair, spoiledOf } from '../../../lib/drills/pair/measured-pair';
import type { Brief } from '../../../lib/generate/brief';
import { layWall } from '../../../lib/generate/generate';
import { TOPICS } from '../../../lib/generate/topics';
import { inspect } from '../../../lib/inspect/inspect';
import { WALL_KINDS } from '../../../lib/wall/model';

const BRIEFS: readonly Brief[] = TOPICS.flatMap((topic) =>
  WALL_KINDS.map((kind, seed): Brief => ({ topic, kind, difficulty: 1, rules: 'canada', seed: 40 + seed })),
);

describe.each(BRIEFS)('a pair about $topic on a $kind', (asked) => {
  const { brief, sound, spoiled } = measuredPair(asked);

  test('has one wall without and one with something to find', () => {
    expect(inspect(sound, brief.rules)).toEqual([]);
    expect(inspect(spoiled, brief.rules).length, JSON.stringify(brief)).toBeGreaterThan(0);
  });

  test('opens by its code as the very wall that is spoiled', () => {
    expect(layWall(brief)).toEqual(spoiled);
  });

  test('is the same wall but for what was spoiled', () => {
    expect(sound.family).toEqual(spoiled.family);
    expect(sound.panels.map(({ id, courses, length }) => ({ id, courses, length }))).toEqual(
      spoiled.panels.map(({ id, courses, length }) => ({ id, courses, length })),
    );
  });
});

test('both sides are the spoiled one about as often', () => {
  const asked = { ...(BRIEFS[0] as Brief), seed: 0 };
  const sides: (1 | 2)[] = [];
  for (let { brief, spoiledIs } = measuredPair(asked); brief.seed < 200; ) {
    sides.push(spoiledIs);
    ({ brief, spoiledIs } = measuredPair(seedAfter(brief)));
  }
  expect(sides.length).toBeGreaterThan(80);
  // Two standard deviations either side of half of about 120.
  expect(Math.abs(sides.filter((side) => side === 1).length - sides.length / 2)).toBeLessThan(
    Math.sqrt(sides.length),
  );
});

describe('which of two walls is spoiled is measured', () => {
  const { sound, spoiled, brief } = measuredPair(BRIEFS[0] as Brief);

  test.each([
    ['the first', spoiled, sound, 1],
    ['the second', sound, spoiled, 2],
    ['neither: there is nothing to tell apart', sound, sound, null],
    ['both: one of them has to be sound', spoiled, spoiled, null],
  ])('%s', (_, first, second, side) => {
    expect(spoiledOf(first, second, brief.rules)).toBe(side);
  });
});

describe('a wall that measures otherwise than planned', () => {
  const asked = BRIEFS[0] as Brief;

  test('is passed over for the next one planned faulty', () => {
    const first = faultyWall(asked).brief.seed;
    const tried: number[] = [];
    const taken = firstMeasured(asked, [], ({ seed }) => {
      tried.push(seed);
      return tried.length === 3 ? seed : null;
    });
    expect(tried[0]).toBe(first);
    expect(tried).toEqual([...new Set(tried)].sort((a, b) => a - b));
    expect(taken).toBe(tried[2]);
  });

  test('twenty times in a row is said to be a flaw', () => {
    expect(() => firstMeasured(asked, [], () => null)).toThrow('none of 20 walls measures as it is planned');
  });
});

test('the next wall is another one, and a fault asked for is measured on it', () => {
  const { brief } = faultyWall(BRIEFS[4] as Brief);
  const next = faultyWall(seedAfter(brief), ['open-head']);
  expect(next.brief.seed).not.toBe(brief.seed);
  expect(next.findings.map(({ check }) => check)).toContain('open-head');
  expect(next.findings).toEqual(inspect(next.wall, brief.rules));
});
