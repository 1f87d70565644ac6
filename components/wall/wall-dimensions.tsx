import { memo } from 'react';
import { labelNodes } from '../../lib/drawing/label-nodes';
import type { Drawing } from '../../lib/drawing/shape';
import { nodeOf } from '../../lib/drawing/svg-nodes';
import type { LengthSystem } from '../../lib/units';
import type { FindingDimension } from '../../lib/views/pointing/finding-dimension';
import { findingDimensions } from '../../lib/views/pointing/finding-dimensions';
import type { SurveyedWall } from '../../lib/wall/surveyed';
import { pagePaint, svgElement } from '../drawing/svg-element';
import styles from './wall-drawing.module.css';

/** What was measured, as dimension lines over the drawing. The result list says the same in words. */
export const WallDimensions = memo(function WallDimensions(props: {
  readonly surveyed: SurveyedWall;
  readonly drawing: Drawing;
  readonly dimensions: readonly FindingDimension[];
  readonly mmPerPx: number;
  readonly system: LengthSystem;
  readonly prefix: string;
}) {
  const { surveyed, drawing, dimensions, mmPerPx, system, prefix } = props;
  if (dimensions.length === 0) return null;
  const paint = pagePaint(prefix);
  const { shapes, labels } = findingDimensions(surveyed, drawing, dimensions, mmPerPx, system);
  return (
    <g className={styles.labels}>
      {shapes.map((shape, index) => svgElement(nodeOf(shape, paint), index))}
      <g>{labelNodes(labels, mmPerPx, paint).map(svgElement)}</g>
    </g>
  );
});
