import type { RuleSetId } from '../../lib/limits/limit';
import type { Panel, Tie, Wall } from '../../lib/wall/model';
import { BLOCK, type HandWall, hand, openingWall, tie, tieGrid, times, wallOf, wrong } from './build';

/** Anchored blocks, six courses of `count` (1,200 high), ends that need no ties of their own unless they are free. */
function blocks(studs: readonly number[], ties: readonly Tie[], panel: Partial<Panel> = {}, count = 3): Wall {
  const rows = times(6, 0).map(() => times(count, 390));
  return wallOf(rows, { masonry: 'anchored', family: BLOCK, ties }, { studs, ...panel });
}

/** Two columns at 100 and 100 + h; the left one tied at 205 and 205 + v, the right one at 205 only. */
const grid = (h: number, v: number) =>
  blocks([100, 100 + h], [tie('1', 100, 205), tie('2', 100, 205 + v), tie('3', 100 + h, 205)]);
const far = (name: string, rules: RuleSetId, wall: Wall, measured: number, limit: number) =>
  hand(name, rules, wall, wrong('ties-too-far-apart', measured, limit, 'A'));

const FREE: Partial<Panel> = { leftEnd: 'free' };
/** A free left end 1,200 high, tied at these places; the rest of the wall is nobody's business. */
const end = (ties: readonly Tie[], panel: Partial<Panel> = {}) =>
  blocks([100, 500], ties, { ...FREE, ...panel });

/** The opening of `openingWall(2, 150)` (x 790..1,600, y 200..800) with other ties. */
const around = (studs: readonly number[], ties: readonly Tie[]): Wall => {
  const wall = openingWall(2, 150);
  return { ...wall, ties, panels: wall.panels.map((panel) => ({ ...panel, studs })) };
};
const JAMBS = [...tieGrid([700, 1690], [405, 605])];
const single = (change: Partial<Tie>) => blocks([100], [tie('1', 100, 205, change)]);

export const TIE_WALLS: readonly HandWall[] = [
  // Canada: 400 high with 800 wide, 500 with 600, 600 with 400.
  hand('ties 800 × 400', 'canada', grid(800, 400)),
  far('ties 800 × a step above 400', 'canada', grid(800, 400.125), 400.125, 400),
  far('ties a step above 800', 'canada', grid(800.125, 400), 800.125, 800),
  hand('ties 600 × 500', 'canada', grid(600, 500)),
  far('ties 600 × a step above 500', 'canada', grid(600, 500.125), 500.125, 500),
  far('ties a step above 600 × 500', 'canada', grid(600.125, 500), 500, 400),
  hand('ties 400 × 600', 'canada', grid(400, 600)),
  far('ties 400 × a step above 600', 'canada', grid(400, 600.125), 600.125, 600),
  far('ties a step above 400 × 600', 'canada', grid(400.125, 600), 600, 500),
  // One column has no neighbour: 0 wide.
  hand('one column', 'canada', blocks([100], tieGrid([100], [205, 805]))),
  far('one column, a step above', 'canada', blocks([100], tieGrid([100], [205, 805.125])), 600.125, 600),
  // The wider side counts: 400 to the left, 600 to the right of the middle column.
  far(
    'wider side of a middle column',
    'canada',
    blocks(
      [100, 500, 1100],
      [tie('1', 100, 205), tie('2', 500, 205), tie('3', 500, 705.125), tie('4', 1100, 205)],
    ),
    500.125,
    500,
  ),
  // A tie 50 off its stud belongs to it all the same: 800 wide, not 750.
  far(
    'ties off their stud',
    'canada',
    blocks([100, 900], [tie('1', 100, 205), tie('2', 100, 605.125), tie('3', 850, 205)]),
    400.125,
    400,
  ),
  // A stud without ties is no column: the next is 800 away.
  far(
    'stud without ties',
    'canada',
    blocks([100, 500, 900], [tie('1', 100, 205), tie('2', 100, 605.125), tie('3', 900, 205)]),
    400.125,
    400,
  ),
  // The worse by ratio: 500.125 / 400 at 800 wide, though the column at 100 has 450 / 400.
  far(
    'worst gap of two',
    'canada',
    blocks([100, 900], [...tieGrid([100], [205, 655]), tie('3', 900, 205), tie('4', 900, 705.125)]),
    500.125,
    400,
  ),

  // United States: 2.67 ft² is 248,051.1168 mm²; 600 wide leaves 413.4185 high.
  hand('area of a tie, just inside', 'united-states', grid(600, 413.375)),
  far('area of a tie, just outside', 'united-states', grid(600, 413.5), 413.5, 413.418528),
  // 406.375 wide leaves 610.4, so 24 in (609.6) governs.
  hand('height of a tie, just inside', 'united-states', grid(406.375, 609.5)),
  far('height of a tie, just outside', 'united-states', grid(406.375, 609.625), 609.625, 609.6),
  // 32 in = 812.8; 305.125 high is inside the area (305.17).
  hand('width of a tie, just inside', 'united-states', grid(812.75, 305.125)),
  far('width of a tie, just outside', 'united-states', grid(812.875, 300), 812.875, 812.8),
  hand('ties 900 × 450, United Kingdom', 'united-kingdom', grid(900, 450)),
  far('ties 900 × a step above 450', 'united-kingdom', grid(900, 450.125), 450.125, 450),
  far('ties a step above 900', 'united-kingdom', grid(900.125, 400), 900.125, 900),

  // The column at 1,200 stands in the opening: 105 to 905 overlaps 200..800 and is left out.
  hand(
    'gap over an opening is left out',
    'canada',
    around([700, 1200, 1690], [...JAMBS, tie('5', 1200, 105), tie('6', 1200, 905)]),
  ),
  // Columns at 400 and 2,000, 390 and 400 from the jambs (305 at most): 305..705 lies beside the opening, so neither side counts.
  hand(
    'opening between two columns',
    'canada',
    around([400, 2000], tieGrid([400, 2000], [305, 705])),
    wrong('no-tie-at-edge', 390, 304.8, 'A-window1'),
    wrong('no-tie-at-edge', 400, 304.8, 'A-window1'),
  ),
  // 305..805 ends above the opening: the columns stand 1,600 apart.
  hand(
    'opening not all the way between two columns',
    'canada',
    around([400, 2000], tieGrid([400, 2000], [305, 805])),
    wrong('ties-too-far-apart', 1600, 800, 'A'),
    wrong('no-tie-at-edge', 390, 304.8, 'A-window1'),
    wrong('no-tie-at-edge', 400, 304.8, 'A-window1'),
  ),
  // 205 to 805 at the jambs overlaps their span: judged as edges (595 from 205 to 800), not as columns 990 apart.
  hand('gap at a jamb is the edge’s', 'canada', around([700, 1690], tieGrid([700, 1690], [205, 805]))),

  // 12 in = 304.8 from the edge.
  hand('tie near enough to an end', 'united-states', end([tie('1', 304.75, 600)])),
  hand(
    'tie too far from an end',
    'united-states',
    end([tie('1', 304.875, 600)]),
    wrong('no-tie-at-edge', 304.875, 304.8, 'A-left-end'),
  ),
  // 36 in = 914.4: 1,200 − 285.625 = 914.375, 1,200 − 285.5 = 914.5.
  hand('tie near enough to the top', 'united-states', end([tie('1', 100, 285.625)])),
  hand(
    'tie too far from the top',
    'united-states',
    end([tie('1', 100, 285.5)]),
    wrong('no-tie-at-edge', 914.5, 914.4, 'A-left-end A-tie1'),
  ),
  // No tie at all: the length of the panel, 1,190.
  hand('no tie at all', 'united-states', end([]), wrong('no-tie-at-edge', 1190, 304.8, 'A-left-end')),
  // The right end, from the right: 1,190 − 885.125 = 304.875.
  hand(
    'tie too far from a right end',
    'united-states',
    blocks([100, 885], [tie('1', 885.125, 600)], { rightEnd: 'free' }),
    wrong('no-tie-at-edge', 304.875, 304.8, 'A-right-end'),
  ),
  // 225 from the edge, 300 apart.
  hand('end tied every 300, United Kingdom', 'united-kingdom', end(tieGrid([225], [300, 600, 900]))),
  hand(
    'end tied a step above 300, United Kingdom',
    'united-kingdom',
    end(tieGrid([225], [300, 600.125, 900])),
    wrong('no-tie-at-edge', 300.125, 300, 'A-left-end A-tie1 A-tie2 A-tie3'),
  ),
  hand(
    'end tied a step too far in, United Kingdom',
    'united-kingdom',
    end([tie('1', 225.125, 300), tie('2', 225.125, 600)]),
    wrong('no-tie-at-edge', 225.125, 225, 'A-left-end'),
  ),
  // The gable steps in from course 4: the end is upright to the top of course 3, 10 + 400 + 190 = 600, and a tie at 700 is above it.
  hand(
    'end under a gable',
    'united-states',
    end([tie('1', 100, 300)], { gable: { fromCourse: 4, step: 0 } }),
  ),
  hand(
    'tie above the upright end',
    'united-states',
    end([tie('1', 100, 700)], { gable: { fromCourse: 4, step: 0 } }),
    wrong('no-tie-at-edge', 1190, 304.8, 'A-left-end'),
  ),
  // 790 − 485.25 = 304.75 and 790 − 485.125 = 304.875.
  hand(
    'tie near enough to a jamb',
    'united-states',
    around([485, 1690], [tie('1', 485.25, 405), tie('2', 1690, 405)]),
  ),
  hand(
    'tie too far from a jamb',
    'united-states',
    around([485, 1690], [tie('1', 485.125, 405), tie('2', 1690, 405)]),
    wrong('no-tie-at-edge', 304.875, 304.8, 'A-window1'),
  ),

  // 1 1/2 in = 38.1.
  hand('strap just deep enough', 'united-states', single({ embedment: 38.125 })),
  hand(
    'strap not deep enough',
    'united-states',
    single({ embedment: 38 }),
    wrong('shallow-tie', 38, 38.1, 'A-tie1'),
  ),
  hand('strap at the least, United Kingdom', 'united-kingdom', single({ embedment: 50 })),
  hand(
    'strap a step below',
    'united-kingdom',
    single({ embedment: 49.875 }),
    wrong('shallow-tie', 49.875, 50, 'A-tie1'),
  ),
  hand('strap as thin and narrow as it may be', 'canada', single({ thickness: 0.76, width: 22 })),
  hand('strap too thin', 'canada', single({ thickness: 0.75 }), wrong('thin-tie', 0.75, 0.76, 'A-tie1')),
  hand('strap too narrow', 'canada', single({ width: 21.875 }), wrong('thin-tie', 21.875, 22, 'A-tie1')),
  // Too thin comes first.
  hand(
    'strap too thin and too narrow',
    'canada',
    single({ thickness: 0.5, width: 20 }),
    wrong('thin-tie', 0.5, 0.76, 'A-tie1'),
  ),
  // 7/8 in = 22.225.
  hand(
    'strap too narrow, United States',
    'united-states',
    single({ width: 22.125 }),
    wrong('thin-tie', 22.125, 22.225, 'A-tie1'),
  ),
];
