import { describe, expect, test } from 'vitest';
import { analyseTest, correlation, itemsFor } from '../../../lib/classes/statistics/item-analysis';
import { discriminationError } from '../../../lib/classes/statistics/small-groups';
import { LSAT_PERSONS } from './lsat-6';

// Data: K. L. Wuensch, East Carolina University, KR20.txt, read there; ten students, ten items.
const STUDENTS = (
  '1111110110 1011011101 1111011001 0010001000 0000010010 ' +
  '1110111111 1101110111 1111111101 0101111101 1101101110'
)
  .split(' ')
  .map((row) => [...row].map(Number));

function expectAll(values: readonly (number | null)[], expected: readonly number[], digits: number): void {
  expect(values.length).toBe(expected.length);
  values.forEach((value, i) => {
    expect(value).toBeCloseTo(expected[i] ?? Number.NaN, digits);
  });
}

describe('ten students, ten items (Wuensch)', () => {
  const figures = analyseTest(STUDENTS);

  test('published: sum of pq 2.18 and variance of totals 5.84', () => {
    const spread = figures.items.reduce((sum, { p }) => sum + p * (1 - p), 0);
    expect(spread).toBeCloseTo(2.18, 12);
    expect(figures.deviation * figures.deviation).toBeCloseTo(5.84, 12);
  });

  test('share right', () => {
    expectAll(
      figures.items.map(({ p }) => p),
      [0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6],
      12,
    );
  });

  // From 2.18 and 5.84: 10/9 (1 - 2.18/5.84). With the sample variance in one place only it would be .7378.
  test('KR-20 divides by the number of learners in both places', () => {
    expect(figures.alpha).toBeCloseTo((10 / 9) * (1 - 2.18 / 5.84), 12);
    expect(figures.alpha).toBeCloseTo(0.696347, 7);
    expect(figures.standardError).toBeCloseTo(1.3316656, 7);
  });

  // Worked from the published rows in another language (NumPy).
  test('discrimination leaves the item out of the total', () => {
    expectAll(
      figures.items.map(({ discrimination }) => discrimination),
      [0.7059, 0.7059, 0, 0.4736, 0.5839, 0.2861, -0.0274, 0.7059, -0.1236, 0.4759],
      4,
    );
  });

  test('alpha without an item', () => {
    expectAll(
      figures.items.map(({ alphaWithout }) => alphaWithout),
      [0.6084, 0.6084, 0.7353, 0.6525, 0.629, 0.6846, 0.7355, 0.6084, 0.7564, 0.6505],
      4,
    );
  });

  test('odd against even items', () => {
    const half = (odd: number) =>
      STUDENTS.map((row) => row.filter((_, i) => i % 2 === odd).reduce((sum, score) => sum + score, 0));
    const r = correlation(half(0), half(1));
    expect(r).toBeCloseTo(0.5138138, 6);
  });

  test('walls needed: from .696 with 10 to .80 takes 18, to .90 takes 40', () => {
    expect(itemsFor(0.8, 0.696347, 10)).toBe(18);
    expect(itemsFor(0.9, 0.696347, 10)).toBe(40);
  });
});

// Pattern counts: LSAT section 6, as printed in the manuals of open statistics packages; alpha published as .295.
describe('LSAT section 6, 1000 persons, 5 items', () => {
  const figures = analyseTest(LSAT_PERSONS);

  test('share right and alpha', () => {
    expectAll(
      figures.items.map(({ p }) => p),
      [0.924, 0.709, 0.553, 0.763, 0.87],
      12,
    );
    expect(figures.alpha).toBeCloseTo(0.295, 3);
    expect(figures.alpha).toBeCloseTo(0.2949972, 7);
  });

  test('discrimination', () => {
    expectAll(
      figures.items.map(({ discrimination }) => discrimination),
      [0.1128, 0.1532, 0.1728, 0.1444, 0.1216],
      4,
    );
  });

  test('with the item in the total it would be far higher', () => {
    const totals = LSAT_PERSONS.map((row) => row.reduce((sum, score) => sum + score, 0));
    expectAll(
      [0, 1, 2, 3, 4].map((item) =>
        correlation(
          LSAT_PERSONS.map((row) => row[item] ?? 0),
          totals,
        ),
      ),
      [0.362, 0.5668, 0.6184, 0.5344, 0.4354],
      4,
    );
  });
});

// 1 / sqrt(n - 1) worked by hand: .33 for 10 learners, .16 for 40.
test('a discrimination of few learners is out by a third', () => {
  expect(discriminationError(10)).toBeCloseTo(0.3333, 4);
  expect(discriminationError(40)).toBeCloseTo(0.1601, 4);
});
