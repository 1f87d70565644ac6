import type { Pat, Unit, Wall } from '../../../lib/wall/model';
import { BLOCK, BRICK, changed, type HandWall, hand, pat, wallOf, wrong } from '../build';

const THIN = { ...BRICK, depth: 25 };
const thin = (rows: readonly (readonly number[])[]) => wallOf(rows, { family: THIN });
const backs = (wall: Wall, pats: Readonly<Record<string, readonly Pat[]>>): Wall =>
  changed(
    wall,
    Object.fromEntries(Object.entries(pats).map(([id, back]): [string, Partial<Unit>] => [id, { back }])),
  );

/** Mortar all over a unit 190 mm long, from its underside to `height`. */
const upTo = (height: number) => [pat(0, 0, 190, height)];
/** Mortar all over a unit of `length` × `height` but for one rectangle. */
function allBut(length: number, height: number, x: number, y: number, wide: number, high: number) {
  return [
    pat(0, 0, length, y),
    pat(0, y, x, high),
    pat(x + wide, y, length - x - wide, high),
    pat(0, y + high, length, height - y - high),
  ];
}

const ONE = thin([[190]]);
const THREE = thin([[190, 190, 190]]);
const BIG = wallOf([[390]], { family: { ...BLOCK, depth: 25 } });
const missing = 'missing-back-mortar';
const ring = 'ring-buttered-back';
const rules = 'good-practice';

export const BACK_WALLS: readonly HandWall[] = [
  // 57 of 60 mm high: 95 %. Bare 190 × 3 = 570 mm².
  hand('back covered at the least', rules, backs(ONE, { 'A1.1': upTo(57) })),
  // 57.125 / 60 = 95.2 %.
  hand('back covered a step above', rules, backs(ONE, { 'A1.1': upTo(57.125) })),
  // 56.875 / 60 = 0.9479166…
  hand(
    'back covered a step below',
    rules,
    backs(ONE, { 'A1.1': upTo(56.875) }),
    wrong(missing, 94.79166666666667, 95, 'A1.1'),
  ),
  // No pat at all: 0 %.
  hand('bare back', rules, backs(ONE, { 'A1.1': [] }), wrong(missing, 0, 95, 'A1.1')),
  // 0..40 and 17..57 together reach 57: counted once they are 95 %, counted twice they would be 133 %.
  hand(
    'pats that overlap count once',
    rules,
    backs(ONE, { 'A1.1': [pat(0, 0, 190, 40), pat(0, 17, 190, 40)] }),
  ),
  hand(
    'pats that overlap count once, a step below',
    rules,
    // Together they reach 56.875.
    backs(ONE, { 'A1.1': [pat(0, 0, 190, 40), pat(0, 16.875, 190, 40)] }),
    wrong(missing, 94.79166666666667, 95, 'A1.1'),
  ),
  // The small pat lies on the large one.
  hand('a pat on a pat', rules, backs(ONE, { 'A1.1': [pat(0, 0, 190, 57), pat(20, 0, 30, 57)] })),
  // Of 210 × 66.875 only 190 × 56.875 lies on the unit.
  hand(
    'mortar beyond the unit does not count',
    rules,
    backs(ONE, { 'A1.1': [pat(-10, -10, 210, 66.875)] }),
    wrong(missing, 94.79166666666667, 95, 'A1.1'),
  ),
  // Hole 40 × 20 = 800 of 11 400: (11 400 − 800) / 11 400 = 92.98 %.
  hand(
    'closed void in too small a contact',
    rules,
    backs(ONE, { 'A1.1': allBut(190, 60, 75, 20, 40, 20) }),
    wrong(ring, 92.98245614035088, 95, 'A1.1'),
  ),
  // The same hole moved to the left edge.
  hand(
    'void open to the edge in too small a contact',
    rules,
    backs(ONE, { 'A1.1': allBut(190, 60, 0, 20, 40, 20) }),
    wrong(missing, 92.98245614035088, 95, 'A1.1'),
  ),
  // 43 × 30 = 1 290 of 74 100: contact 98.3 %.
  hand('closed void at the most', rules, backs(BIG, { 'A1.1': allBut(390, 190, 100, 80, 43, 30) })),
  // 43.125 × 30 = 1 293.75.
  hand(
    'closed void a step above',
    rules,
    backs(BIG, { 'A1.1': allBut(390, 190, 100, 80, 43.125, 30) }),
    wrong(ring, 1293.75, 1290, 'A1.1'),
  ),
  hand(
    'void at the top edge a step above',
    rules,
    backs(BIG, { 'A1.1': allBut(390, 190, 100, 160, 43.125, 30) }),
    wrong(missing, 1293.75, 1290, 'A1.1'),
  ),
  // Two holes of 30 × 30 that meet at the point (130, 110) only: 900 each, not 1 800.
  hand(
    'voids that touch at a point are two',
    rules,
    backs(BIG, {
      'A1.1': [
        pat(0, 0, 390, 80),
        pat(0, 80, 100, 30),
        pat(130, 80, 260, 30),
        pat(0, 110, 130, 30),
        pat(160, 110, 230, 30),
        pat(0, 140, 390, 50),
      ],
    }),
  ),
  // The same two shifted 10 mm into line: they share 10 mm of an edge, 1 800 mm² together.
  hand(
    'voids that share an edge are one',
    rules,
    backs(BIG, {
      'A1.1': [
        pat(0, 0, 390, 80),
        pat(0, 80, 100, 30),
        pat(130, 80, 260, 30),
        pat(0, 110, 120, 30),
        pat(150, 110, 240, 30),
        pat(0, 140, 390, 50),
      ],
    }),
    wrong(ring, 1800, 1290, 'A1.1'),
  ),
  // 54 / 60 = 90 %, 48 / 60 = 80 %: neighbours, so one finding, as bad as the worse.
  hand(
    'two bad backs side by side',
    rules,
    backs(THREE, { 'A1.1': upTo(54), 'A1.2': upTo(48) }),
    wrong(missing, 80, 95, 'A1.1 A1.2'),
  ),
  hand(
    'two bad backs with a unit between',
    rules,
    backs(THREE, { 'A1.1': upTo(54), 'A1.3': upTo(48) }),
    wrong(missing, 90, 95, 'A1.1'),
    wrong(missing, 80, 95, 'A1.3'),
  ),
  // Parted by an opening of 200 mm (more than half a unit, 95).
  hand(
    'two bad backs with an opening between',
    rules,
    backs(thin([[190, -200, 190]]), { 'A1.1': upTo(54), 'A1.2': upTo(54) }),
    wrong(missing, 90, 95, 'A1.1'),
    wrong(missing, 90, 95, 'A1.2'),
  ),
  // A1.1 and A2.2 do not overlap (0..190 and 200..390); A1.2 touches both: one finding of three.
  hand(
    'bad backs joined over two courses',
    rules,
    backs(
      thin([
        [190, 190],
        [190, 190],
      ]),
      { 'A1.1': upTo(54), 'A1.2': upTo(54), 'A2.2': upTo(48) },
    ),
    wrong(missing, 80, 95, 'A1.1 A1.2 A2.2'),
  ),
  // Names differ, so they stay two.
  hand(
    'a closed and an open void side by side',
    rules,
    backs(THREE, { 'A1.1': allBut(190, 60, 75, 20, 40, 20), 'A1.2': upTo(54) }),
    wrong(ring, 92.98245614035088, 95, 'A1.1'),
    wrong(missing, 90, 95, 'A1.2'),
  ),
];
