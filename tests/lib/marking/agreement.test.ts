import { describe, expect, test } from 'vitest';
import { cohenKappa, fleissKappa, verdictTable, weightedKappa } from '../../../lib/marking/agreement';
import { sampleTable } from './samples';

describe("Cohen's kappa", () => {
  test.each([
    ['full agreement', sampleTable('5 0 / 0 3'), 1],
    ['chance: rows and columns independent', sampleTable('4 4 / 4 4'), 0],
    ['full disagreement, halves', sampleTable('0 5 / 5 0'), -1],
    // Seen agreement 40/50; by chance (25*30 + 25*20)/2500 = 1/2; (0.8 - 0.5)/(1 - 0.5).
    ['worked by hand', sampleTable('22.5 2.5 / 7.5 17.5'), 0.6],
  ])('%s', (_, table, expected) => {
    expect(cohenKappa(table)).toBeCloseTo(expected, 12);
  });

  test('all in one class says nothing', () => {
    expect(cohenKappa(sampleTable('9 0 / 0 0'))).toBe(null);
  });

  test('costs in proportion change nothing', () => {
    const table = sampleTable('44 7 9 / 5 20 5 / 1 3 6');
    const twos = sampleTable('0 2 2 / 2 0 2 / 2 2 0');
    expect(weightedKappa(table, twos)).toBeCloseTo(cohenKappa(table) ?? NaN, 12);
  });

  // Computed from the formula on Cohen's 1968 table; the published weightings are in tests/reference.
  test.each([
    ['linear', sampleTable('0 1 2 / 1 0 1 / 2 1 0'), 0.4736842],
    ['quadratic', sampleTable('0 1 4 / 1 0 1 / 4 1 0'), 0.4545455],
  ])('%s costs', (_, costs, expected) => {
    const table = sampleTable('0.44 0.07 0.09 / 0.05 0.2 0.05 / 0.01 0.03 0.06');
    expect(weightedKappa(table, costs)).toBeCloseTo(expected, 7);
  });

  test.each([
    ['no classes', () => cohenKappa([]), 'table: no classes'],
    ['no cases', () => cohenKappa(sampleTable('0 0 / 0 0')), 'table: no cases'],
    ['not square', () => cohenKappa(sampleTable('1 2 / 3')), 'table.1: 1 cells in a table of 2 classes'],
    ['negative', () => cohenKappa(sampleTable('1 -2 / 3 4')), 'table.0.1: -2 is negative'],
    ['no number', () => cohenKappa(sampleTable('1 2 / NaN 4')), 'table.1.0: NaN is not a finite number'],
    [
      'costs of another size',
      () => weightedKappa(sampleTable('1 2 / 3 4'), sampleTable('0')),
      'costs: 1 classes for a table of 2',
    ],
    [
      'negative cost',
      () => weightedKappa(sampleTable('1 2 / 3 4'), sampleTable('0 -1 / 1 0')),
      'costs.0.1: -1 is negative',
    ],
    [
      'agreement that costs',
      () => weightedKappa(sampleTable('1 2 / 3 4'), sampleTable('0 1 / 1 2')),
      'costs.1.1: agreement must cost 0, not 2',
    ],
  ])('refuses: %s', (_, run, message) => {
    expect(run).toThrow(message);
  });
});

describe("Fleiss' kappa", () => {
  test.each([
    ['all judges agree on every case', sampleTable('3 0 / 0 3'), 1],
    // Two judges, two cases, one agreed: seen 1/2; shares 3/4 and 1/4, by chance 10/16; (8 - 10)/(16 - 10).
    ['worked by hand', sampleTable('2 0 / 1 1'), -1 / 3],
  ])('%s', (_, rows, expected) => {
    expect(fleissKappa(rows)).toBeCloseTo(expected, 12);
  });

  test('one class for all says nothing', () => {
    expect(fleissKappa(sampleTable('3 0 / 3 0'))).toBe(null);
  });

  test.each([
    ['no cases', () => fleissKappa([]), 'rows: no cases'],
    ['a judge missing', () => fleissKappa(sampleTable('2 1 / 1 1')), 'rows.1: 2 judges, not 3'],
    ['a class missing', () => fleissKappa(sampleTable('2 1 / 3')), 'rows.1: 1 classes, not 2'],
    ['one judge', () => fleissKappa(sampleTable('1 0 / 0 1')), 'rows.0: agreement needs at least 2 judges'],
    ['negative', () => fleissKappa(sampleTable('3 -1 / 1 1')), 'rows.0.1: -1 is negative'],
  ])('refuses: %s', (_, run, message) => {
    expect(run).toThrow(message);
  });
});

test('the table has answers down and truth across', () => {
  expect(verdictTable({ hits: 1, misses: 2, falseAlarms: 3, soundCalls: 4 })).toEqual(
    sampleTable('1 3 / 2 4'),
  );
});
