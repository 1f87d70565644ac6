import type { Panel, Tie } from '../../../lib/wall/model';
import { changed, type HandWall, hand, tie, tieGrid, wrong } from '../build';
import { around, blocks, smallOpening } from '../build-opening';

const FREE: Partial<Panel> = { leftEnd: 'free' };
/** A free left end 1,200 high, tied at these places; the rest of the wall is nobody's business. */
const end = (ties: readonly Tie[], panel: Partial<Panel> = {}) =>
  blocks([100, 500], ties, { ...FREE, ...panel });

const single = (change: Partial<Tie>) => blocks([100], [tie(1, 100, 205, change)]);

export const TIE_WALLS: readonly HandWall[] = [
  // 12 in = 304.8 from the edge.
  hand('tie near enough to an end', 'united-states', end([tie(1, 304.75, 600)])),
  hand(
    'tie too far from an end',
    'united-states',
    end([tie(1, 304.875, 600)]),
    wrong('no-tie-at-edge', 304.875, 304.8, 'A-left-end'),
  ),
  // 36 in = 914.4: 1,200 − 285.625 = 914.375, 1,200 − 285.5 = 914.5.
  hand('tie near enough to the top', 'united-states', end([tie(1, 100, 285.625)])),
  hand(
    'tie too far from the top',
    'united-states',
    end([tie(1, 100, 285.5)]),
    wrong('no-tie-at-edge', 914.5, 914.4, 'A-left-end A-tie1.1'),
  ),
  // A6.1 rises 4 to the right: its top is 1,202 at its middle, and 1,202 − 287.5 = 914.5 (from 1,200 it would be 912.5).
  hand(
    'top of an end at the middle of its unit',
    'united-states',
    changed(end([tie(1, 100, 287.5)]), { 'A6.1': { fall: -4 } }),
    wrong('no-tie-at-edge', 914.5, 914.4, 'A-left-end A-tie1.1'),
  ),
  // No tie at all: the length of the panel, 1,190.
  hand('no tie at all', 'united-states', end([]), wrong('no-tie-at-edge', 1190, 304.8, 'A-left-end')),
  // The right end, from the right: 1,190 − 885.125 = 304.875.
  hand(
    'tie too far from a right end',
    'united-states',
    blocks([100, 885], [tie(1, 885.125, 600)], { rightEnd: 'free' }),
    wrong('no-tie-at-edge', 304.875, 304.8, 'A-right-end'),
  ),
  // 225 from the edge, 300 apart.
  hand('end tied every 300, United Kingdom', 'united-kingdom', end(tieGrid([225], [300, 600, 900]))),
  hand(
    'end tied a step above 300, United Kingdom',
    'united-kingdom',
    end(tieGrid([225], [300, 600.125, 900])),
    wrong('no-tie-at-edge', 300.125, 300, 'A-left-end A-tie1.1 A-tie1.2 A-tie1.3'),
  ),
  hand(
    'end tied a step too far in, United Kingdom',
    'united-kingdom',
    end([tie(1, 225.125, 300), tie(2, 225.125, 600)]),
    wrong('no-tie-at-edge', 225.125, 225, 'A-left-end'),
  ),
  // The gable steps in from course 4: the end is upright to the top of course 3, 10 + 400 + 190 = 600, and a tie at 700 is above it.
  hand('end under a gable', 'united-states', end([tie(1, 100, 300)], { gable: { fromCourse: 4, step: 0 } })),
  hand(
    'tie above the upright end',
    'united-states',
    end([tie(1, 100, 700)], { gable: { fromCourse: 4, step: 0 } }),
    wrong('no-tie-at-edge', 1190, 304.8, 'A-left-end'),
  ),
  // 790 − 485.25 = 304.75 and 790 − 485.125 = 304.875.
  hand(
    'tie near enough to a jamb',
    'united-states',
    around([485, 1690], [tie(1, 485.25, 405), tie(2, 1690, 405)]),
  ),
  hand(
    'tie too far from a jamb',
    'united-states',
    around([485, 1690], [tie(1, 485.125, 405), tie(2, 1690, 405)]),
    wrong('no-tie-at-edge', 304.875, 304.8, 'A-window1'),
  ),
  // Beside the jamb, but at 100, under the opening. The only tie in the span is on the far side, so there is none: 2,390.
  hand(
    'tie under the opening',
    'united-states',
    around([700, 1690], [tie(1, 700, 100), tie(2, 1690, 405)]),
    wrong('no-tie-at-edge', 2390, 304.8, 'A-window1'),
  ),
  // 406 wide and 280 high has no edges; 410 wide, or 210 wide and 420 high, has two. No ties: the panels are 786, 790 and 590 long.
  hand('opening too small to have edges', 'united-states', smallOpening(406, 5, [], [])),
  hand(
    'opening wide enough to have edges',
    'united-states',
    smallOpening(410, 2, [], []),
    wrong('no-tie-at-edge', 790, 304.8, 'A-window1'),
    wrong('no-tie-at-edge', 790, 304.8, 'A-window1'),
  ),
  hand(
    'opening high enough to have edges',
    'united-states',
    smallOpening(210, 7, [], []),
    wrong('no-tie-at-edge', 590, 304.8, 'A-window1'),
    wrong('no-tie-at-edge', 590, 304.8, 'A-window1'),
  ),

  // 1 1/2 in = 38.1.
  hand('strap just deep enough', 'united-states', single({ embedment: 38.125 })),
  hand(
    'strap not deep enough',
    'united-states',
    single({ embedment: 38 }),
    wrong('shallow-tie', 38, 38.1, 'A-tie1.1'),
  ),
  hand('strap at the least, United Kingdom', 'united-kingdom', single({ embedment: 50 })),
  hand(
    'strap a step below',
    'united-kingdom',
    single({ embedment: 49.875 }),
    wrong('shallow-tie', 49.875, 50, 'A-tie1.1'),
  ),
  // 5/8 in = 15.875 of a brick 90 deep: 74.125 in the bed.
  hand('strap as near the face as it may be', 'united-states', single({ embedment: 74.125 })),
  hand(
    'strap too near the face',
    'united-states',
    single({ embedment: 74.25 }),
    wrong('tie-near-face', 15.75, 15.875, 'A-tie1.1'),
  ),
  hand(
    'strap through to the face, where the rules borrow the cover',
    'canada',
    single({ embedment: 90 }),
    wrong('tie-near-face', 0, 15.875, 'A-tie1.1'),
  ),
  hand('strap as thin and narrow as it may be', 'canada', single({ thickness: 0.76, width: 22 })),
  hand('strap too thin', 'canada', single({ thickness: 0.75 }), wrong('thin-tie', 0.75, 0.76, 'A-tie1.1')),
  hand('strap too narrow', 'canada', single({ width: 21.875 }), wrong('thin-tie', 21.875, 22, 'A-tie1.1')),
  // Too thin comes first.
  hand(
    'strap too thin and too narrow',
    'canada',
    single({ thickness: 0.5, width: 20 }),
    wrong('thin-tie', 0.5, 0.76, 'A-tie1.1'),
  ),
  // 7/8 in = 22.225.
  hand(
    'strap too narrow, United States',
    'united-states',
    single({ width: 22.125 }),
    wrong('thin-tie', 22.125, 22.225, 'A-tie1.1'),
  ),
];
