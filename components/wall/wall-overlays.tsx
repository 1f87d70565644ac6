import { memo } from 'react';
import { labelNodes } from '../../lib/drawing/label-nodes';
import type { Drawing } from '../../lib/drawing/shape';
import { nodeOf, tenth, turned } from '../../lib/drawing/svg-nodes';
import type { Box } from '../../lib/geometry/box';
import { badgePlace, type MarkBox, markOnSheet, markShapes } from '../../lib/views/pointing/mark-shapes';
import { pagePaint, svgElement } from '../drawing/svg-element';
import styles from './wall-drawing.module.css';

/** Texts of the drawing, at reading size at every zoom. */
export const WallLabels = memo(function WallLabels({
  drawing,
  mmPerPx,
  prefix,
}: {
  readonly drawing: Drawing;
  readonly mmPerPx: number;
  readonly prefix: string;
}) {
  return (
    <g className={styles.labels}>{labelNodes(drawing.labels, mmPerPx, pagePaint(prefix)).map(svgElement)}</g>
  );
});

const STATES = { mark: 'Mark', found: 'Found', missed: 'Missed', false: 'False mark' } as const;

/** Marks with their numbers. */
export const WallMarks = memo(function WallMarks({
  drawing,
  marks,
  mmPerPx,
  prefix,
}: {
  readonly drawing: Drawing;
  readonly marks: readonly MarkBox[];
  readonly mmPerPx: number;
  readonly prefix: string;
}) {
  const paint = pagePaint(prefix);
  return (
    <g className={styles.marks}>
      {markShapes(drawing, marks, mmPerPx).map((shape, index) => svgElement(nodeOf(shape, paint), index))}
      {marks.map((mark) => {
        const box = markOnSheet(drawing, mark, mmPerPx);
        if (box === null) return null;
        const radius = 11 * mmPerPx;
        const [left, top] = badgePlace(drawing.box, [box.x, box.y + box.height], mmPerPx);
        const x = tenth(left);
        const y = tenth(turned(top));
        return (
          // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a group of SVG is no control.
          <g
            key={`${mark.state}${mark.number}`}
            role="img"
            aria-label={`${STATES[mark.state]} ${mark.number}`}
          >
            <circle cx={x} cy={y} r={tenth(radius)} className={styles[mark.state]} />
            <text
              x={x}
              y={tenth(y + radius * 0.42)}
              fontSize={tenth(radius * 1.25)}
              textAnchor="middle"
              className={styles.number}
            >
              {mark.number}
            </text>
          </g>
        );
      })}
    </g>
  );
});

/** A ring of two tones, seen on light and dark alike, of the same width at every zoom. */
export function Ring({
  box,
  mmPerPx,
  kind,
}: {
  readonly box: Box;
  readonly mmPerPx: number;
  readonly kind: 'selected' | 'focus';
}) {
  const room = 3 * mmPerPx;
  const place = {
    x: tenth(box.x - room),
    y: tenth(turned(box.y + box.height) - room),
    width: tenth(box.width + 2 * room),
    height: tenth(box.height + 2 * room),
    rx: tenth(2 * mmPerPx),
  };
  return (
    <g className={kind === 'focus' ? styles.focusRing : styles.ring} data-ring={kind}>
      <rect {...place} className={styles.ringOuter} />
      <rect {...place} className={styles.ringInner} />
    </g>
  );
}
