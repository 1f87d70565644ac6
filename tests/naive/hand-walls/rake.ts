import type { Cut, Pat, Unit } from '../../../lib/wall/model';
import { BRICK, changed, type HandWall, hand, pat, type Rows, times, wallOf, wrong } from '../build';

const cut = (left: number, right = 0): { readonly kind: 'cut'; readonly cut: Cut } => ({
  kind: 'cut',
  cut: { left, right },
});

/** Two courses, 790 long; the upper begins 160 from the left end with a piece of this foot, cut so much at its left end. */
function raked(foot: number, away: number) {
  const rows: Rows = [times(4, 190), [-160, foot, 190, 190]];
  return changed(wallOf(rows), { 'A1.1': cut(90), 'A2.1': cut(away) });
}

/** One slip of 190 by 60, its left end cut back 90 at the top: 190 × 60 − 90 × 60 / 2 = 8,700 mm². Up its slope x = 1.5 y. */
function back(...pats: readonly Pat[]) {
  const slip: Partial<Unit> = { ...cut(90), back: pats };
  return changed(wallOf([[190]], { family: { ...BRICK, depth: 25 } }), { 'A1.1': slip });
}

/** Mortar all over the box of the slip but for 40 by 20 from (x, 20). */
const hollowAt = (x: number) => [
  pat(0, 0, 190, 20),
  pat(0, 20, x, 20),
  pat(x + 40, 20, 150 - x, 20),
  pat(0, 40, 190, 20),
];

export const RAKE_WALLS: readonly HandWall[] = [
  // Feet of 190, tops of 100, each on the top of the one below: 90 under 100, 700 over 690. Halfway up 145.
  hand(
    'both ends of three courses cut to a rake',
    'canada',
    changed(wallOf([times(4, 190), [-100, ...times(3, 190)], [-200, ...times(2, 190)]]), {
      'A1.1': cut(90),
      'A1.4': cut(0, 90),
      'A2.1': cut(90),
      'A2.3': cut(0, 90),
      'A3.1': cut(90),
      'A3.2': cut(0, 90),
    }),
  ),
  // 130 − 80 / 2.
  hand('a piece at a rake at the least', 'canada', raked(130, 80)),
  hand(
    'a piece at a rake a step below',
    'canada',
    raked(129.875, 80),
    wrong('sliver-piece', 89.875, 90, 'A2.1'),
  ),
  // No top at all: half its foot.
  hand('a triangle at a rake', 'canada', raked(130, 130), wrong('sliver-piece', 65, 90, 'A2.1')),

  // Bare at the right end: 7.25 × 60 = 435 of 8,700, 5 %.
  hand('a cut back covered at the least', 'good-practice', back(pat(0, 0, 182.75, 60))),
  // 7.375 × 60 = 442.5: 8,257.5 / 8,700.
  hand(
    'a cut back covered a step below',
    'good-practice',
    back(pat(0, 0, 182.625, 60)),
    wrong('missing-back-mortar', 94.91379310344827, 95, 'A1.1'),
  ),
  // Of the 10 mm at the left end the slope leaves a triangle 10 long and 6.67 high.
  hand('a cut back bare where most is cut away', 'good-practice', back(pat(10, 0, 180, 60))),
  // The slope is met at y = 26.67: 800 less 13.33 × 20 / 2 = 666.67 bare. It lies at the slope, which is an edge.
  hand(
    'a cut back bare at its slope',
    'good-practice',
    back(...hollowAt(40)),
    wrong('missing-back-mortar', 92.33716475095785, 95, 'A1.1'),
  ),
  // 800 of 8,700, with mortar all round.
  hand(
    'a cut back with a hollow clear of its slope',
    'good-practice',
    back(...hollowAt(100)),
    wrong('ring-buttered-back', 90.80459770114942, 95, 'A1.1'),
  ),
];
