import { describe, expect, test } from 'vitest';
import { halfOf, namesFor, parseStep } from '../../../lib/drills/guided/guided-steps';

test.each([
  ['1', 1],
  ['3', 3],
  [undefined, 1],
  ['4', 1],
  [['2'], 1],
])('step %j is step %i', (text, step) => {
  expect(parseStep(text)).toBe(step);
});

test('both halves come about as often', () => {
  const names = Array.from({ length: 400 }, (_, seed) => halfOf(seed)).filter((half) => half === 'name');
  expect(Math.abs(names.length - 200)).toBeLessThan(50);
});

describe('the names to choose from', () => {
  const ALL = ['a', 'b', 'c', 'd', 'e', 'f', 'g'];
  const chosen = (seed: number) => namesFor('a', ['b'], ['a', 'c', 'd'], ALL, seed);

  test('are four, the right one and what it is taken for among them', () => {
    for (let seed = 0; seed < 50; seed++) {
      expect(new Set(chosen(seed)).size).toBe(4);
      expect(chosen(seed)).toContain('a');
      expect(chosen(seed)).toContain('b');
    }
  });

  test('are of the family first', () => {
    expect([...chosen(3)].sort()).toEqual(['a', 'b', 'c', 'd']);
  });

  test('stand in an order that says nothing: the right one is first about one time in four', () => {
    const first = Array.from({ length: 400 }, (_, seed) => chosen(seed)[0]).filter((name) => name === 'a');
    expect(Math.abs(first.length - 100)).toBeLessThan(45);
  });
});
