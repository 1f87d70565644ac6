import type { Panel, Unit, Wall } from '../../../lib/wall/model';
import { changed, type HandWall, hand, wallOf, wrong } from '../build';

const rules = 'good-practice';

const THREE = wallOf([
  [190, 190, 190],
  [90, 190, 190, 90],
  [190, 190, 190],
]);
const middle = (change: Partial<Unit>) => changed(THREE, { 'A2.2': change });
const wanted = (by: number, set: number): Wall => ({
  ...middle({ set }),
  projections: [{ units: ['A2.2'], by }],
});

/** Neighbours of A2.2 stand at 0, 0, 2.5 and 6: median 1.25 (mean 2.125). */
const uneven = (set: number) =>
  changed(
    wallOf([
      [190, 190, 190],
      [90, 190, 190, 90],
    ]),
    {
      'A1.2': { set: 2.5 },
      'A1.3': { set: 6 },
      'A2.2': { set },
      'A2.3': { set: 6 },
      'A2.4': { set: 6 },
    },
  );

/** Panel A along `u`, panel B from its right end along `v`, in plan. */
function corner(u: readonly [number, number], v: readonly [number, number], ends: Partial<Panel> = {}): Wall {
  const plan = { leftX: 0, leftZ: 0, rightX: u[0], rightZ: u[1] };
  const returned = { leftX: u[0], leftZ: u[1], rightX: u[0] + v[0], rightZ: u[1] + v[1] };
  const a = wallOf([[190, 190]], {}, { plan });
  const b = wallOf([[190, 190]], {}, { plan: returned, ...ends }, 'B');
  return {
    ...a,
    panels: [...a.panels, ...b.panels],
    units: [...a.units, ...b.units],
    supports: [...a.supports, ...b.supports],
  };
}

export const FACE_WALLS: readonly HandWall[] = [
  hand('twist at the most', rules, middle({ twist: 3 })),
  hand('twist a step above', rules, middle({ twist: 3.125 }), wrong('twisted-unit', 3.125, 3, 'A2.2')),
  hand('twist the other way', rules, middle({ twist: -3.125 }), wrong('twisted-unit', 3.125, 3, 'A2.2')),
  hand('twist a step below', rules, middle({ twist: -2.875 })),

  // Six neighbours, all at 0.
  hand('proud at the most', rules, middle({ set: 3 })),
  hand('proud a step above', rules, middle({ set: 3.125 }), wrong('proud-unit', 3.125, 3, 'A2.2')),
  hand('back a step above', rules, middle({ set: -3.125 }), wrong('proud-unit', 3.125, 3, 'A2.2')),
  hand('proud a step below', rules, middle({ set: 2.875 })),
  // A1.1 has one neighbour beside it and two above: three are enough. A2.1 (3 neighbours: 0, 0, 3.125) and A1.2 stay at median 0.
  hand(
    'proud at an end with three neighbours',
    rules,
    changed(THREE, { 'A1.1': { set: 3.125 } }),
    wrong('proud-unit', 3.125, 3, 'A1.1'),
  ),
  // A unit with two neighbours is not judged: the left one of two stacked courses of two. Its neighbours have two as well.
  hand(
    'proud with two neighbours',
    rules,
    changed(
      wallOf([
        [190, 190],
        [190, 190],
      ]),
      { 'A1.1': { set: 9 } },
    ),
  ),
  // 4.25 − 1.25 = 3 and 4.375 − 1.25 = 3.125. The others stay within 3 of theirs.
  hand('proud of an uneven lot at the most', rules, uneven(4.25)),
  hand('proud of an uneven lot a step above', rules, uneven(4.375), wrong('proud-unit', 3.125, 3, 'A2.2')),
  hand('wanted proud', rules, wanted(12, 12)),
  hand('prouder than wanted', rules, wanted(12, 15.125), wrong('proud-unit', 3.125, 3, 'A2.2')),
  hand('less proud than wanted', rules, wanted(12, 8.875), wrong('proud-unit', 3.125, 3, 'A2.2')),

  // (3, 4) and (4, −3): 12 − 12 = 0.
  hand('corner by 3-4-5', rules, corner([300, 400], [400, -300])),
  // Along (1, 0) and (7, −24)/25: 280 mm in 1 m.
  hand(
    'corner far from square',
    rules,
    corner([390, 0], [70, -240]),
    wrong('corner-not-square', 280, 5, 'A-B-corner'),
  ),
  // The same closed the other way.
  hand(
    'corner too narrow',
    rules,
    corner([390, 0], [-70, -240]),
    wrong('corner-not-square', 280, 5, 'A-B-corner'),
  ),
  // 5 off in a square line of 1,000: 5,000 / √(1,000² + 5²) = 4.99994.
  hand('corner just inside', rules, corner([390, 0], [5, -1000])),
  // 5.125: 5,125 / √1,000,026.265625 = 5,125 / 1,000.01313273.
  hand(
    'corner just outside',
    rules,
    corner([390, 0], [5.125, -1000]),
    wrong('corner-not-square', 5.12493269, 5, 'A-B-corner'),
  ),
  // The second panel begins with a free end: no corner (adhered, so no tie is asked for at it).
  hand('two panels that do not meet', rules, corner([390, 0], [70, -240], { leftEnd: 'free' })),
];
