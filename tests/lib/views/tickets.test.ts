import { describe, expect, test } from 'vitest';
import { labelNodes } from '../../../lib/drawing/label-nodes';
import type { Label } from '../../../lib/drawing/shape';
import { layPlan } from '../../../lib/generate/generate';
import { planWith } from '../../../lib/generate/planner';
import type { Box } from '../../../lib/geometry/box';
import { drawingOf } from '../../../lib/views/draw-view';
import { findingDimensions } from '../../../lib/views/pointing/finding-dimensions';
import { gridPlaceOf, placeAfterKey } from '../../../lib/views/pointing/keyboard-navigation';
import { markOnSheet } from '../../../lib/views/pointing/mark-shapes';
import { targetRows } from '../../../lib/views/pointing/targets';
import { laidStrip } from '../../../lib/views/tickets/laid-strip';
import { coursesText } from '../../../lib/views/tickets/words';
import type { View } from '../../../lib/views/view';
import type { Wall } from '../../../lib/wall/model';
import { surveyOf } from '../../../lib/wall/survey';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { HAND_BATCHES, handUnits, handWall } from './hand-wall';

const TICKETS: View = { kind: 'tickets' };
const WALL = handWall({ batches: HAND_BATCHES });

function ticketsOf(wall: Wall) {
  const drawing = drawingOf(surveyedWall(wall), TICKETS, 'mm');
  const [first, second] = drawing.spots;
  if (first === undefined || second === undefined) throw new RangeError('there are not two tickets');
  return { drawing, first, second };
}

/** What is written in a box, from the top, each line from the left. */
function textIn({ x, y, width, height }: Box, labels: readonly Label[]): readonly string[] {
  return labels
    .filter(({ at }) => at[0] > x && at[0] < x + width && at[1] > y && at[1] < y + height)
    .sort((a, b) => b.at[1] - a.at[1] || a.at[0] - b.at[0])
    .map(({ text }) => text);
}

describe('a ticket a mixing', () => {
  const { drawing, first, second } = ticketsOf(WALL);

  test('has on it what was written down, the air in both scales', () => {
    // 25 °C × 9/5 + 32 = 77 °F.
    expect(textIn(first, drawing.labels)).toEqual([
      'Mixing 1',
      'courses 1 to 2',
      'Cement : lime : sand',
      'by volume',
      '1 : 0.5 : 4',
      'sand damp and loose',
      'Air',
      '25 °C · 77 °F',
      'Mixing to last unit laid',
      '72 min',
    ]);
    // −5 °C × 9/5 + 32 = 23 °F.
    expect(textIn(second, drawing.labels)).toEqual(
      expect.arrayContaining(['Mixing 2', '1 : 1 : 12.25', '−5 °C · 23 °F', '300 min']),
    );
  });

  test('says the same words whether it is right or wrong: only the figures differ', () => {
    const words = (box: Box) => textIn(box, drawing.labels).map((text) => text.replace(/−?[\d.]+/g, '#'));
    expect(words(second)).toEqual(words(first));
  });

  test('hangs alone on the sheet, the first at the bottom as the wall went up', () => {
    expect(drawing.spots.map(({ part }) => part)).toEqual(['batch-1', 'batch-2']);
    expect(second.y).toBeGreaterThan(first.y + first.height);
    for (const { x, y, width, height } of drawing.spots) {
      expect(x).toBeGreaterThanOrEqual(drawing.box.x);
      expect(x + width).toBeLessThanOrEqual(drawing.box.x + drawing.box.width);
      expect(y).toBeGreaterThanOrEqual(drawing.box.y);
      expect(y + height).toBeLessThanOrEqual(drawing.box.y + drawing.box.height);
    }
  });

  test('of one course alone says so', () => {
    expect(coursesText({ ...HAND_BATCHES[0], fromCourse: 4, toCourse: 4 } as Wall['batches'][number])).toBe(
      'course 4',
    );
  });

  test('a wall without any has no such drawing', () => {
    expect(() => drawingOf(surveyedWall(handWall()), TICKETS, 'mm')).toThrow(
      'tickets: this wall has no mixing tickets',
    );
  });
});

describe('a ticket is pointed at', () => {
  const { drawing, first, second } = ticketsOf(WALL);
  const rows = targetRows(surveyedWall(WALL), TICKETS, drawing, 'units', 'mm');

  test('by a name that says all that is on it, whatever was last taken hold of', () => {
    expect(rows.flatMap(({ targets }) => targets.map(({ name }) => name))).toEqual([
      'Mixing 1, courses 1 to 2, 1 cement, 0.5 lime, 4 sand by volume, sand damp and loose, air 25 °C or 77 °F, 72 minutes from mixing to the last unit laid',
      'Mixing 2, courses 3 to 4, 1 cement, 1 lime, 12.25 sand by volume, sand damp and loose, air −5 °C or 23 °F, 300 minutes from mixing to the last unit laid',
    ]);
    expect(targetRows(surveyedWall(WALL), TICKETS, drawing, 'joints', 'mm')).toEqual(rows);
  });

  test('by the keyboard: up, down, left and right lead from one to the next and no further', () => {
    const start = gridPlaceOf(rows, 'batch-1');
    const reached = (...keys: readonly string[]) =>
      keys.reduce((at, key) => at && (placeAfterKey(rows, at, key, false) ?? at), start)?.index;
    expect(reached('ArrowUp')).toBe(1);
    expect(reached('ArrowUp', 'ArrowUp')).toBe(1);
    expect(reached('ArrowUp', 'ArrowDown')).toBe(0);
    expect(reached('ArrowDown')).toBe(0);
    expect(reached('ArrowRight')).toBe(1);
    expect(reached('ArrowRight', 'ArrowLeft')).toBe(0);
  });

  test('a mark on a mixing rings its ticket; one on a unit has no place here', () => {
    const mark = { number: 1, panel: 'A', x: 0, y: 0, width: 620, height: 140, state: 'found' } as const;
    // Room of 4 px of 2 mm all round.
    expect(markOnSheet(drawing, { ...mark, part: 'batch-2' }, 2)).toEqual({
      x: second.x - 8,
      y: second.y - 8,
      width: second.width + 16,
      height: second.height + 16,
    });
    expect(markOnSheet(drawing, { ...mark, part: 'A1.1' }, 2)).toBeNull();
  });

  test('what a result measured stands over its ticket, below the one above', () => {
    const { labels } = findingDimensions(
      surveyedWall(WALL),
      drawing,
      [
        {
          number: 1,
          check: 'lean-mortar',
          parts: ['batch-1', 'A1', 'A2'],
          region: { panel: 'A', x: 0, y: 0, width: 620, height: 140 },
          measured: 2.667,
          unit: 'volumes',
        },
      ],
      2,
      'mm',
    );
    expect(labels.map(({ text }) => text)).toEqual(['1: 2.7 volumes']);
    const [, y = 0] = labels[0]?.at ?? [];
    expect(y).toBeGreaterThan(first.y + first.height);
    expect(y).toBeLessThan(second.y);
  });
});

describe('the strip of the wall beside them', () => {
  test('shows how high the courses of each mixing stand', () => {
    // 200 wide holds a whole unit of 200 at full size; 560 is twice as high as the wall, so it stands from 140 to 420.
    const strip = laidStrip(surveyOf(WALL), { x: 0, y: 0, width: 200, height: 560 });
    // Course 1 starts at 10, course 2 ends at 140; course 3 starts at 150, course 4 ends at 280.
    expect(HAND_BATCHES.map(strip.reachOf)).toEqual([
      { low: 150, high: 280 },
      { low: 290, high: 420 },
    ]);
  });

  test('is cut at the left end, or at the middle where the ends step in: a course that is there is shown', () => {
    const levels = (wall: Wall) => {
      const [mortar] = laidStrip(surveyOf(wall), { x: 0, y: 0, width: 200, height: 280 }).shapes;
      const rings = mortar?.kind === 'area' ? mortar.rings : [];
      return [...new Set(rings.map(([corner]) => corner?.[1]))];
    };
    const stepped = handUnits().filter(({ id }) => id !== 'A3.1' && id !== 'A4.1');
    // Each with the bed of 10 under it.
    expect(levels(WALL)).toEqual([0, 70, 140, 210]);
    expect(levels({ ...WALL, units: stepped })).toEqual([0, 70, 140, 210]);
  });
});

test('what is written on paper grows with it, is never smaller than other texts, and stays dark by night', () => {
  const label: Label = { at: [0, 0], text: '72 min', anchor: 'end', written: 33, strong: true };
  const drawn = (mmPerPx: number) => labelNodes([label], mmPerPx, () => 'white')[0]?.attributes;
  expect(drawn(1)).toMatchObject({ fontSize: 33, fill: '#22272b' });
  // 13 px of 4 mm.
  expect(drawn(4)).toMatchObject({ fontSize: 52 });
});

test('the numbers of courses stand clear of each other in their order, however few a mixing laid', () => {
  const laid = layPlan(planWith('plain-panel', 'anchored', 'canada', [], 4));
  const [batch] = HAND_BATCHES;
  if (batch === undefined) throw new RangeError('there is no batch');
  const batches = [
    [1, 9],
    [10, 10],
    [11, 11],
    [12, laid.panels[0]?.courses ?? 0],
  ].map(([fromCourse = 0, toCourse = 0], index) => ({
    ...batch,
    id: `batch-${index + 1}` as const,
    fromCourse,
    toCourse,
  }));
  const tags = drawingOf(surveyedWall({ ...laid, batches }), TICKETS, 'mm')
    .labels.filter(({ at }) => at[0] > 660)
    .sort((a, b) => a.at[1] - b.at[1]);
  expect(tags.map(({ text }) => text)).toEqual(['1', '9', '10', '11', '12', `${laid.panels[0]?.courses}`]);
  const gaps = tags.slice(1).map(({ at }, index) => at[1] - (tags[index]?.at[1] ?? 0));
  // A tag is 44 mm high.
  expect(gaps.filter((gap) => gap < 44)).toEqual([]);
});
