import { describe, expect, test } from 'vitest';
import { formatBeyond, formatMeasure, isFine } from '../../../components/result/format-measure';
import { scoreOf100, scoreWords } from '../../../components/result/score-words';
import type { FalseRow, FindingRow } from '../../../lib/wall-page/result-rows';

describe('a measure in the reader’s lengths', () => {
  test.each([
    [12.7, 'mm', '12.7 mm', '1/2 in'],
    [1290.32, 'mm²', '1290 mm²', '2 sq in'],
    [6.35, 'mm per 4 courses', '6.4 mm over 4 courses', '1/4 in over 4 courses'],
    [60, '%', '60 %', '60 %'],
    [171, 'minutes', '171 minutes', '171 minutes'],
    [3.44, 'volumes', '3.4 volumes', '3.4 volumes'],
    [0, 'there or not', 'not there', 'not there'],
  ])('%s %s', (value, unit, mm, inches) => {
    expect([formatMeasure(value, unit, 'mm'), formatMeasure(value, unit, 'inches')]).toEqual([mm, inches]);
  });

  test('sheet metal is shown as a caliper reads it', () => {
    expect(isFine(0.76, 'mm')).toBe(true);
    expect(isFine(3, 'mm')).toBe(false);
    expect(formatMeasure(0.5, 'mm', 'mm', true)).toBe('0.50 mm');
    expect(formatMeasure(0.762, 'mm', 'inches', true)).toBe('0.030 in');
  });

  test('beyond the limit by less than a tape can tell', () => {
    expect(formatBeyond(10.3, 10, 'mm', 'inches')).toBe('less than 1/16 in');
    expect(formatBeyond(25.4, 12.7, 'mm', 'inches')).toBe('1/2 in');
    expect(formatBeyond(0, 1, 'there or not', 'mm')).toBeNull();
  });
  test('adds up with the figures beside it, where each is rounded', () => {
    // Shown as 38.1 and 11.3; apart by 26.8 as they stand there, by 26.85 before.
    expect(formatBeyond(11.25, 38.1, 'mm', 'mm')).toBe('26.8 mm');
    expect(formatBeyond(28.75, 90, 'mm', 'mm')).toBe('61.2 mm');
    // 10.9 mm is 7/16 in, 9.7 mm is 3/8 in.
    expect(formatBeyond(10.9, 9.7, 'mm', 'inches')).toBe('1/16 in');
    expect(formatBeyond(43.26, 95, '%', 'mm')).toBe('51.7 %');
  });
});

describe('the result in words', () => {
  const row = (outcome: FindingRow['outcome']) => ({ outcome }) as FindingRow;
  const wrong = {} as FalseRow;
  test.each([
    ['found', 'found', 0, 2, 'You found all 2 faults on this wall.'],
    [
      'one joint off',
      'missed',
      0,
      1,
      'You found none of the 2 faults on this wall. One mark was in the right place, one joint off.',
    ],
    [
      'found',
      'missed',
      1,
      2,
      'You found 1 of 2 faults. You also marked one place that is within the limits.',
    ],
    [
      'wrong name',
      'missed',
      2,
      3,
      'You found 1 of 2 faults. One has another name than you gave. You also marked 2 places that are within the limits.',
    ],
    ['missed', 'missed', 0, 0, 'You said this wall is sound. It has 2 faults.'],
  ] as const)('%s, %s, %s false', (first, second, falseMarks, marked, words) => {
    const rows = {
      findings: [row(first), row(second)],
      falseMarks: Array.from({ length: falseMarks }, () => wrong),
      marked,
      answered: true,
    };
    expect(scoreWords(rows)).toBe(words);
  });

  test.each([
    [[], 'It is sound.'],
    [['missed'], 'It has a fault.'],
    [['missed', 'missed'], 'It has 2 faults.'],
  ] as const)('not answered, with %j: no praise, and why it scores nothing', (outcomes, there) => {
    const rows = { findings: outcomes.map(row), falseMarks: [], marked: 0, answered: false };
    expect(scoreWords(rows)).toBe(
      `You marked nothing on this wall and did not say that it is sound, so it is not answered and scores nothing. ${there}`,
    );
  });

  test('a score is a whole number of a hundred', () => {
    expect([scoreOf100(0), scoreOf100(2 / 3), scoreOf100(1)]).toEqual([0, 67, 100]);
  });
});
