import { describe, expect, test } from 'vitest';
import { faultyBrief, pairOf, seedAfter } from '../../app/practise/faulty-brief';
import type { Brief } from '../../lib/generate/brief';
import { layWall } from '../../lib/generate/generate';
import { planOf } from '../../lib/generate/planner';
import { TOPICS } from '../../lib/generate/topics';
import { inspect } from '../../lib/inspect/inspect';
import { WALL_KINDS } from '../../lib/wall/model';

const BRIEFS: readonly Brief[] = TOPICS.flatMap((topic) =>
  WALL_KINDS.map((kind, seed): Brief => ({ topic, kind, difficulty: 1, rules: 'canada', seed: 40 + seed })),
);

describe.each(BRIEFS)('a pair about $topic on a $kind', (asked) => {
  const brief = faultyBrief(asked);
  const { sound, spoiled } = pairOf(brief);

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

test('which of the two is spoiled goes by the seed, and both come about as often', () => {
  const sides = Array.from({ length: 200 }, (_, seed) => {
    const plan = { ...(BRIEFS[0] as Brief), seed };
    return faultyBrief(plan).seed === seed ? pairOf(plan).spoiledIs : null;
  }).filter((side) => side !== null);
  const first = sides.filter((side) => side === 1).length;
  // Two standard deviations either side of half of about 120.
  expect(Math.abs(first - sides.length / 2)).toBeLessThan(Math.sqrt(sides.length));
});

test('the next pair is another one, and a fault asked for is on it', () => {
  const brief = faultyBrief({ ...(BRIEFS[4] as Brief) });
  const next = faultyBrief(seedAfter(brief), ['open-head']);
  expect(next.seed).not.toBe(brief.seed);
  expect(planOf(next).spoils.map(({ fault }) => fault)).toContain('open-head');
});
