import { expect, test } from 'vitest';
import { CHECKS } from '../../lib/inspect/finding';
import { HAND_WALLS } from './hand-walls';
import { measureNaively } from './measure';
import type { NaiveFinding } from './naive-finding';

/** One in a million: what is worked on paper is typed to at least eight figures. */
const SAME = 1e-6;

const inOrder = (findings: readonly NaiveFinding[]) =>
  findings
    .map((one) => ({ ...one, key: `${one.check} ${one.parts.join(' ')} ${one.measured}` }))
    .sort((a, b) => (a.key < b.key ? -1 : 1));

test.each(HAND_WALLS)('$name', ({ wall, rules, expected }) => {
  const measured = inOrder(measureNaively(wall, rules));
  const worked = inOrder(expected);
  expect(measured.map(({ check, parts }) => [check, ...parts])).toEqual(
    worked.map(({ check, parts }) => [check, ...parts]),
  );
  measured.forEach((one, at) => {
    const other = worked[at];
    expect(Math.abs(one.measured - (other?.measured ?? Number.NaN))).toBeLessThanOrEqual(
      SAME * Math.abs(one.measured),
    );
    expect(Math.abs(one.limit - (other?.limit ?? Number.NaN))).toBeLessThanOrEqual(
      SAME * Math.abs(one.limit),
    );
  });
});

test('every check fails in some wall worked by hand', () => {
  const failing = new Set(HAND_WALLS.flatMap(({ expected }) => expected.map(({ check }) => check)));
  expect(CHECKS.filter((check) => !failing.has(check))).toEqual([]);
});

test('no two walls have one name', () => {
  const names = HAND_WALLS.map(({ name }) => name);
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
});
