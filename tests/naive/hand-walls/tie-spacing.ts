import type { RuleSetId } from '../../../lib/limits/limit';
import type { Wall } from '../../../lib/wall/model';
import { type HandWall, hand, tie, tieGrid, wrong } from '../build';
import { around, blocks, smallOpening } from '../build-opening';

/** Two columns at 100 and 100 + h; the left one tied at 205 and 205 + v, the right one at 205 only. */
const grid = (h: number, v: number) =>
  blocks([100, 100 + h], [tie(1, 100, 205), tie(2, 100, 205 + v), tie(3, 100 + h, 205)]);
const far = (name: string, rules: RuleSetId, wall: Wall, measured: number, limit: number) =>
  hand(name, rules, wall, wrong('ties-too-far-apart', measured, limit, 'A'));

const JAMBS = [...tieGrid([700, 1690], [405, 605])];
export const TIE_SPACING_WALLS: readonly HandWall[] = [
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
    blocks([100, 500, 1100], [tie(1, 100, 205), tie(2, 500, 205), tie(3, 500, 705.125), tie(4, 1100, 205)]),
    500.125,
    500,
  ),
  // A tie 50 off its stud belongs to it all the same: 800 wide, not 750.
  far(
    'ties off their stud',
    'canada',
    blocks([100, 900], [tie(1, 100, 205), tie(2, 100, 605.125), tie(3, 850, 205)]),
    400.125,
    400,
  ),
  // A stud without ties is no column: the next is 800 away.
  far(
    'stud without ties',
    'canada',
    blocks([100, 500, 900], [tie(1, 100, 205), tie(2, 100, 605.125), tie(3, 900, 205)]),
    400.125,
    400,
  ),
  // The worse by ratio: 500.125 / 400 at 800 wide, though the column at 100 has 450 / 400.
  far(
    'worst gap of two',
    'canada',
    blocks([100, 900], [...tieGrid([100], [205, 655]), tie(3, 900, 205), tie(4, 900, 705.125)]),
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
  // NHBC 6.2.14: 600 wide with 450 high, and no wider for ties that lie closer up.
  hand('ties 600 × 450, United Kingdom', 'united-kingdom', grid(600, 450)),
  far('ties 600 × a step above 450', 'united-kingdom', grid(600, 450.125), 450.125, 450),
  far('ties a step above 600', 'united-kingdom', grid(600.125, 300), 600.125, 600),

  // The column at 1,200 stands in the opening: 105 to 905 overlaps 200..800 and is left out.
  hand(
    'gap over an opening is left out',
    'canada',
    around([700, 1200, 1690], [...JAMBS, tie(5, 1200, 105), tie(6, 1200, 905)]),
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
  // 205 to 805 at the jambs: as edges they pass (595 from 205 to 800, at most 914), so the columns are judged too: 990 apart.
  hand(
    'a jamb tied well enough leaves its gaps to the field',
    'canada',
    around([700, 1690], tieGrid([700, 1690], [205, 805])),
    wrong('ties-too-far-apart', 990, 800, 'A'),
  ),

  // 105..505 begins below the opening (200): 1,600 apart again.
  hand(
    'opening not all the way down between two columns',
    'canada',
    around([400, 2000], tieGrid([400, 2000], [105, 505])),
    wrong('ties-too-far-apart', 1600, 800, 'A'),
    wrong('no-tie-at-edge', 390, 304.8, 'A-window1'),
    wrong('no-tie-at-edge', 400, 304.8, 'A-window1'),
  ),
  // 805..995 lies above the jamb’s span: the columns at 700 and 1,690 are judged, 990 apart.
  hand(
    'gap above a jamb is the column’s',
    'canada',
    around([700, 1690], tieGrid([700, 1690], [405, 605, 805, 995])),
    wrong('ties-too-far-apart', 990, 800, 'A'),
  ),
  // An opening from 190, 210 × 280: too small to have edges. A column at 190 is not inside it, one at 200 is.
  far(
    'column at the side of a small opening',
    'united-kingdom',
    smallOpening(210, 5, [190], [tie(1, 190, 20), tie(2, 190, 470.125)]),
    450.125,
    450,
  ),
  hand(
    'column inside a small opening',
    'united-kingdom',
    smallOpening(210, 5, [200], [tie(1, 200, 20), tie(2, 200, 470.125)]),
  ),
];
