import { useId } from 'react';
import { MORTAR, RED_BRICK } from '../../lib/drawing/colours';
import { labelNodes } from '../../lib/drawing/label-nodes';
import type { Label, Shape } from '../../lib/drawing/shape';
import { sharedFills } from '../../lib/drawing/shared-fills';
import { nodeOf, svgBox } from '../../lib/drawing/svg-nodes';
import type { Box } from '../../lib/geometry/box';
import { pagePaint, svgElement } from './svg-element';

const COLOURS = { units: RED_BRICK, quoins: RED_BRICK, mortar: MORTAR };
/** Texts are as large as on any drawing of ours where the sheet is shown this wide: in a column of a page, px. */
const SHOWN = 390;

/** A drawing of the kit on a page. */
export interface Picture {
  readonly box: Box;
  readonly shapes: readonly Shape[];
  readonly labels?: readonly Label[];
  /** What it shows now. Left out where words beside it say the same: then it is hidden from a screen reader. */
  readonly name?: string;
}

export function KitDrawing(props: Picture & { readonly className?: string | undefined }) {
  const { box, shapes, labels = [], name, className } = props;
  const prefix = `${useId()}-`;
  const paint = pagePaint(prefix);
  return (
    <svg
      role={name && 'img'}
      aria-label={name}
      aria-hidden={name === undefined || undefined}
      viewBox={svgBox(box).join(' ')}
      className={className}
      focusable="false"
    >
      <defs>{sharedFills({ shapes }, COLOURS, prefix).map(svgElement)}</defs>
      {[...shapes.map((shape) => nodeOf(shape, paint)), ...labelNodes(labels, box.width / SHOWN, paint)].map(
        svgElement,
      )}
    </svg>
  );
}
