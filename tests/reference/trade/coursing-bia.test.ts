import { describe, expect, test } from 'vitest';
import { inches } from '../../../lib/units';
import { type Module, modularHeight } from './modules';

// Source: BIA Technical Note 10, Table 3 (vertical coursing), reprinted in Masonry Magazine, April 1994, page 25
// (masonrymagazine.com, pageID 25929). Read in a machine copy: feet and whole inches are sound, but each fraction of an inch came out as
// one same sign. "+" stands for it here. So a figure says: so many whole inches, and a fraction or none.
// Columns: courses; 2 courses = 4 in; 3 = 8 in; 5 = 16 in; 1 = 4 in.
const PRINTED = `
  1 0-2 0-2+ 0-3+ 0-4
  2 0-4 0-5+ 0-6+ 0-8
  3 0-6 0-8 0-9+ 1-0
  4 0-8 0-10+ 1-0+ 1-4
  5 0-10 1-1+ 1-4 1-8
  6 1-0 1-4 1-7+ 2-0
  7 1-2 1-6+ 1-10+ 2-4
  8 1-4 1-9+ 2-1+ 2-8
  9 1-6 2-0 2-4+ 3-0
  10 1-8 2-2+ 2-8 3-4
  11 1-10 2-5+ 2-11+ 3-8
  12 2-0 2-8 3-2+ 4-0
  13 2-2 2-10+ 3-5+ 4-4
  14 2-4 3-1+ 3-8+ 4-8
  15 2-6 3-4 4-0 5-0
  16 2-8 3-6+ 4-3+ 5-4
  17 2-10 3-9+ 4-6+ 5-8
  18 3-0 4-0 4-9+ 6-0
  19 3-2 4-2+ 5-0+ 6-4
  20 3-4 4-5+ 5-4 6-8
  21 3-6 4-8 5-7+ 7-0
  22 3-8 4-10+ 5-10+ 7-4
  23 3-10 5-1+ 6-1+ 7-8
  24 4-0 5-4 6-4+ 8-0
  25 4-2 5-6+ 6-8 8-4
  26 4-4 5-9+ 6-11+ 8-8
  27 4-6 6-0 7-2+ 9-0
  28 4-8 6-2+ 7-5+ 9-4
  29 4-10 6-5+ 7-8+ 9-8
  30 5-0 6-8 8-0 10-0
  31 5-2 6-10+ 8-3+ 10-4
  32 5-4 7-1+ 8-6+ 10-8
  33 5-6 7-4 8-9+ 11-0
  34 5-8 7-6+ 9-0+ 11-4
  35 5-10 7-9+ 9-4 11-8
  36 6-0 8-0 9-7+ 12-0
  37 6-2 8-2+ 9-10+ 12-4
  38 6-4 8-5+ 10-1+ 12-8
  39 6-6 8-8 10-4+ 13-0
  40 6-8 8-10+ 10-8 13-4
  41 6-10 9-1+ 10-11+ 13-8
  42 7-0 9-4 11-2+ 14-0
  43 7-2 9-6+ 11-5+ 14-4
  44 7-4 9-9+ 11-8+ 14-8
  45 7-6 10-0 12-0 15-0
  46 7-8 10-2+ 12-3+ 15-4
  47 7-10 10-5 12-6+ 15-8
  48 8-0 10-8 12-9+ 16-0
  49 8-2 10-10+ 13-0+ 16-4
  50 8-4 11-1+ 13-4 16-8
  100 16-8 22-2+ 26-8 33-4
`;

// One misprint: 47 courses at 3 = 8 in are printed 10'-5" without a fraction. 46 are 10'-2+, 48 are 10'-8"; two thirds and a third lie between.
const MISPRINT = '47 courses at 3 = 8 in';

const COLUMNS: readonly (readonly [string, Module])[] = [
  ['2 = 4 in', { courses: 2, height: inches(4) }],
  ['3 = 8 in', { courses: 3, height: inches(8) }],
  ['5 = 16 in', { courses: 5, height: inches(16) }],
  ['1 = 4 in', { courses: 1, height: inches(4) }],
];

const figures = PRINTED.trim()
  .split('\n')
  .flatMap((row) => {
    const [courses = '', ...cells] = row.trim().split(' ');
    return cells.map((cell, index) => {
      const [name, module] = COLUMNS[index] ?? ['none', { courses: 0, height: 0 }];
      return { name: `${courses} courses at ${name}`, courses: Number(courses), module, cell };
    });
  });

/** As the table prints it. A millionth of an inch is let through: sums of inches are not exact in binary. */
function printedAs(height: number): string {
  const inch = height / 25.4;
  const whole = Math.floor(inch + 1e-6);
  return `${Math.floor(whole / 12)}-${whole % 12}${inch - whole > 1e-6 ? '+' : ''}`;
}

test('all 51 rows of four figures are there', () => {
  expect(figures.length).toBe(204);
});

describe('BIA Technical Note 10, Table 3', () => {
  test.each(figures.filter(({ name }) => name !== MISPRINT))('$name: $cell', ({ courses, module, cell }) => {
    expect(printedAs(modularHeight(courses, module))).toBe(cell);
  });

  test('47 courses at 3 = 8 in: 10-5 and a third, though printed without the third', () => {
    expect(figures.find(({ name }) => name === MISPRINT)?.cell).toBe('10-5');
    expect(modularHeight(47, { courses: 3, height: inches(8) }) / 25.4).toBeCloseTo(125 + 1 / 3, 9);
  });
});
