import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../../lib/drawing/shape';
import { aboveView } from '../../../lib/views/plan/above';
import { belowView } from '../../../lib/views/plan/below';
import { breaksIn, stripsOf } from '../../../lib/views/plan/strips';
import { sideView } from '../../../lib/views/section/side';
import { surveyOf } from '../../../lib/wall/survey';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { HAND_LEDGE, handWall, handWallWith, handWindow } from './hand-wall';

function spotOf(drawing: Drawing, part: string) {
  const spot = drawing.spots.find((each) => each.part === part);
  return spot && [spot.x, spot.y, spot.width, spot.height];
}

const texts = ({ labels }: Drawing) => labels.map(({ text }) => text);
const above = (wall = handWall(), course = 2) =>
  aboveView(surveyedWall(wall), { kind: 'above', panel: 'A', course }, 'mm');
const below = (at: string, wall = handWindow()) => belowView(surveyedWall(wall), { kind: 'below', at }, 'mm');
const side = (x: number, wall = handWall()) =>
  sideView(surveyedWall(wall), { kind: 'side-section', panel: 'A', x }, 'mm');

describe('a course from above: x along, out of the wall down', () => {
  test('units and head joints lie where they are, units 100 deep behind the face line', () => {
    expect(spotOf(above(), 'A2.2')).toEqual([105, 0, 200, 100]);
    // A tooled joint lies 4 mm in.
    expect(spotOf(above(), 'A2.1/2')).toEqual([95, 4, 10, 96]);
  });
  test('a unit that stands 8 mm out lies 8 mm further down the sheet', () => {
    expect(spotOf(above(handWallWith('A2.2', { set: 8 })), 'A2.2')).toEqual([105, -8, 200, 100]);
  });
  test('a twist of 12 turns the face 6 mm out at the right end and 6 mm back at the left', () => {
    const rings = above(handWallWith('A2.2', { twist: 12 })).shapes.flatMap((shape) =>
      shape.kind === 'area' ? shape.rings : [],
    );
    expect(rings).toContainEqual([
      [105, 6],
      [305, -6],
      [305, 94],
      [105, 106],
    ]);
  });
  test('a strap lies on the course: 40 mm in the bed, through an air space of 50 to the backing', () => {
    // x 310, 24 wide; its tip 40 mm in front of the back of the units (100), its foot at 150.
    expect(spotOf(above(), 'A-tie2.1')).toEqual([298, 60, 24, 90]);
    expect(spotOf(above(handWall(), 3), 'A-tie2.1')).toBeUndefined();
  });
  test('a window is a gap between the jambs of the courses beside it, not of those over it', () => {
    expect(spotOf(above(handWindow(), 1), 'A-window1')).toEqual([205, 0, 210, 100]);
    expect(spotOf(above(handWindow(), 3), 'A-window1')).toBeUndefined();
  });
  test('only that course is there', () => {
    expect(above().spots.map(({ part }) => part)).toEqual([
      'A2.1',
      'A2.1/2',
      'A2.2',
      'A2.2/3',
      'A2.3',
      'A2.3/4',
      'A2.4',
      'A-tie2.1',
    ]);
  });
  test.each([
    ['B', 1, 'above: wall "B" has no course 1'],
    ['A', 5, 'above: wall "A" has no course 5'],
  ])('wall %s, course %s is refused', (panel, course, message) => {
    expect(() => aboveView(surveyedWall(handWall()), { kind: 'above', panel, course }, 'mm')).toThrow(
      message,
    );
  });
});

describe('a long plan in strips', () => {
  test('up to 1,500 mm in one piece, more in equal parts', () => {
    expect(stripsOf(0, 1500, [])).toEqual([{ from: 0, to: 1500 }]);
    expect(stripsOf(0, 3200, [])).toEqual([
      { from: 0, to: 3200 / 3 },
      { from: 3200 / 3, to: 6400 / 3 },
      { from: 6400 / 3, to: 3200 },
    ]);
  });
  test('broken at the head joint nearest to where it would be', () => {
    const course = surveyOf(handWall()).panels[0]?.courses[0] ?? [];
    expect(breaksIn(course)).toEqual([205, 415]);
    expect(stripsOf(0, 1600, [205, 415, 790, 830])).toEqual([
      { from: 0, to: 790 },
      { from: 790, to: 1600 },
    ]);
  });
});

describe('from below, as in a mirror held under the edge', () => {
  test('a ledge 20 mm back of the face hides all but 20 mm of the units', () => {
    expect(spotOf(below('A'), 'A-ledge')).toEqual([0, 20, 620, 170]);
    expect(spotOf(below('A'), 'A1.1')).toEqual([0, 0, 200, 100]);
    expect(texts(below('A'))).toContain('overhang here 20 mm');
  });
  test('where the ledge stops short it hides no more', () => {
    const wall = handWall({ supports: [{ ...HAND_LEDGE, toX: 415 }] });
    expect(spotOf(below('A', wall), 'A-ledge')).toEqual([0, 20, 415, 170]);
  });
  test('no ledge, no overhang', () => {
    expect(
      texts(below('A', handWall({ supports: [] }))).filter((text) => text.startsWith('overhang')),
    ).toEqual([]);
  });
  test('under a lintel: the steel, the units on it, the opening', () => {
    const drawing = below('A-lintel1');
    // Sheet x runs from 260 mm left of the window's jamb at 205: −55. Steel from 105 to 535, 16 back of the face, 80 deep. A3.1 ends at 200.
    expect(spotOf(drawing, 'A-lintel1')).toEqual([160, 16, 430, 80]);
    expect(drawing.spots.map(({ part }) => part).sort()).toEqual(['A-lintel1', 'A-window1', 'A3.2']);
    expect(texts(drawing)).toContain('overhang here 16 mm');
  });
  test('without a lintel there is no steel to see', () => {
    const wall = { ...handWindow(), supports: [HAND_LEDGE] };
    expect(below('A-window1', wall).spots.map(({ part }) => part)).not.toContain('A-lintel1');
  });
  test('a place that is none is refused', () => {
    expect(() => below('A9.9')).toThrow('below: nothing to look up at at "A9.9"');
  });
});

describe('from the side, cut at x', () => {
  test('the units of every course that the cut goes through, back to face', () => {
    const units = side(300).spots.filter(({ part }) => /^A\d\.\d$/.test(part));
    // x 300 lies in A1.2 (210 to 410), A2.2 (105 to 305), A3.2, A4.2.
    expect(units.map(({ part }) => part)).toEqual(['A1.2', 'A2.2', 'A3.2', 'A4.2']);
    expect(spotOf(side(300), 'A3.2')).toEqual([-100, 150, 100, 60]);
  });
  test('a unit twisted by 12 stands as far out as it does at the cut: at its right end 6 mm', () => {
    expect(spotOf(side(410, handWallWith('A3.2', { twist: 12 })), 'A3.2')?.[0]).toBe(-94);
  });
  test('through the window: sill and head, no units between', () => {
    const drawing = side(310, handWindow());
    const units = drawing.spots.map(({ part }) => part).filter((part) => /^A\d\.\d$/.test(part));
    expect(units).toEqual(['A3.2', 'A4.2']);
    expect(drawing.spots.map(({ part }) => part)).toEqual(
      expect.arrayContaining(['A-window1', 'A-lintel1', 'A-ledge']),
    );
  });
  test('beside the lintel it is not cut', () => {
    expect(side(50, handWindow()).spots.map(({ part }) => part)).not.toContain('A-lintel1');
  });
  test('says where it is cut, in the chosen lengths', () => {
    expect(texts(side(300))).toContain('Wall A, cut 300 mm from its left end.');
    const inches = sideView(
      surveyedWall(handWall()),
      { kind: 'side-section', panel: 'A', x: 304.8 },
      'inches',
    );
    expect(texts(inches)).toContain('Wall A, cut 12 in from its left end.');
  });
  test('of an adhered wall the mortar behind is not shown', () => {
    const adhered = handWall({ masonry: 'adhered', cavity: 0, supports: [], ties: [], flashings: [] });
    expect(texts(side(300, adhered))).toContain('mortar behind: lift a unit');
    expect(side(300, adhered).spots.every(({ part }) => !part.includes('tie'))).toBe(true);
  });
  test('a wall that is none is refused', () => {
    expect(() =>
      sideView(surveyedWall(handWall()), { kind: 'side-section', panel: 'C', x: 1 }, 'mm'),
    ).toThrow('side: no wall "C"');
  });
});
