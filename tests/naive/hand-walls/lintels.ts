import type { RuleSetId } from '../../../lib/limits/limit';
import type { Angle, Wall } from '../../../lib/wall/model';
import { changed, courseChanged, type HandWall, hand, wallOf, wrong } from '../build';
import { openingWall } from '../build-opening';

const BOTH = 'A-lintel1 A-window1';
const angleOf = (vertical: number, horizontal: number, thickness: number): Angle => ({
  vertical,
  horizontal,
  thickness,
});

/** An opening of 400·wide + 10 under an angle that bears 200 mm on both sides, whatever the rules. */
function withAngle(wide: number, angle: Angle, depth = 90, storeysAbove = 0): Wall {
  const wall = openingWall(wide, 200, { angle });
  return {
    ...wall,
    storeysAbove,
    family: { ...wall.family, depth },
    units: wall.units.map((unit) => ({ ...unit, depth })),
  };
}

function weak(name: string, rules: RuleSetId, wall: Wall, measured: number, limit: number): HandWall {
  return hand(name, rules, wall, wrong('weak-angle', measured, limit, BOTH));
}

function short(name: string, rules: RuleSetId, wall: Wall, measured: number, limit: number): HandWall {
  return hand(name, rules, wall, wrong('short-lintel-bearing', measured, limit, BOTH));
}

const without = (wall: Wall): Wall => ({
  ...wall,
  supports: wall.supports.filter(({ kind }) => kind === 'ledge'),
});

/** The lintel bears 200 on the left and `right` on the right of an opening that ends at 1,600. */
const lopsided = (right: number) => openingWall(2, 200, { toX: 1600 + right });

export const LINTEL_WALLS: readonly HandWall[] = [
  hand('bearing at the least, Canada', 'canada', openingWall(2, 90)),
  short('bearing a step below, Canada', 'canada', openingWall(2, 89.875), 89.875, 90),
  hand('bearing a step above, Canada', 'canada', openingWall(2, 90.125)),
  // The worse end counts.
  hand('bearing at the least on the right', 'canada', lopsided(90)),
  short('bearing a step below on the right', 'canada', lopsided(89.875), 89.875, 90),
  short('bearing a step below on the left', 'canada', openingWall(2, 200, { fromX: 700.125 }), 89.875, 90),
  hand('bearing at the least, Ontario', 'ontario', openingWall(2, 150)),
  short('bearing a step below, Ontario', 'ontario', openingWall(2, 149.875), 149.875, 150),
  // 4 in = 101.6.
  hand('bearing just above the least, United States', 'united-states', openingWall(2, 101.625)),
  short('bearing just below, United States', 'united-states', openingWall(2, 101.5), 101.5, 101.6),
  // 810 wide: 100. 1,210 wide: 150.
  hand('bearing at the least over 810, United Kingdom', 'united-kingdom', openingWall(2, 100)),
  short(
    'bearing a step below over 810, United Kingdom',
    'united-kingdom',
    openingWall(2, 99.875),
    99.875,
    100,
  ),
  hand('bearing at the least over 1,210, United Kingdom', 'united-kingdom', openingWall(3, 150)),
  short(
    'bearing a step below over 1,210, United Kingdom',
    'united-kingdom',
    openingWall(3, 149.875),
    149.875,
    150,
  ),

  // Course 5 over 790..1,600: the blocks from 800 and from 1,200.
  hand('no lintel', 'canada', without(openingWall(2, 100)), wrong('no-lintel', 0, 1, 'A-window1 A5.3 A5.4')),
  // Two courses above an opening 190..400: only A2.2 (200..390) of the lower one is named.
  hand(
    'no lintel under two courses',
    'canada',
    wallOf(
      [
        [190, -210, 190],
        [190, 190, 190],
        [190, 190, 190],
      ],
      {
        masonry: 'anchored',
        openings: [{ id: 'A-window1', panel: 'A', kind: 'window', x: 190, y: 0, width: 210, height: 70 }],
      },
    ),
    wrong('no-lintel', 0, 1, 'A-window1 A2.2'),
  ),
  hand('no lintel needed under the sky', 'canada', withoutTop(without(openingWall(2, 100)))),
  hand('no lintel asked for in an adhered wall', 'canada', {
    ...without(openingWall(2, 100)),
    masonry: 'adhered',
  }),
  // A lintel serves by where it lies, not by the opening it names.
  hand('lintel that names another opening', 'canada', openingWall(2, 100, { opening: 'A-window2' })),
  hand(
    'lintel of wood',
    'canada',
    openingWall(2, 100, { material: 'wood' }),
    wrong('no-lintel', 0, 1, 'A-window1 A5.3 A5.4'),
  ),

  // Canada, 90 mm: L89×89×6.4 carries 2.47 m. 2,410 wide.
  hand('angle at the least, Canada', 'canada', withAngle(6, angleOf(89, 89, 6.4))),
  hand('angle above the least, Canada', 'canada', withAngle(6, angleOf(102, 89, 7.9))),
  weak('angle too thin, Canada', 'canada', withAngle(6, angleOf(89, 89, 6.25)), 6.25, 6.4),
  weak('angle with too short a level leg, Canada', 'canada', withAngle(6, angleOf(89, 76, 8)), 76, 89),
  weak('angle with too short an upright leg, Canada', 'canada', withAngle(6, angleOf(76, 89, 6.4)), 76, 89),
  // 76/89 = 0.854, 80/89 = 0.899, 5/6.4 = 0.781.
  weak('angle short in all, worst in thickness', 'canada', withAngle(6, angleOf(76, 80, 5)), 5, 6.4),
  // 2,810 wide: the first row that carries it is 127×89×7.9 (3.31 m); 102/127 = 0.803, 6.4/7.9 = 0.810.
  weak('angle of too short a span', 'canada', withAngle(7, angleOf(102, 89, 6.4)), 102, 127),
  // 75 mm has a lighter row: L89×76×6.4 carries 2.55 m. 80 mm is read in the column of 90.
  hand('angle at the least, 75 mm, Canada', 'canada', withAngle(6, angleOf(89, 76, 6.4), 75)),
  weak('angle of 75 mm under 80 mm, Canada', 'canada', withAngle(6, angleOf(89, 76, 6.4), 80), 76, 89),
  // 3,610 wide: no row carries more than 3.48 m under 90 mm.
  weak('opening too wide for the table', 'canada', withAngle(9, angleOf(200, 200, 20)), 3610, 3480),
  // Ontario, 90 mm, 4,010 wide: first row 152×89×13 (4.07 m); L178×102×11 (4.30 m) comes later and is thinner.
  hand('angle of a later row, Ontario', 'ontario', withAngle(10, angleOf(178, 102, 11))),
  weak('angle of no row, Ontario', 'ontario', withAngle(10, angleOf(178, 89, 11)), 11, 13),
  // United States, 1,610 wide. No storey above: L3×3×1/4 carries 6 ft (1,828.8); one storey: 4 ft 6 in (1,371.6), so L4×3×1/4.
  hand('angle at the least, United States', 'united-states', withAngle(4, angleOf(76.2, 76.2, 6.35))),
  weak(
    'angle a step short, United States',
    'united-states',
    withAngle(4, angleOf(76.125, 76.2, 6.35)),
    76.125,
    76.2,
  ),
  weak(
    'angle under a storey, United States',
    'united-states',
    withAngle(4, angleOf(76.2, 76.2, 6.35), 90, 1),
    76.2,
    101.6,
  ),
  hand('angle at the least under a storey', 'united-states', withAngle(4, angleOf(101.6, 76.2, 6.35), 90, 1)),
  // No table: at least 1/4 in thick with a level leg of 3 in.
  hand('angle at the least, no table', 'united-kingdom', withAngle(2, angleOf(100, 76.2, 6.35))),
  weak(
    'level leg a step short, no table',
    'united-kingdom',
    withAngle(2, angleOf(100, 76.125, 8)),
    76.125,
    76.2,
  ),
  weak('thickness just short, no table', 'united-kingdom', withAngle(2, angleOf(100, 80, 6.25)), 6.25, 6.35),
  // 5/6.35 = 0.79, 76/76.2 = 0.997.
  weak('both short, no table', 'united-kingdom', withAngle(2, angleOf(100, 76, 5)), 5, 6.35),

  // Over the lintel the bed is 810 − 800; A5.3 and A5.4 have nothing else below. Lifted 5.125 the whole course is 15.125 thick.
  hand(
    'thick bed over masonry and lintel',
    'canada',
    courseChanged(openingWall(2, 100), 5, ({ y }) => ({ y: y + 5.125 })),
    wrong(
      'thick-joint',
      15.125,
      15,
      'A5.1 A5.1-bed A5.2 A5.2-bed A5.3 A5.3-bed A5.4 A5.4-bed A5.5 A5.5-bed A5.6 A5.6-bed',
    ),
  ),
  // Lintel 5 under course 5: A5.2 (400..790) still stands on A4.2 at both ends (10 and 10), A5.3 on the lintel (5, the least).
  hand('masonry counts before the lintel', 'canada', openingWall(2, 100, { y: 805 })),
  // 110 under it, more than half a gauge (100): nothing rests on it, so nothing overhangs it and A5.3 has no bed.
  hand(
    'lintel too low to carry',
    'canada',
    openingWall(2, 100, { y: 700, front: -60 }),
    wrong('no-lintel', 0, 1, 'A-window1 A5.3 A5.4'),
  ),
  hand(
    'tapering bed over a lintel',
    'canada',
    changed(openingWall(2, 100), { 'A5.3': { y: 812, fall: 4.125 } }),
    wrong('tapering-bed', 4.125, 4, 'A5.3 A5.3-bed'),
  ),
];

function withoutTop(wall: Wall): Wall {
  return {
    ...wall,
    units: wall.units.filter(({ course }) => course < 5),
    panels: wall.panels.map((panel) => ({ ...panel, courses: 4 })),
  };
}
