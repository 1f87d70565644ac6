import { describe, expect, test } from 'vitest';
import { labelNodes } from '../../../lib/drawing/label-nodes';
import { scaleBar } from '../../../lib/drawing/scale-bar';
import type { Drawing, Label } from '../../../lib/drawing/shape';
import { beforeCoverView } from '../../../lib/views/behind/before-cover';
import { behindView } from '../../../lib/views/behind/behind';
import { strapBox } from '../../../lib/views/behind/straps';
import { caliper, partReadouts } from '../../../lib/views/pointing/part-readouts';
import { surveyOf } from '../../../lib/wall/survey';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { HAND_PANEL, HAND_TIE, handWall, handWallWith } from './hand-wall';

const areasOf = ({ shapes }: Drawing, fill: string) =>
  shapes.flatMap((shape) => (shape.kind === 'area' && shape.fill === fill ? [shape.rings] : []));

describe('before cover', () => {
  test('a strap hangs as long as air space and bedding together, as wide as it is', () => {
    // 50 + 40 = 90 long below y = 145; 24 wide about x = 310.
    expect(strapBox(handWall(), HAND_TIE)).toEqual({ x: 298, y: 55, width: 24, height: 90 });
  });

  test.each([
    [1, '1.00 mm'],
    [0.76, '0.76 mm'],
    [0.5, '0.50 mm'],
    [0.478, '0.48 mm'],
  ])('a caliper on %s reads %s', (thickness, text) => {
    expect(caliper(thickness)).toBe(text);
  });

  test.each([
    [1, '0.039 in'],
    [0.76, '0.030 in'],
    [1.6, '0.063 in'],
  ])('in inches a caliper on %s reads %s', (thickness, text) => {
    expect(caliper(thickness, 'inches')).toBe(text);
  });

  test('every tie carries its reading', () => {
    const wall = handWall({ ties: [HAND_TIE, { ...HAND_TIE, id: 'A-tie2.2', x: 520, thickness: 0.48 }] });
    const texts = beforeCoverView(surveyedWall(wall), 'mm').labels.map(({ text }) => text);
    expect(texts.filter((text) => text.endsWith(' mm'))).toEqual(['1.00 mm', '0.48 mm']);
  });

  test('tapes count from the left end and from the ledge', () => {
    const numbers = (system: 'mm' | 'inches') =>
      beforeCoverView(surveyedWall(handWall()), system)
        .labels.map(({ text }) => text)
        .filter((text) => /^\d+$/.test(text));
    // 620 along and 280 up: numbers at 0 and 500, and at 0. In inches every 16: 24.4 along, 11 up.
    expect(numbers('mm')).toEqual(['0', '500', '0']);
    expect(numbers('inches')).toEqual(['0', '16', '0']);
  });
});

describe('a corner from above, before cover', () => {
  // The return leaves along (175, −600), 625 long: 175 / 625 of 1000 is 280 along the wall it should be square to.
  const turned = handWall({
    kind: 'door-corner',
    panels: [
      { ...HAND_PANEL, rightEnd: 'corner' },
      {
        ...HAND_PANEL,
        id: 'B',
        leftEnd: 'corner',
        plan: { leftX: 620, leftZ: 0, rightX: 795, rightZ: -600 },
      },
    ],
  });

  test('says how far 1 m along the return lies off the square line, to the eye and aloud', () => {
    const { labels } = beforeCoverView(surveyedWall(turned), 'mm');
    expect(labels.map(({ text }) => text)).toContain('280 mm off the dotted');
    expect(partReadouts(surveyOf(turned), { kind: 'before-cover' }, 'mm').get('A-B-corner')).toBe(
      ', 1000 mm along wall B lies 280 mm off square',
    );
  });

  test('is where the corner is picked, and inside the sheet', () => {
    const { spots, box } = beforeCoverView(surveyedWall(turned), 'mm');
    const [spot, ...others] = spots.filter(({ part }) => part === 'A-B-corner');
    expect(others).toEqual([]);
    // From the end of wall A, 1000 to the left, to 280 right of the corner.
    expect(spot?.width).toBeCloseTo(1280, 9);
    expect(spot && spot.y >= box.y && spot.y + spot.height < 0).toBe(true);
  });

  test('a wall without a corner has none', () => {
    expect(beforeCoverView(surveyedWall(handWall()), 'mm').labels.map(({ text }) => text)).not.toContain(
      'Corner from above',
    );
  });
});

describe('behind a unit', () => {
  const back = [{ x: -5, y: 12, width: 150, height: 80 }];
  const adhered = handWallWith('A2.2', { back }, { masonry: 'adhered', cavity: 0, supports: [], ties: [] });

  test('mortar is cut off at the edges of the unit and stays on its own side', () => {
    const [rings = []] = areasOf(behindView(surveyedWall(adhered), 'A2.2', 'mm'), 'url:mortar');
    const points = rings.flat();
    expect(Math.min(...points.map(([x]) => x))).toBe(0);
    expect(Math.max(...points.map(([, y]) => y))).toBe(60);
    expect(Math.abs(Math.max(...points.map(([x]) => x)) - 145)).toBeLessThanOrEqual(0.33);
    expect(Math.abs(Math.min(...points.map(([, y]) => y)) - 12)).toBeLessThanOrEqual(0.33);
  });

  test('ten by ten fields', () => {
    const grids = behindView(surveyedWall(adhered), 'A2.2', 'mm').shapes.flatMap((shape) =>
      shape.kind === 'area' && shape.pen?.paint === '#1f4f80' ? [shape.rings] : [],
    );
    expect(grids.map((rings) => rings.length)).toEqual([22]);
  });

  test('anchored: the strap lies in the bed under the unit as deep as it is embedded', () => {
    // Tie over course 2 at 310 lies under A3.2, which starts at 210: its strap from 88 to 112, 40 deep from the back of the bed.
    const [rings = []] = areasOf(behindView(surveyedWall(handWall()), 'A3.2', 'mm'), '#8d989e');
    const [lowLeft, , highRight] = rings[0] ?? [];
    expect(lowLeft).toEqual([88, -130]);
    expect(highRight).toEqual([112, -64]);
    expect(areasOf(behindView(surveyedWall(handWall()), 'A4.1', 'mm'), '#8d989e')).toEqual([]);
  });

  test('a unit that is not there', () => {
    expect(() => behindView(surveyedWall(handWall()), 'A9.9', 'mm')).toThrow(
      'behind: this wall has no unit "A9.9"',
    );
  });
});

describe('texts and scale bars', () => {
  test('a text without room waits until the reader is nearer', () => {
    const label: Label = { at: [0, 0], text: '1.00 mm', anchor: 'middle', room: 100 };
    const plain = (paint: string) => paint;
    // Seven letters of 13 px × 0.6 are 54.6 px: 100 mm of room are enough up to 1.83 mm a pixel.
    expect(labelNodes([label], 1.8, plain)).toHaveLength(1);
    expect(labelNodes([label], 1.9, plain)).toHaveLength(0);
  });

  test('a text that stands for another is there only while the other has no room', () => {
    const other: Label = { at: [0, 0], text: '1.00 mm', anchor: 'middle', room: 100 };
    const label: Label = { at: [0, 0], text: 'Zoom in', anchor: 'start', standsFor: other };
    const plain = (paint: string) => paint;
    expect(labelNodes([label], 1.8, plain)).toHaveLength(0);
    expect(labelNodes([label], 1.9, plain)).toHaveLength(1);
  });

  test.each([
    [250, 'mm', 1, '200 mm', 200],
    [99, 'mm', 1, '50 mm', 50],
    [250, 'mm', 0.25, '1000 mm', 250],
    [160, 'inches', 1, '6 in', 152.4],
  ] as const)('in %s mm of room, in %s at %s: %s', (room, system, scale, text, long) => {
    const bar = scaleBar(0, 0, room, 10, system, scale);
    expect(bar.label.text).toBe(text);
    expect(bar.label.at[0]).toBeCloseTo(long + 10, 9);
  });
});
