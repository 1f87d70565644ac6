import { describe, expect, test } from 'vitest';
import { INSTRUMENT } from '../../lib/instruments/instrument-list';
import { lineSag } from '../../lib/instruments/mason-line';
import { readAt } from '../../lib/instruments/read';
import type { Reading } from '../../lib/instruments/reading';
import { ownErrorOf } from '../../lib/instruments/spirit-level';
import { cornerOf } from '../../lib/trade/corner-square';
import { tiltOf } from '../../lib/trade/spirit-level';
import type { Wall } from '../../lib/wall/model';
import { partsOf } from '../../lib/wall/parts';
import { surveyOf } from '../../lib/wall/survey';
import { changed, times, wallOf } from '../naive/build';

const PER_M = 'mm per m';

function readings(
  wall: Wall,
  id: string,
  instrument: Reading['instrument'],
  turned = false,
): readonly Reading[] {
  const part = partsOf(surveyOf(wall)).get(id);
  return part ? readAt(surveyOf(wall), instrument, part, { turned }) : [];
}

function figure(all: readonly Reading[], what: string): number {
  return all.find((each) => each.what === what)?.value ?? Number.NaN;
}

/** Fifteen bricks and joints of 10 mm: 2,990 long; the last one lies so much lower. */
const courseLow = (by: number) => changed(wallOf([times(15, 190)]), { 'A1.15': { y: 10 - by } });

describe('spirit level', () => {
  // Makers' pages: 0.5 mm per m is sold as 0.029 degrees.
  test('its stated error is 0.0286 degrees', () => {
    expect(tiltOf(INSTRUMENT['spirit-level'].error)).toBeCloseTo(0.0286, 4);
  });

  // TMS 602: 1/4 in over 10 ft is 6.35 over 3,048, 2.083 mm per m. Over 2,990 that is 6.229 mm; on the grid 6.25, 2.090 mm per m.
  test('a course out by 1/4 in in 10 ft reads 2.083 mm per m, within its error as it lies and closer when turned', () => {
    const wall = courseLow(6.25);
    const asItLies = figure(readings(wall, 'A1', 'spirit-level'), 'Slope, end to end');
    expect(Math.abs(asItLies + 2.083)).toBeLessThanOrEqual(0.5);
    const turned = readings(wall, 'A1', 'spirit-level', true);
    expect(Math.abs(figure(turned, 'Both readings, half the sum') + 2.083)).toBeLessThanOrEqual(0.15);
    expect(turned.find(({ what }) => what.startsWith('Both'))?.words).toBe('right end low');
  });

  // Reversal: the wall is half the sum, the level half the difference.
  test.each([0, 1, 2, 3, 4, 5, 6, 7])(
    'reversing finds its own error, whatever the course (%d mm low)',
    (by) => {
      const wall = courseLow(by);
      const first = readings(wall, 'A1', 'spirit-level')[0]?.value ?? Number.NaN;
      const turned = readings(wall, 'A1', 'spirit-level', true);
      const second = turned[0]?.value ?? Number.NaN;
      const own = figure(turned, 'The level’s own error, half the difference');
      expect(Math.abs(own - (first - second) / 2)).toBeLessThanOrEqual(0.025);
      expect(Math.abs(own)).toBeGreaterThanOrEqual(0.05);
      expect(Math.abs(own)).toBeLessThanOrEqual(0.45);
      expect(Math.abs(first + (by * 1000) / 2990)).toBeLessThanOrEqual(0.5);
      expect(Math.abs(second + (by * 1000) / 2990)).toBeLessThanOrEqual(0.5);
    },
  );

  test('of a thousand levels each has an error, to either side, never past 0.35', () => {
    const errors = Array.from({ length: 1000 }, (_, seed) => ownErrorOf(seed));
    expect(Math.max(...errors.map(Math.abs))).toBeLessThanOrEqual(0.35);
    expect(Math.min(...errors.map(Math.abs))).toBeGreaterThanOrEqual(0.15);
    expect(errors.filter((error) => error > 0).length).toBeGreaterThan(400);
    expect(errors.filter((error) => error < 0).length).toBeGreaterThan(400);
  });
});

describe('mason’s line', () => {
  // Statics of a hanging line, worked out by a second program: 1.4 g/m, 100 N.
  test.each([
    [10_000, 1.716],
    [20_000, 6.865],
  ])('between blocks %d mm apart it sags %d mm', (length, sag) => {
    expect(lineSag(length)).toBeCloseTo(sag, 3);
  });

  test('a line of 10 m says so, and a course laid true seems 1.7 mm high in the middle', () => {
    // Fifty bricks and joints: 9,990 long, sag 1.716 × 0.999² = 1.713. The line hangs so much lower than the true course.
    const middle = readings(wallOf([times(50, 190)]), 'A1', 'mason-line').find(({ what }) =>
      what.startsWith('Middle'),
    );
    expect(Math.abs((middle?.value ?? Number.NaN) - 1.713)).toBeLessThanOrEqual(1);
    expect(middle?.words).toBe('above it; the line itself sags 1.7 mm (0.067 in)');
  });
});

describe('square, 3-4-5', () => {
  const corner = (x: number, z: number): Wall => {
    const a = wallOf([times(10, 190)], {}, { plan: { leftX: 0, leftZ: 0, rightX: 2400, rightZ: 0 } });
    const b = wallOf(
      [times(10, 190)],
      {},
      { plan: { leftX: 2400, leftZ: 0, rightX: 2400 + x, rightZ: z } },
      'B',
    );
    return { ...a, panels: [...a.panels, ...b.panels], units: [...a.units, ...b.units] };
  };

  // The long side of 1,500 and 2,000 is 2,500 (Pythagoras).
  test('a square corner reads 2500 on the long side', () => {
    const tape = readings(corner(0, -2000), 'A-B-corner', 'square').find(({ what }) =>
      what.startsWith('Long'),
    );
    expect(tape?.what).toBe('Long side of 1500 and 2000');
    // 59 1/16, 78 3/4 and 98 7/16 in.
    expect(tape?.words).toBe(
      'of 4 ft 11 1/16 in and 6 ft 6 3/4 in; square when it reads 2500 mm (8 ft 2 7/16 in)',
    );
    expect(Math.abs((tape?.value ?? Number.NaN) - 2500)).toBeLessThanOrEqual(1);
  });

  // Open by 24 and 7 in 25: cosine −0.28, long side √(1500² + 2000² + 2·1500·2000·0.28) = √7,930,000 = 2,816.03; closed, √4,570,000 = 2,137.76.
  test.each([
    [560, 2816.03, 'it opens'],
    [-560, 2137.76, 'it closes'],
  ])('a return %d mm out over 2 m reads %d mm on the long side: 280 mm per m', (x, long, words) => {
    const all = readings(corner(x, -1920), 'A-B-corner', 'square');
    expect(Math.abs(figure(all, 'Long side of 1500 and 2000') - long)).toBeLessThanOrEqual(1);
    const off = all.find(({ unit }) => unit === PER_M);
    expect(Math.abs((off?.value ?? Number.NaN) - 280)).toBeLessThanOrEqual(off?.error ?? 0);
    expect(off?.words).toBe(words);
  });

  // d·c/a: 1 mm on the diagonal is 1.67 mm at the end of the longer leg, 0.833 mm per m on legs of 1,500 and 2,000.
  test('what a millimetre on the long side does agrees with the published rule', () => {
    expect(2 * cornerOf(1500, 2000, 2501).offSquare).toBeCloseTo(1.667, 3);
    expect(readings(corner(0, -2000), 'A-B-corner', 'square')[0]?.error).toBeCloseTo(0.833 + 0.1, 3);
  });
});
