import { type ComponentProps, lazy, memo, Suspense } from 'react';
import { labelNodes } from '../../lib/drawing/label-nodes';
import type { Drawing } from '../../lib/drawing/shape';
import { nodeOf, tenth, turned } from '../../lib/drawing/svg-nodes';
import type { Box } from '../../lib/geometry/box';
import { badgeAt, type MarkBox, markOnSheet, markShapes } from '../../lib/views/pointing/mark-shapes';
import { pagePaint, svgElement } from '../drawing/svg-element';
import styles from './wall-drawing.module.css';

/** Only a result has them. */
const WallDimensions = lazy(() =>
  import('./wall-dimensions').then(({ WallDimensions: Dimensions }) => ({ default: Dimensions })),
);

/** What was measured, once what draws it is here. */
export function Measured(props: ComponentProps<typeof WallDimensions>) {
  if (props.dimensions.length === 0) return null;
  return (
    <Suspense fallback={null}>
      <WallDimensions {...props} />
    </Suspense>
  );
}

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
        const [left, top] = badgeAt(drawing.box, box, 'left', mmPerPx);
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

/** Units that were lifted, darkened and hatched, so that nobody lifts them again by mistake. */
export const LiftedUnits = memo(function LiftedUnits({
  drawing,
  lifted,
}: {
  readonly drawing: Drawing;
  readonly lifted: readonly string[];
}) {
  return (
    <g className={styles.lifted}>
      {drawing.spots
        .filter(({ part }) => lifted.includes(part))
        .map(({ part, x, y, width, height }) => (
          <g key={part} data-lifted={part}>
            <rect x={tenth(x)} y={tenth(turned(y + height))} width={tenth(width)} height={tenth(height)} />
            <path
              d={`M${tenth(x)} ${tenth(turned(y))}L${tenth(x + width)} ${tenth(turned(y + height))}M${tenth(x)} ${tenth(turned(y + height))}L${tenth(x + width)} ${tenth(turned(y))}`}
            />
          </g>
        ))}
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
