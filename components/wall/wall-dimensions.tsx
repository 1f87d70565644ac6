import { memo } from 'react';
import { labelNodes } from '../../lib/drawing/label-nodes';
import type { Drawing } from '../../lib/drawing/shape';
import { nodeOf } from '../../lib/drawing/svg-nodes';
import type { LengthSystem } from '../../lib/units';
import type { FindingDimension } from '../../lib/views/pointing/finding-dimension';
import { findingDimensions } from '../../lib/views/pointing/finding-dimensions';
import type { Wall } from '../../lib/wall/model';
import { pagePaint, svgElement } from '../drawing/svg-element';
import styles from './wall-drawing.module.css';

/** What was measured, as dimension lines over the drawing. The result list says the same in words. */
export const WallDimensions = memo(function WallDimensions(props: {
  readonly wall: Wall;
  readonly drawing: Drawing;
  readonly dimensions: readonly FindingDimension[];
  readonly mmPerPx: number;
  readonly system: LengthSystem;
  readonly prefix: string;
}) {
  const { wall, drawing, dimensions, mmPerPx, system, prefix } = props;
  if (dimensions.length === 0) return null;
  const paint = pagePaint(prefix);
  const { shapes, labels } = findingDimensions(wall, drawing, dimensions, mmPerPx, system);
  return (
    <g className={styles.labels}>
      {shapes.map((shape, index) => svgElement(nodeOf(shape, paint), index))}
      <g>{labelNodes(labels, mmPerPx, paint).map(svgElement)}</g>
    </g>
  );
});
