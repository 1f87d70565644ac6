import { useId } from 'react';
import { MORTAR, RED_BRICK } from '../../lib/drawing/colours';
import type { Shape } from '../../lib/drawing/shape';
import { sharedFills } from '../../lib/drawing/shared-fills';
import { nodeOf, svgBox } from '../../lib/drawing/svg-nodes';
import type { Box } from '../../lib/geometry/box';
import { pagePaint, svgElement } from './svg-element';

const COLOURS = { units: RED_BRICK, quoins: RED_BRICK, mortar: MORTAR };

/** A drawing of the kit on a page. Words beside it say the same, so it is hidden from a screen reader. */
export function KitDrawing(props: {
  readonly box: Box;
  readonly shapes: readonly Shape[];
  readonly className: string | undefined;
}) {
  const { box, shapes, className } = props;
  const prefix = `${useId()}-`;
  return (
    <svg viewBox={svgBox(box).join(' ')} className={className} aria-hidden="true" focusable="false">
      <defs>{sharedFills({ shapes }, COLOURS, prefix).map(svgElement)}</defs>
      {shapes.map((shape) => nodeOf(shape, pagePaint(prefix))).map(svgElement)}
    </svg>
  );
}
