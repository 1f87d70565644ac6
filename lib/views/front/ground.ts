import { ring } from '../../drawing/rings';
import { lines, rect, type Shape } from '../../drawing/shape';
import type { Box } from '../../geometry/box';
import type { Mm } from '../../units';
import type { Panel, Support, Wall } from '../../wall/model';

/** How deep the ledge is drawn, and how far below it the ground lies, mm. */
export const LEDGE_HIGH: Mm = 150;
export const GROUND_HIGH: Mm = 120;

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

/** The drip edge of a flashing that comes out at the face: a thin dark line with a glint, at its own level. */
export function flashingEdges(wall: Wall, panel: Panel): readonly Shape[] {
  return wall.flashings
    .filter(({ panel: own, shape }) => own === panel.id && (shape === undefined || shape.front > 0))
    .flatMap(({ y, fromX, toX }) => [
      rect({ x: fromX, y: y - 4, width: toX - fromX, height: 6 }, '#4d565b'),
      rect({ x: fromX, y: y + 0.6, width: toX - fromX, height: 1.4 }, '#b7c1c5'),
    ]);
}
