import { darker } from '../../drawing/colours';
import { ring } from '../../drawing/rings';
import { lines, polygon, rect, type Shape } from '../../drawing/shape';
import type { Box } from '../../geometry/box';
import type { Point, Ring } from '../../geometry/polygon';
import type { Mm } from '../../units';
import type { Panel, Support, Wall } from '../../wall/model';

/** How deep the ledge is drawn, and how far below it the ground lies, mm. */
export const LEDGE_HIGH: Mm = 150;
export const GROUND_HIGH: Mm = 120;
const BOARD_WIDE: Mm = 170;

/** What stands behind and below a panel: boarding at a gable, its ledges, the ground. `left` and `right` are how far the ground runs. */
export function frontGround(wall: Wall, panel: Panel, left: Mm, right: Mm): readonly Shape[] {
  const ledges = wall.supports.filter((support) => support.panel === panel.id && support.kind === 'ledge');
  const ground = -LEDGE_HIGH;
  return [
    // Behind the ledge line: what is seen where no ledge is, in its own shade.
    rect(
      { x: 0, y: ground, width: panel.length, height: LEDGE_HIGH },
      wall.masonry === 'adhered' ? '#8d877c' : '#41382f',
    ),
    ...(wall.masonry === 'adhered' ? [starterStrip(wall, panel)] : []),
    ...ledges.flatMap(ledgeFront),
    rect(
      { x: -left, y: ground - GROUND_HIGH, width: panel.length + left + right, height: GROUND_HIGH },
      'url:earth',
    ),
    lines([ring(-left, ground, panel.length + right, ground)], { paint: '#3c3226', width: 5 }),
  ];
}

/** The metal strip that the first course of an adhered wall is set on. */
function starterStrip(wall: Wall, panel: Panel): Shape {
  const low = wall.units.reduce(
    (least, unit) => (unit.panel === panel.id ? Math.min(least, unit.y - Math.max(0, unit.fall)) : least),
    Number.POSITIVE_INFINITY,
  );
  return rect({ x: 0, y: 0, width: panel.length, height: low + 1 }, '#59636a');
}

function ledgeFront({ fromX, toX, y, material }: Support): readonly Shape[] {
  const box: Box = { x: fromX, y: y - LEDGE_HIGH, width: toX - fromX, height: LEDGE_HIGH };
  const fill = material === 'wood' ? 'url:wood' : material === 'steel' ? 'url:cut-steel' : 'url:concrete';
  return [
    rect(box, fill),
    lines([ring(fromX, y, toX, y)], { paint: '#2b2723', width: 2.5 }),
    lines([ring(fromX, y, fromX, y - LEDGE_HIGH), ring(toX, y, toX, y - LEDGE_HIGH)], {
      paint: '#2b2723',
      width: 1.5,
      opacity: 0.7,
    }),
  ];
}

/** The drip edge of a flashing: a thin dark line with a glint, at its own level. */
export function flashingEdges(wall: Wall, panel: Panel): readonly Shape[] {
  return wall.flashings
    .filter((flashing) => flashing.panel === panel.id)
    .flatMap(({ y, fromX, toX }) => [
      rect({ x: fromX, y: y - 4, width: toX - fromX, height: 6 }, '#4d565b'),
      rect({ x: fromX, y: y + 0.6, width: toX - fromX, height: 1.4 }, '#b7c1c5'),
    ]);
}

/** Upper ends of the courses of a gable, from the foot of the rake to its top; null for an upright panel. */
function rakeOf(
  wall: Wall,
  panel: Panel,
  top: Mm,
): { readonly foot: Mm; readonly in: Mm; readonly top: Mm } | null {
  if (panel.gable === null) return null;
  const { fromCourse, step } = panel.gable;
  return {
    foot: top - (panel.courses - fromCourse + 1) * wall.gauge,
    in: (panel.courses - fromCourse + 1) * step,
    top,
  };
}

/** How far above its bricks a gable is drawn, mm: its boards run on to the ridge. */
export function ridgeHeight(wall: Wall, panel: Panel, top: Mm): Mm {
  const rake = rakeOf(wall, panel, top);
  if (rake === null) return top;
  return rake.foot + ((rake.top - rake.foot) / rake.in) * (panel.length / 2) + BOARD_WIDE * 1.6;
}

/** The dark under the roof behind a gable's stepped ends, and its barge boards in front of nothing but air. */
export function gableBoards(
  wall: Wall,
  panel: Panel,
  top: Mm,
): { readonly behind: readonly Shape[]; readonly boards: readonly Shape[] } {
  const rake = rakeOf(wall, panel, top);
  if (rake === null) return { behind: [], boards: [] };
  const slope = (rake.top - rake.foot) / rake.in;
  const middle = panel.length / 2;
  const eaves = 230;
  const at = (x: Mm, up: Mm): Point => [x, rake.foot + slope * x + up];
  const other = ([x, y]: Point): Point => [panel.length - x, y];
  // Just outside the outer upper corners of the stepped courses.
  const under = wall.gauge + 14;
  const board = (low: Mm, high: Mm): Ring => [
    at(-eaves, low),
    at(middle, low),
    at(middle, high),
    at(-eaves, high),
  ];
  const both = (low: Mm, high: Mm, fill: string, opacity?: number): readonly Shape[] => [
    polygon(board(low, high), fill, opacity),
    polygon(board(low, high).map(other), fill, opacity),
  ];
  const wide = BOARD_WIDE;
  return {
    behind: [
      polygon([at(0, 0), at(0, under), at(middle, under), other(at(0, under)), other(at(0, 0))], '#3b3029'),
    ],
    boards: [
      ...both(under, under + wide, '#e6e0d2'),
      ...both(under, under + 14, darker('#e6e0d2', 0.5), 0.8),
      ...both(under + wide * 0.62, under + wide * 0.66, darker('#e6e0d2', 0.4), 0.7),
      ...both(under + wide, under + wide + 52, '#4a4f55'),
    ],
  };
}
