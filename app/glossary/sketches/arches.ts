import { BRICK, GAUGE, JOINT } from '../../../lib/drawing/brickwork';
import { arc, ring } from '../../../lib/drawing/rings';
import { polygon, type Shape } from '../../../lib/drawing/shape';
import type { Point, Ring } from '../../../lib/geometry/polygon';
import { bar, solid } from './pieces';
import { chalk, outlined, type Sketch, sketch } from './sketch';

/** A segmental arch on skewbacks: its middle far below, from inside to outside a brick and a half. */
const MIDDLE: Point = [450, -90];
const INSIDE = 380;
const OUTSIDE = 500;
/** Half the angle it spans, and how many wedges fill it. */
const HALF = 0.66;
const WEDGES = 13;
const at = (radius: number, turn: number): Point => [
  MIDDLE[0] + radius * Math.sin(turn),
  MIDDLE[1] + radius * Math.cos(turn),
];
const wedge = (from: number, to: number): Ring => [
  at(INSIDE, from),
  at(INSIDE, to),
  at(OUTSIDE, to),
  at(OUTSIDE, from),
];
const each = (2 * HALF) / WEDGES;
const gap = 5 / OUTSIDE;
const VOUSSOIRS = Array.from({ length: WEDGES }, (_, index) =>
  wedge(-HALF + index * each + gap, -HALF + (index + 1) * each - gap),
);

/** The courses of one side, cut off at the jamb and, above the springing, along the slope of the skewback. */
function abutment(side: 1 | -1): readonly Shape[] {
  const [jamb, springing] = at(INSIDE, HALF);
  const [outer, top] = at(OUTSIDE, HALF);
  const end = (y: number) =>
    y <= springing ? jamb : jamb + ((outer - jamb) * (y - springing)) / (top - springing);
  const pieces = Array.from({ length: 5 }, (_, course) => {
    const low = -12 + course * GAUGE;
    const high = Math.min(low + BRICK.height, top - 1);
    const starts = course % 2 === 0 ? [0, 204] : [0, 102, 306];
    return starts.map((start, index): Ring => {
      const until = starts[index + 1];
      const a = index === 0 ? end(low) : jamb + start;
      const b = index === 0 ? end(high) : Math.max(jamb + start, end(high));
      const far = until === undefined ? 1000 : jamb + until - JOINT;
      return ring(a, low, far, low, far, high, b, high);
    });
  }).flat();
  const placed = pieces
    .filter(([from = [0, 0], to = [0, 0]]) => to[0] - from[0] > 15)
    .map((ring) => ring.map(([x, y]): Point => (side === 1 ? [x, y] : [900 - x, y])));
  const mortar: Ring = ring(jamb, -20, 1000, -20, 1000, top, outer, top, jamb, springing);
  return [
    polygon(
      mortar.map(([x, y]): Point => (side === 1 ? [x, y] : [900 - x, y])),
      'url:mortar',
    ),
    ...placed.map((ring, index) => polygon(ring, `url:unit${(index * 3 + 1) % 8}a`)),
    { kind: 'area', rings: placed, fill: 'url:fleck' },
  ];
}

const ARCH: readonly Shape[] = [
  polygon(
    [
      ...arc(...MIDDLE, INSIDE, Math.PI / 2 + HALF, Math.PI / 2 - HALF),
      ...arc(...MIDDLE, OUTSIDE, Math.PI / 2 - HALF, Math.PI / 2 + HALF),
    ],
    'url:mortar',
  ),
  ...VOUSSOIRS.map((ring, index) => polygon(ring, `url:unit${(index * 5) % 8}a`)),
  { kind: 'area', rings: VOUSSOIRS, fill: 'url:fleck' },
  ...abutment(1),
  ...abutment(-1),
];

/** An arch and what it is built on. */
export const ARCHES: Readonly<Record<string, Sketch>> = {
  arch: sketch(
    900,
    [
      ...ARCH,
      outlined(wedge(-each / 2, each / 2)),
      chalk(at(INSIDE, HALF), at(OUTSIDE, HALF)),
      chalk(at(INSIDE, -HALF), at(OUTSIDE, -HALF)),
    ],
    ['key', [450, 200], at(INSIDE + 20, 0)],
    ['voussoir', [330, 130], at(INSIDE + 20, -3.5 * each)],
    ['skewback', [600, 90], at(INSIDE + 14, HALF)],
  ),
  centering: sketch(
    900,
    [
      solid(
        [
          ...arc(...MIDDLE, INSIDE - 4, Math.PI / 2 - HALF + 0.01, Math.PI / 2 + HALF - 0.01),
          [230, 170],
          [670, 170],
        ],
        'url:wood',
      ),
      bar(250, -20, 44, 190, 'url:wood'),
      bar(606, -20, 44, 190, 'url:wood'),
      ...ARCH,
    ],
    ['wooden frame', [450, 110], [450, 230]],
    ['prop', [540, 40], [608, 50]],
  ),
};
