import type { Opening, Panel, Support, Tie, Wall } from '../../lib/wall/model';
import { BLOCK, ledge, tieGrid, times, wallOf } from './build';

/**
 * Anchored blocks, five courses, two blocks each side of an opening `wide` blocks wide in courses 2 to 4: x from 790, width
 * 400·wide + 10, y from 200 to 800. The lintel bears `bearing` on both sides; each jamb has two ties 90 mm from it.
 */
export function openingWall(wide: number, bearing: number, lintel: Partial<Support> = {}): Wall {
  const width = 400 * wide + 10;
  const full = times(wide + 4, 390);
  const split = [390, 390, -width, 390, 390];
  const opening: Opening = {
    id: 'A-window1',
    panel: 'A',
    kind: 'window',
    x: 790,
    y: 200,
    width,
    height: 600,
  };
  const studs = [700, 790 + width + 90];
  const over = ledge(790 - bearing, 790 + width + bearing, {
    id: 'A-lintel1',
    kind: 'lintel',
    material: 'steel',
    y: 800,
    opening: 'A-window1',
    ...lintel,
  });
  return wallOf(
    [full, split, split, split, full],
    {
      masonry: 'anchored',
      family: BLOCK,
      openings: [opening],
      supports: [ledge(0, 1600 + 400 * wide), over],
      ties: tieGrid(studs, [405, 605]),
    },
    { studs },
  );
}

/**
 * Anchored bricks, 490 high: an opening `width` wide (x from 190, y from 70) in the courses from 2 up to `top`, one brick
 * each side of it (and one as long as it is wide, less two joints, over and under it), under a lintel that bears 150.
 */
export function smallOpening(
  width: number,
  top: number,
  studs: readonly number[],
  ties: readonly Tie[],
): Wall {
  const full = [190, width - 20, 190];
  const split = [190, -width, 190];
  const rows = [1, 2, 3, 4, 5, 6, 7].map((course) => (course > 1 && course <= top ? split : full));
  const height = 70 * (top - 1);
  const y = 70;
  return wallOf(
    rows,
    {
      masonry: 'anchored',
      openings: [{ id: 'A-window1', panel: 'A', kind: 'window', x: 190, y, width, height }],
      supports: [
        ledge(0, 380 + width),
        ledge(40, 340 + width, {
          id: 'A-lintel1',
          kind: 'lintel',
          material: 'steel',
          y: y + height,
          opening: 'A-window1',
        }),
      ],
      ties,
    },
    { studs },
  );
}

/** Anchored blocks, six courses of `count` (1,200 high), ends that need no ties of their own unless they are free. */
export function blocks(
  studs: readonly number[],
  ties: readonly Tie[],
  panel: Partial<Panel> = {},
  count = 3,
): Wall {
  const rows = times(6, 0).map(() => times(count, 390));
  return wallOf(rows, { masonry: 'anchored', family: BLOCK, ties }, { studs, ...panel });
}

/** The opening of `openingWall(2, 150)` (x 790..1,600, y 200..800) with other ties. */
export const around = (studs: readonly number[], ties: readonly Tie[]): Wall => {
  const wall = openingWall(2, 150);
  return { ...wall, ties, panels: wall.panels.map((panel) => ({ ...panel, studs })) };
};
