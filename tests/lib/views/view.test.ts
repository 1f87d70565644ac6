import { describe, expect, test } from 'vitest';
import { pathText, svgBox } from '../../../lib/drawing/svg-nodes';
import { parseView } from '../../../lib/views/parse-view';
import { badgeAt, badgePlace } from '../../../lib/views/pointing/mark-shapes';
import { printSvg, svgOf } from '../../../lib/views/print-svg';
import { cutsOf, undersidesOf, viewsOf } from '../../../lib/views/view';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { HAND_BATCHES, handWall, handWindow } from './hand-wall';

const adhered = handWall({
  masonry: 'adhered',
  supports: [],
  ties: [],
  cavity: 0,
  batches: HAND_BATCHES,
});

describe('which views there are', () => {
  test('anchored', () => {
    expect(viewsOf(handWall({ batches: HAND_BATCHES }))).toEqual([
      'front',
      'side-section',
      'section',
      'above',
      'below',
      'behind',
      'before-cover',
      'tickets',
    ]);
  });
  test('nothing was written down: there are no tickets to look at', () => {
    expect(viewsOf(handWall())).not.toContain('tickets');
  });
  test('adhered: nothing carries it and nothing ties it', () => {
    expect(viewsOf(adhered)).toEqual(['front', 'side-section', 'above', 'behind', 'tickets']);
    expect(undersidesOf(adhered)).toEqual([]);
  });
  test('cuts: bases, then heads', () => {
    expect(cutsOf(handWindow()).map(({ title, support }) => `${title}: ${support}`)).toEqual([
      'Base, wall A: A-ledge',
      'Over window, wall A: A-lintel1',
    ]);
  });
});

test('places to look up at: bottom edges, then heads of openings, with their lintel if there is one', () => {
  const wall = handWindow();
  const places = (of: typeof wall) => undersidesOf(of).map(({ title, at }) => `${title}: ${at}`);
  expect(places(wall)).toEqual(['Bottom edge, wall A: A', 'Over window, wall A: A-lintel1']);
  expect(places({ ...wall, supports: wall.supports.slice(0, 1) })[1]).toBe('Over window, wall A: A-window1');
});

describe('a view named in a text', () => {
  test.each([
    ['front', { kind: 'front' }],
    ['section', { kind: 'section', at: 'base', support: 'A-ledge' }],
    ['section:A-lintel1', { kind: 'section', at: 'lintel', support: 'A-lintel1' }],
    ['side-section', { kind: 'side-section', panel: 'A', x: 310 }],
    ['side-section:A,120.5', { kind: 'side-section', panel: 'A', x: 120.5 }],
    ['above', { kind: 'above', panel: 'A', course: 1 }],
    ['above:A,4', { kind: 'above', panel: 'A', course: 4 }],
    ['below', { kind: 'below', at: 'A' }],
    ['below:A-lintel1', { kind: 'below', at: 'A-lintel1' }],
    ['behind', { kind: 'behind', unit: 'A1.1' }],
    ['behind:A3.2', { kind: 'behind', unit: 'A3.2' }],
    ['before-cover', { kind: 'before-cover' }],
  ])('%s', (text, view) => {
    expect(parseView(handWindow(), text)).toEqual(view);
  });

  test.each([
    [
      'sideways',
      'view: "sideways" is not a view of this wall; it has front, side-section, section, above, below, behind, before-cover',
    ],
    ['section:A9', 'view: no section at "A9"; there is A-ledge, A-lintel1'],
    ['behind:A9.9', 'view: this wall has no unit "A9.9"'],
    ['side-section:B,10', 'view: no wall "B"; there is A'],
    ['side-section:A,621', 'view: wall A goes from 0 to 620 mm, 621 is not on it'],
    ['side-section:A,left', 'view: "left" is not a number'],
    ['side-section:A,', 'view: "" is not a number'],
    ['above:A,5', 'view: wall A has courses 1 to 4, no 5'],
    ['above:A,1.5', 'view: wall A has courses 1 to 4, no 1.5'],
    ['below:A-door1', 'view: nothing to look up at at "A-door1"; there is A, A-lintel1'],
  ])('%s is refused', (text, message) => {
    expect(() => parseView(handWindow(), text)).toThrow(message);
  });

  test('tickets, where there are some', () => {
    expect(parseView(adhered, 'tickets')).toEqual({ kind: 'tickets' });
    expect(() => parseView(handWindow(), 'tickets')).toThrow('view: "tickets" is not a view of this wall');
  });

  test('an adhered wall has no section', () => {
    expect(() => printSvg(surveyedWall(adhered), 'section')).toThrow(
      'it has front, side-section, above, behind, tickets',
    );
  });
});

describe('y is turned over once, on the way to SVG', () => {
  test('a path', () => {
    expect(
      pathText([
        [
          [0, 0],
          [10, 0],
          [10, 5],
        ],
      ]),
    ).toBe('M0 0h10v-5z');
    expect(
      pathText(
        [
          [
            [1.04, 2.06],
            [3, -4],
          ],
        ],
        true,
      ),
    ).toBe('M1 -2.1l2 6.1');
  });
  test('a box', () => {
    expect(svgBox({ x: -10, y: -20, width: 100, height: 70 })).toEqual([-10, -50, 100, 70]);
  });
});

describe('a file that stands alone', () => {
  const svg = svgOf(surveyedWall(handWall()), { kind: 'front' });
  test('every colour is in it, and every shared fill it uses', () => {
    expect(svg).not.toMatch(/var\(|--/);
    const used = new Set([...svg.matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id));
    const there = new Set([...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
    expect([...used].filter((id) => !there.has(id))).toEqual([]);
    expect(used.size).toBeGreaterThan(4);
  });
  test('one path a unit', () => {
    expect(svg.match(/fill="url\(#unit\d[ab]\)"/g)).toHaveLength(14);
  });
  test('marks are told apart by shape', () => {
    const mark = { number: 1, panel: 'A', x: 0, y: 0, width: 200, height: 60 };
    const drawn = (state: 'mark' | 'found' | 'missed' | 'false') =>
      svgOf(surveyedWall(handWall()), { kind: 'front' }, [{ ...mark, state }]).split('\n').length -
      svg.split('\n').length;
    // Halo and ring; with a plate and a tick; with a plate; with hatch, plate and cross.
    expect([drawn('mark'), drawn('found'), drawn('missed'), drawn('false')]).toEqual([2, 4, 3, 5]);
    expect(svgOf(surveyedWall(handWall()), { kind: 'front' }, [{ ...mark, state: 'missed' }])).toContain(
      'stroke-dasharray="7 5"',
    );
  });
});

test('a badge stays whole on the sheet', () => {
  const sheet = { x: -10, y: 0, width: 400, height: 300 };
  expect(badgePlace(sheet, [200, 150], 2)).toEqual([200, 150]);
  // 13 px of 2 mm from each edge.
  expect(badgePlace(sheet, [-10, 0], 2)).toEqual([16, 26]);
  expect(badgePlace(sheet, [500, 400], 2)).toEqual([364, 274]);
});

test('the badges of a small mark stand outside it, those of a large one on its corners', () => {
  const sheet = { x: 0, y: 0, width: 4000, height: 3000 };
  // 10 × 60 mm at 1 mm a pixel: a head joint. Badges are 26 px wide.
  const joint = { x: 1000, y: 1000, width: 10, height: 60 };
  expect(badgeAt(sheet, joint, 'left', 1)).toEqual([987, 1073]);
  expect(badgeAt(sheet, joint, 'right', 1)).toEqual([1023, 1073]);
  expect(badgeAt(sheet, { ...joint, width: 900, height: 400 }, 'right', 1)).toEqual([1900, 1400]);
});
