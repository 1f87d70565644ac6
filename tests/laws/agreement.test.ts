import { describe, expect, test } from 'vitest';
import type { Finding } from '../../lib/inspect/finding';
import { inspect } from '../../lib/inspect/inspect';
import { HAND_WALLS } from '../naive/hand-walls';
import { measureNaively } from '../naive/measure';
import { disagreement, placeOf } from './agreement-walls';

/** A hundred thousand: npm run bench -- laws. */
const WALLS = 3_000;
const BLOCKS = 15;

describe('the key and a second measurer that shares no code with it', () => {
  test.each(Array.from({ length: BLOCKS }, (_, block) => block))(
    `block %i of ${BLOCKS}: agree on ${WALLS / BLOCKS} walls`,
    (block) => {
      const apart: string[] = [];
      for (let n = (block * WALLS) / BLOCKS; n < ((block + 1) * WALLS) / BLOCKS; n++) {
        const difference = disagreement(n);
        if (difference !== null) apart.push(difference);
      }
      expect(apart).toEqual([]);
    },
  );
});

describe('walls worked out by hand', () => {
  test.each(HAND_WALLS.map((each) => [each.name, each] as const))('%s', (_, { wall, rules, expected }) => {
    const key = inspect(wall, rules);
    const found = key.map(({ check, measured, limit }) => lineOf(check, measured, limit));
    expect(found.sort()).toEqual(
      expected.map(({ check, measured, limit }) => lineOf(check, measured, limit)).sort(),
    );
    expect(key.map(whereOf).sort()).toEqual(measureNaively(wall, rules).map(whereOf).sort());
  });
});

function whereOf({ check, region }: Pick<Finding, 'check' | 'region'>): string {
  return `${check} at ${placeOf(region)}`;
}

function lineOf(check: string, measured: number, limit: number): string {
  return `${check} ${measured.toPrecision(6)} against ${limit.toPrecision(6)}`;
}
