import type { Support, Wall } from '../../../lib/wall/model';
import { BLOCK, BRICK, changed, type HandWall, hand, ledge, tieGrid, wallOf, wrong } from '../build';
import { openingWall } from '../build-opening';

const rules = 'good-practice';

/** Two anchored courses of three bricks, 590 long, tied at 100 and 490, on these supports. */
function onLedge(supports: readonly Support[], depth = 90): Wall {
  const courses = [
    [190, 190, 190],
    [190, 190, 190],
  ];
  const studs = [100, 490];
  return wallOf(
    courses,
    { masonry: 'anchored', family: { ...BRICK, depth }, supports, ties: tieGrid(studs, [75]) },
    { studs },
  );
}
const oversailing = (by: number, depth = 90, change: Partial<Support> = {}) =>
  onLedge([ledge(0, 590, { front: -by, ...change })], depth);
const LEDGE_AND_ALL = 'A-ledge A1.1 A1.2 A1.3';

/** Two courses, and one between them without short pieces, with an opening in the middle. */
const atJamb = (lower: readonly number[], upper: readonly number[]) =>
  wallOf([lower, [190, 190, -280, 190, 190], upper]);

const pieces = (...rows: readonly (readonly number[])[]) => wallOf(rows);

export const SUPPORT_WALLS: readonly HandWall[] = [
  // 90 mm: a third is 30, and 25 is stricter.
  hand('overhang at the most, 90 mm, Canada', 'canada', oversailing(25)),
  hand(
    'overhang a step above, 90 mm, Canada',
    'canada',
    oversailing(25.125),
    wrong('overhang-too-far', 25.125, 25, LEDGE_AND_ALL),
  ),
  // Under 90 mm: 12.
  hand('overhang at the most, 75 mm, Canada', 'canada', oversailing(12, 75)),
  hand(
    'overhang a step above, 75 mm, Canada',
    'canada',
    oversailing(12.125, 75),
    wrong('overhang-too-far', 12.125, 12, LEDGE_AND_ALL),
  ),
  // A third of 90.
  hand('overhang at the most, United States', 'united-states', oversailing(30)),
  hand(
    'overhang a step above, United States',
    'united-states',
    oversailing(30.125),
    wrong('overhang-too-far', 30.125, 30, LEDGE_AND_ALL),
  ),
  hand('overhang at the most, United Kingdom', 'united-kingdom', oversailing(25)),
  hand(
    'overhang a step above, United Kingdom',
    'united-kingdom',
    oversailing(25.125),
    wrong('overhang-too-far', 25.125, 25, LEDGE_AND_ALL),
  ),
  // One unit 3 proud of a ledge 27.125 back: 30.125. Its neighbours are at 0: proud by 3, which passes.
  hand(
    'overhang of one proud unit',
    rules,
    changed(oversailing(27.125), { 'A1.2': { set: 3 } }),
    wrong('overhang-too-far', 30.125, 30, LEDGE_AND_ALL),
  ),
  // The units of course 2 do not rest on the ledge.
  hand('overhang of a unit higher up', rules, changed(oversailing(29), { 'A2.2': { set: 3 } })),
  // On a lintel: the four blocks of course 5 over 690..1,700.
  hand(
    'overhang on a lintel',
    'canada',
    openingWall(2, 100, { front: -25.125 }),
    wrong('overhang-too-far', 25.125, 25, 'A-lintel1 A5.2 A5.3 A5.4 A5.5'),
  ),
  // Adhered: nothing stands on the ledge to overhang.
  hand('no overhang of an adhered wall', 'canada', { ...oversailing(60), masonry: 'adhered' }),

  hand('whole ledge', rules, onLedge([ledge(0, 590)])),
  // The joint 190..200 needs no ledge.
  hand(
    'ledge in two parts that meet in a joint',
    rules,
    onLedge([ledge(0, 190), ledge(200, 590, { id: 'A-ledge2' })]),
  ),
  // A1.3 from 400 stands on 95 of 190: 475 of 570.
  hand(
    'ledge too short',
    rules,
    onLedge([ledge(0, 495)]),
    wrong('no-bearing-return', 83.33333333333333, 100, 'A-ledge A1.3'),
  ),
  // 189.875 of 190: 569.875 of 570.
  hand(
    'ledge a step too short',
    rules,
    onLedge([ledge(0, 589.875)]),
    wrong('no-bearing-return', 99.9780701754386, 100, 'A-ledge A1.3'),
  ),
  // A1.1 stands on 190 (twice, which counts once), A1.2 on nothing, A1.3 on 490..590: 290 of 570.
  hand(
    'ledge with a gap',
    rules,
    onLedge([ledge(0, 195), ledge(0, 195, { id: 'A-ledge2' }), ledge(490, 590, { id: 'A-ledge3' })]),
    wrong('no-bearing-return', 50.87719298245614, 100, 'A-ledge A-ledge2 A-ledge3 A1.2 A1.3'),
  ),
  // Wood does not count; nothing else is there. An overhang on wood is not asked for.
  hand(
    'ledge of wood',
    rules,
    oversailing(60, 90, { material: 'wood' }),
    wrong('no-bearing-return', 0, 100, LEDGE_AND_ALL),
  ),
  hand('no ledge', rules, onLedge([]), wrong('no-bearing-return', 0, 100, 'A1.1 A1.2 A1.3')),
  hand('no ledge under an adhered wall', rules, wallOf([[190, 190]], { supports: [] })),

  // Depth 90: a piece may be 90 long.
  hand('piece at the least', rules, pieces([190, 90, 190])),
  hand('piece a step below', rules, pieces([190, 89.875, 190]), wrong('sliver-piece', 89.875, 90, 'A1.2')),
  hand('piece a step above', rules, pieces([190, 90.125, 190])),
  // Thinner units may be shorter: 75.
  hand(
    'piece a step below the depth of a thin unit',
    rules,
    wallOf([[190, 74.875, 190]], { family: { ...BRICK, depth: 75 } }),
    wrong('sliver-piece', 74.875, 75, 'A1.2'),
  ),
  hand(
    'closers two courses apart',
    rules,
    pieces([60, 190, 190], [190, 190, 60], [60, 190, 190], [190, 190, 60]),
  ),
  // 60 and 63 are alike.
  hand('closers alike at the most', rules, pieces([60, 190, 190], [190, 190], [63, 190, 190])),
  hand(
    'closers alike no more',
    rules,
    pieces([60, 190, 190], [190, 190], [63.125, 190, 190]),
    wrong('sliver-piece', 60, 90, 'A1.1'),
    wrong('sliver-piece', 63.125, 90, 'A3.1'),
  ),
  hand('closers three courses apart', rules, pieces([60, 190], [190, 190], [190, 190], [60, 190])),
  hand(
    'closers four courses apart',
    rules,
    pieces([60, 190], [190, 190], [190, 190], [190, 190], [60, 190]),
    wrong('sliver-piece', 60, 90, 'A1.1'),
    wrong('sliver-piece', 60, 90, 'A5.1'),
  ),
  hand(
    'short piece alone at an end',
    rules,
    pieces([60, 190, 190], [190, 190], [190, 190]),
    wrong('sliver-piece', 60, 90, 'A1.1'),
  ),
  // Answered, but not at an end of its course.
  hand(
    'short pieces away from the ends',
    rules,
    pieces([190, 60, 190], [190, 190], [190, 60, 190]),
    wrong('sliver-piece', 60, 90, 'A1.2'),
    wrong('sliver-piece', 60, 90, 'A3.2'),
  ),
  hand('closers at a jamb', rules, atJamb([190, 60, -410, 190, 190], [190, 60, -410, 190, 190])),
  hand(
    'short piece at a jamb',
    rules,
    atJamb([190, 60, -410, 190, 190], [190, 190, -280, 190, 190]),
    wrong('sliver-piece', 60, 90, 'A1.2'),
  ),
  // 100 long would do by itself in a wall of blocks 90 deep, however short it looks beside 390.
  hand('short block', rules, wallOf([[390, 100, 390]], { family: BLOCK })),
];
