import { describe, expect, test } from 'vitest';
import {
  coursesInHeight,
  driftAfter,
  gaugeForCourses,
  heightOfCourses,
  nearestGauge,
} from '../../../lib/trade/coursing';
import { inches } from '../../../lib/units';
import { METRIC_MODULAR, modularHeight, US_MODULAR } from './modules';

// US column: BIA Technical Note 10, Table 3, column 3 courses = 8 in (rows to 50 and 100; see coursing-bia.test.ts for how it was
// read; its fractions are thirds). 60, 72 and 90 courses, and the millimetres at 25.4 an inch, were worked out from it by a second program.
// Metric columns: GSA Metric Design Guide, PBS-PQ260, page 14, read: three courses of 57 mm brick with 10 mm joints are 201 mm, rounded
// to 200. Multiples of those two by a second program.
// Columns: courses | ft-in | the same in mm | 200/3 mm a course | 67 mm a course.
const HEIGHTS = `
  1 | 0-2 2/3 | 67.7 | 66.7 | 67
  2 | 0-5 1/3 | 135.5 | 133.3 | 134
  3 | 0-8 | 203.2 | 200.0 | 201
  4 | 0-10 2/3 | 270.9 | 266.7 | 268
  5 | 1-1 1/3 | 338.7 | 333.3 | 335
  6 | 1-4 | 406.4 | 400.0 | 402
  7 | 1-6 2/3 | 474.1 | 466.7 | 469
  8 | 1-9 1/3 | 541.9 | 533.3 | 536
  9 | 2-0 | 609.6 | 600.0 | 603
  10 | 2-2 2/3 | 677.3 | 666.7 | 670
  11 | 2-5 1/3 | 745.1 | 733.3 | 737
  12 | 2-8 | 812.8 | 800.0 | 804
  13 | 2-10 2/3 | 880.5 | 866.7 | 871
  14 | 3-1 1/3 | 948.3 | 933.3 | 938
  15 | 3-4 | 1016.0 | 1000.0 | 1005
  16 | 3-6 2/3 | 1083.7 | 1066.7 | 1072
  17 | 3-9 1/3 | 1151.5 | 1133.3 | 1139
  18 | 4-0 | 1219.2 | 1200.0 | 1206
  19 | 4-2 2/3 | 1286.9 | 1266.7 | 1273
  20 | 4-5 1/3 | 1354.7 | 1333.3 | 1340
  21 | 4-8 | 1422.4 | 1400.0 | 1407
  22 | 4-10 2/3 | 1490.1 | 1466.7 | 1474
  23 | 5-1 1/3 | 1557.9 | 1533.3 | 1541
  24 | 5-4 | 1625.6 | 1600.0 | 1608
  25 | 5-6 2/3 | 1693.3 | 1666.7 | 1675
  26 | 5-9 1/3 | 1761.1 | 1733.3 | 1742
  27 | 6-0 | 1828.8 | 1800.0 | 1809
  28 | 6-2 2/3 | 1896.5 | 1866.7 | 1876
  29 | 6-5 1/3 | 1964.3 | 1933.3 | 1943
  30 | 6-8 | 2032.0 | 2000.0 | 2010
  31 | 6-10 2/3 | 2099.7 | 2066.7 | 2077
  32 | 7-1 1/3 | 2167.5 | 2133.3 | 2144
  33 | 7-4 | 2235.2 | 2200.0 | 2211
  34 | 7-6 2/3 | 2302.9 | 2266.7 | 2278
  35 | 7-9 1/3 | 2370.7 | 2333.3 | 2345
  36 | 8-0 | 2438.4 | 2400.0 | 2412
  37 | 8-2 2/3 | 2506.1 | 2466.7 | 2479
  38 | 8-5 1/3 | 2573.9 | 2533.3 | 2546
  39 | 8-8 | 2641.6 | 2600.0 | 2613
  40 | 8-10 2/3 | 2709.3 | 2666.7 | 2680
  41 | 9-1 1/3 | 2777.1 | 2733.3 | 2747
  42 | 9-4 | 2844.8 | 2800.0 | 2814
  43 | 9-6 2/3 | 2912.5 | 2866.7 | 2881
  44 | 9-9 1/3 | 2980.3 | 2933.3 | 2948
  45 | 10-0 | 3048.0 | 3000.0 | 3015
  46 | 10-2 2/3 | 3115.7 | 3066.7 | 3082
  47 | 10-5 1/3 | 3183.5 | 3133.3 | 3149
  48 | 10-8 | 3251.2 | 3200.0 | 3216
  50 | 11-1 1/3 | 3386.7 | 3333.3 | 3350
  60 | 13-4 | 4064.0 | 4000.0 | 4020
  72 | 16-0 | 4876.8 | 4800.0 | 4824
  90 | 20-0 | 6096.0 | 6000.0 | 6030
  100 | 22-2 2/3 | 6773.3 | 6666.7 | 6700
`;

const rows = HEIGHTS.trim()
  .split('\n')
  .map((row) => {
    const [courses = '', feetAndInches = '', ...mm] = row.split('|').map((cell) => cell.trim());
    const [us = NaN, metric = NaN, laid = NaN] = mm.map(Number);
    return { courses: Number(courses), feetAndInches, us, metric, laid };
  });

/** '10-5 1/3' to inches, in thirds. */
function inchesOf(text: string): number {
  const [feet = '', rest = ''] = text.split('-');
  const [whole = '', fraction = '0/3'] = rest.split(' ');
  return Number(feet) * 12 + Number(whole) + Number(fraction.slice(0, 1)) / 3;
}

describe('US modular, three courses to 8 in', () => {
  test('every row is there', () => {
    expect(rows.map(({ courses }) => courses)).toEqual([
      ...Array.from({ length: 48 }, (_, index) => index + 1),
      ...[50, 60, 72, 90, 100],
    ]);
  });

  // Exact but for binary rounding.
  test.each(rows)('$courses courses: $feetAndInches', ({ courses, feetAndInches }) => {
    expect(modularHeight(courses, US_MODULAR) / 25.4).toBeCloseTo(inchesOf(feetAndInches), 9);
  });

  // Printed to a tenth of a millimetre: half of that.
  test.each(rows)('$courses courses: $us mm', ({ courses, us }) => {
    expect(Math.abs(modularHeight(courses, US_MODULAR) - us)).toBeLessThanOrEqual(0.05 + 1e-9);
  });
});

describe('metric modular', () => {
  test.each(rows)('$courses courses to the module: $metric mm', ({ courses, metric }) => {
    expect(Math.abs(modularHeight(courses, METRIC_MODULAR) - metric)).toBeLessThanOrEqual(0.05 + 1e-9);
  });

  // Whole millimetres: exact.
  test.each(rows)('$courses courses with full 10 mm joints: $laid mm', ({ courses, laid }) => {
    expect(heightOfCourses(courses, 57, 10)).toBe(laid);
  });

  // GSA Metric Design Guide, PBS-PQ260, page 14.
  test('three courses with 10 mm joints: 201 mm, rounded to 200', () => {
    expect(heightOfCourses(3, 57, 10)).toBe(201);
    expect(modularHeight(3, METRIC_MODULAR)).toBeCloseTo(200, 9);
  });

  // Worked out from the same page: +1 mm in 3 courses, +12 mm in 36. Exact but for binary rounding.
  test.each([
    [3, 1],
    [36, 12],
  ])('%i courses with full joints end %i mm high', (courses, high) => {
    expect(driftAfter(courses, 67 - 200 / 3)).toBeCloseTo(high, 9);
  });
});

// Source: brick sizes of the BIA, with 3/8 in joints, as an architects' site lists them (archtoolbox.com, brick sizes), read; the bed
// joint of 5/12 in for modular brick also in a brick maker's layout notes ("0.41666... in"). The bed joints of the other sizes follow
// from unit height and coursing.
describe('bed joints that brick sizes and their coursing leave', () => {
  test.each([
    ['modular', 3, 8, 2.25, 0.41667],
    ['standard', 3, 8, 2.25, 0.41667],
    ['norman', 3, 8, 2.25, 0.41667],
    ['engineer modular', 5, 16, 2.8125, 0.3875],
    ['roman', 1, 2, 1.625, 0.375],
    ['economy', 1, 4, 3.625, 0.375],
    ['utility', 1, 4, 3.625, 0.375],
    ['queen', 5, 16, 2.75, 0.45],
  ])('%s, %i courses to %d in: %d in brick leaves %d in', (_, courses, height, unit, joint) => {
    // Five decimals of an inch are typed.
    expect(gaugeForCourses(inches(height), courses, inches(unit)).joint / 25.4).toBeCloseTo(joint, 5);
  });

  // Source: Masonry Construction magazine, "Joint dimensions aren't precise", read: three 3/8 in joints would need brick of 2 19/64 in.
  test('three 3/8 in joints want brick of 2 19/64 in', () => {
    // To the nearest 64th: half of one.
    expect(Math.abs(gaugeForCourses(inches(8), 3, inches(2 + 19 / 64)).joint / 25.4 - 3 / 8)).toBeLessThan(
      1 / 128,
    );
    expect(heightOfCourses(3, inches(2.25), inches(0.375)) / 25.4).toBeCloseTo(7.875, 9);
  });
});

// Source: Brick and Blocklayers Federation of New Zealand, brick veneer guide, mortar joint thickness: 3300 mm of 76 mm brick, read.
describe('published gauge example, 3300 mm', () => {
  test('38.37 courses', () => {
    expect(coursesInHeight(3300, 76, 10)).toBeCloseTo(38.37, 2);
  });

  // Printed to a thousandth.
  test.each([
    [38, 86.842, 10.842],
    [39, 84.615, 8.615],
  ])('%i courses: gauge %d, joint %d', (courses, gauge, joint) => {
    expect(gaugeForCourses(3300, courses, 76).gauge).toBeCloseTo(gauge, 3);
    expect(gaugeForCourses(3300, courses, 76).joint).toBeCloseTo(joint, 3);
  });

  test('the nearest is 38', () => {
    expect(nearestGauge(3300, 76, 10).courses).toBe(38);
  });
});

// Source: Tylers and Bricklayers Company glossary, "Gauge", read: four courses are 300 mm. The longer ones by multiplication.
describe('UK brick, 65 mm at 10', () => {
  test.each([
    [1, 75],
    [4, 300],
    [28, 2100],
    [30, 2250],
  ])('%i courses: %i mm', (courses, height) => {
    expect(heightOfCourses(courses, 65, 10)).toBe(height);
  });

  test('half a millimetre a course is 16 mm in 32', () => {
    expect(driftAfter(32, 0.5)).toBe(16);
  });
});
