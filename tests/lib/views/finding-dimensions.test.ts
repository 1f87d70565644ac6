import { describe, expect, test } from 'vitest';
import { drawingOf } from '../../../lib/views/draw-view';
import type { FindingDimension } from '../../../lib/views/pointing/finding-dimension';
import { findingDimensions, measureText } from '../../../lib/views/pointing/finding-dimensions';
import { spansOf } from '../../../lib/views/pointing/finding-spans';
import type { Wall } from '../../../lib/wall/model';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { HAND_TIE, handWall, handWallWith, handWindow } from './hand-wall';

const REGION = { panel: 'A', x: 210, y: 140, width: 200, height: 70 };

function dimension(check: string, parts: readonly string[], other: Partial<FindingDimension> = {}) {
  return { number: 1, check, parts, region: REGION, measured: 6, unit: 'mm', ...other };
}

const ends = (wall: Wall, of: FindingDimension) =>
  spansOf(surveyedWall(wall), of).map(({ from, to }) => [from, to]);

describe('where a measure is taken', () => {
  test('a tapering bed: at both ends of the unit', () => {
    // A3.2 lies at 152 over tops at 140, its right end 6 lower: 12 mm at the left, 6 mm at the right.
    const wall = handWallWith('A3.2', { y: 152, fall: 6 });
    expect(ends(wall, dimension('tapering-bed', ['A3.2-bed', 'A3.2']))).toEqual([
      [
        [210, 140],
        [210, 152],
      ],
      [
        [410, 140],
        [410, 146],
      ],
    ]);
  });

  test('a head joint across, a bed upright', () => {
    expect(ends(handWall(), dimension('thick-joint', ['A1.1/2']))).toEqual([
      [
        [200, 40],
        [210, 40],
      ],
    ]);
    expect(ends(handWall(), dimension('thin-joint', ['A2.2-bed']))).toEqual([
      [
        [205, 70],
        [205, 80],
      ],
    ]);
  });

  test('a course: from the level through its left end to its right end', () => {
    // The last unit of course 2 is 95 long, its right end at 620 and 4 mm lower than the first underside at 80.
    const wall = handWallWith('A2.4', { y: 78, fall: 2 });
    expect(spansOf(surveyedWall(wall), dimension('course-off-level', ['A2']))).toEqual([
      {
        from: [620, 80],
        to: [620, 76],
        base: [
          [0, 80],
          [620, 80],
        ],
      },
    ]);
  });

  test('perpends: from the plumb line through the furthest left to the furthest right', () => {
    // Heads after A1.1 and A3.1 are centred at 205; A3.2 moved by 6 and its joint widened: its middle at 208.
    const wall = handWallWith('A3.2', { x: 216, length: 194 });
    const [span] = spansOf(
      surveyedWall(wall),
      dimension('perpend-drift', ['A1.1/2', 'A3.1/2'], { measured: 3 }),
    );
    expect(span).toEqual({
      from: [205, 210],
      to: [208, 210],
      base: [
        [205, 70],
        [205, 210],
      ],
    });
  });

  test('a lintel: on the side where less lies on the wall', () => {
    // The window runs from 205 to 415, the steel from 105 to 535: 100 and 120 on the wall.
    expect(ends(handWindow(), dimension('short-lintel-bearing', ['A-lintel1', 'A-window1']))).toEqual([
      [
        [105, 140],
        [205, 140],
      ],
    ]);
  });

  test('an edge: to the nearest tie beside it', () => {
    const wall = handWall({ ties: [{ ...HAND_TIE, x: 450 }] });
    const of = dimension('no-tie-at-edge', ['A-right-end'], {
      region: { panel: 'A', x: 370, y: 0, width: 250, height: 280 },
      measured: 170,
    });
    expect(ends(wall, of)).toEqual([
      [
        [620, 145],
        [450, 145],
      ],
    ]);
  });

  test('what has no two ends on the face has none', () => {
    expect(spansOf(surveyedWall(handWall()), dimension('proud-unit', ['A3.2']))).toEqual([]);
    expect(spansOf(surveyedWall(handWall()), dimension('open-head', ['A1.1/2'], { unit: '%' }))).toEqual([]);
  });
});

describe('words', () => {
  test.each([
    [{}, '6 mm', '1/4 in'],
    [{ measured: 73.04, unit: '%' }, '73 %', '73 %'],
    // Ten feet are 3.048 m: 14.84 mm, nearest to 9/16 in (14.29).
    [{ measured: 4.87, unit: 'mm per m' }, '4.9 mm per m', '9/16 in per 10 ft'],
    // 0.38 mm is 0.015 in: as a caliper reads it.
    [{ check: 'thin-tie', measured: 0.38 }, '0.38 mm', '0.015 in'],
  ])('%j', (other, mm, inches) => {
    const of = dimension('proud-unit', ['A3.2'], other);
    expect([measureText(of, 'mm'), measureText(of, 'inches')]).toEqual([mm, inches]);
  });

  test('of a bed held against the mean of eight say so', () => {
    const of = dimension('thin-joint', ['A3.2-bed'], { source: { limit: 'bed-from-mean-of-eight' } });
    expect(measureText(of, 'mm')).toBe('6 mm off the mean');
  });

  test('at an end of the sheet stand on it whole', () => {
    const wall = handWall();
    const drawing = drawingOf(surveyedWall(wall), { kind: 'front' }, 'mm');
    const { box } = drawing;
    const region = { panel: 'A', x: 610, y: 0, width: 10, height: 70 };
    const of = dimension('proud-unit', ['A1.3'], { region, unit: 'mm per 4 courses' });
    const [label] = findingDimensions(surveyedWall(wall), drawing, [of], 3, 'mm').labels;
    // "1: 6 mm over 4 courses": 22 signs of 7.8 px, 3 mm each: 257.4 on either side of the middle.
    expect(label?.at[0]).toBeCloseTo(box.x + box.width - 257.4, 6);
  });

  test('of two places beside each other stand on two lines', () => {
    const wall = handWall();
    const drawing = drawingOf(surveyedWall(wall), { kind: 'front' }, 'mm');
    const of = (number: number, x: number) =>
      dimension('proud-unit', ['A3.2'], { number, region: { ...REGION, x } });
    const [first, second, third] = findingDimensions(
      surveyedWall(wall),
      drawing,
      [of(1, 0), of(2, 40), of(3, 300)],
      1,
      'mm',
    ).labels;
    // "1: 6 mm" is 55 px wide: 40 apart they would touch, 300 apart not. 20 px a line, 1 mm each.
    expect(second?.at[1]).toBe((first?.at[1] ?? 0) - 20);
    expect(third?.at[1]).toBe(first?.at[1]);
  });

  test('pass by words that lie between two lines', () => {
    const wall = handWall();
    const drawing = drawingOf(surveyedWall(wall), { kind: 'front' }, 'mm');
    const of = (number: number, y: number) =>
      dimension('proud-unit', ['A3.2'], { number, region: { ...REGION, y } });
    // The first stands 30 lower than the second, the third at the height of the second: a line of 20 lower it would lie on the first.
    const heights = findingDimensions(
      surveyedWall(wall),
      drawing,
      [of(1, 40), of(2, 70), of(3, 70)],
      1,
      'mm',
    ).labels.map(({ at }) => at[1]);
    const [first = 0, , third = 0] = heights;
    expect(Math.abs(first - third)).toBeGreaterThanOrEqual(20);
    expect(new Set(heights).size).toBe(3);
  });

  test('carry the number; of a tapering bed both ends too', () => {
    const wall = handWallWith('A3.2', { y: 152, fall: 6 });
    const drawing = drawingOf(surveyedWall(wall), { kind: 'front' }, 'mm');
    const { labels } = findingDimensions(
      surveyedWall(wall),
      drawing,
      [dimension('tapering-bed', ['A3.2-bed', 'A3.2'], { number: 4 })],
      1,
      'mm',
    );
    expect(labels.map(({ text }) => text)).toEqual(['12 mm', '6 mm', '4: 6 mm']);
  });
});

test('where a view shows the part but not its face, words stand over the part', () => {
  const drawing = drawingOf(surveyedWall(handWall()), { kind: 'behind', unit: 'A3.2' }, 'mm');
  const of = dimension('missing-back-mortar', ['A3.1', 'A3.2'], { measured: 62, unit: '%' });
  const { labels } = findingDimensions(surveyedWall(handWall()), drawing, [of], 0.5, 'mm');
  // The unit is 200 × 60 on its sheet; the words 32 px over it, which is 16 mm.
  expect(labels.map(({ text, at }) => [text, ...at])).toEqual([['1: 62 %', 100, 76]]);
});

test('nothing is drawn where the view shows neither that face nor that part', () => {
  const drawing = drawingOf(surveyedWall(handWall()), { kind: 'behind', unit: 'A1.1' }, 'mm');
  const drawn = findingDimensions(
    surveyedWall(handWall()),
    drawing,
    [dimension('proud-unit', ['A3.2'])],
    1,
    'mm',
  );
  expect(drawn).toEqual({ shapes: [], labels: [] });
});
