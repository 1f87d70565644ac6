import { useId } from 'react';
import { WallFills, WallPicture } from '../../../components/wall/wall-picture';
import type { Heat } from '../../../lib/classes/statistics/heat-map';
import type { Drawing } from '../../../lib/drawing/shape';
import { svgBox, tenth, turned } from '../../../lib/drawing/svg-nodes';
import type { Finding } from '../../../lib/inspect/finding';
import { frontPicture } from '../../../lib/views/front/front';
import { badgePlace, type MarkBox, markOnSheet } from '../../../lib/views/pointing/mark-shapes';
import type { SurveyedWall } from '../../../lib/wall/surveyed';
import styles from './plots.module.css';

/** Width the numbers are sized for, px: between a phone and a desk. */
const WIDTH = 560;
/** Palest and darkest, so that one mark is seen and the bricks still show through many. */
const PALEST = 0.15;
const DARKEST = 0.7;

/**
 * A wall with where a group marked it: the more of them, the darker the box, and their number on it. With `findings` the faults that
 * are there as dashed rings with letters, in the order of the list beside.
 */
export function HeatWall({
  surveyed,
  heat,
  findings = [],
  label,
}: {
  readonly surveyed: SurveyedWall;
  readonly heat: readonly Heat[];
  readonly findings?: readonly Finding[];
  readonly label: string;
}) {
  const prefix = `${useId()}-`;
  const drawing = frontPicture(surveyed);
  const [x, y, width, height] = svgBox(drawing.box);
  const mmPerPx = width / WIDTH;
  const boxes = heat.flatMap((each) => {
    const part = surveyed.parts.get(each.part);
    return part
      ? [{ heat: each, mark: { ...part, number: 0, state: 'mark' as const }, wide: part.kind === 'panel' }]
      : [];
  });
  return (
    <svg className={styles.wall} viewBox={`${x} ${y} ${width} ${height}`} role="img" aria-label={label}>
      <WallFills wall={surveyed.wall} drawing={drawing} prefix={prefix} />
      <WallPicture drawing={drawing} prefix={prefix} part="all" />
      {/* The least marked first, so that the most marked lie on top. */}
      {[...boxes].reverse().map((box) => (
        <HeatBox key={box.heat.part} {...box} drawing={drawing} mmPerPx={mmPerPx} />
      ))}
      {findings.map((finding, index) => (
        <KeyRing
          key={`${finding.check} ${finding.parts[0]}`}
          mark={{ ...finding.region, number: index, state: 'missed' }}
          letter={letterOf(index)}
          drawing={drawing}
          mmPerPx={mmPerPx}
        />
      ))}
      {/* Numbers last: a ring may run through the corner where one stands. */}
      {boxes.map((box) => (
        <HeatBadge key={box.heat.part} {...box} drawing={drawing} mmPerPx={mmPerPx} />
      ))}
    </svg>
  );
}

/** A, B, C … */
export function letterOf(index: number): string {
  return String.fromCharCode(65 + (index % 26));
}

interface HeatProps {
  readonly heat: Heat;
  readonly mark: MarkBox;
  /** A mark on a whole panel: its outline only, or it would dye all others. */
  readonly wide: boolean;
  readonly drawing: Drawing;
  readonly mmPerPx: number;
}

function HeatBox({ heat, mark, wide, drawing, mmPerPx }: HeatProps) {
  const box = markOnSheet(drawing, mark, mmPerPx);
  if (box === null) return null;
  const place = placeOf(box);
  return (
    <g>
      <rect {...place} className={styles.heatHalo} strokeWidth={5 * mmPerPx} />
      <rect
        {...place}
        className={styles.heat}
        fillOpacity={wide ? 0 : PALEST + (DARKEST - PALEST) * heat.share}
        strokeWidth={2 * mmPerPx}
      />
    </g>
  );
}

function HeatBadge({ heat, mark, drawing, mmPerPx }: HeatProps) {
  const box = markOnSheet(drawing, mark, mmPerPx);
  if (box === null) return null;
  const [left, top] = badgePlace(drawing.box, [box.x, box.y + box.height], mmPerPx);
  const radius = 12 * mmPerPx;
  return (
    <g>
      <circle
        className={styles.plate}
        cx={tenth(left)}
        cy={tenth(turned(top))}
        r={tenth(radius)}
        strokeWidth={2 * mmPerPx}
      />
      <text
        className={styles.count}
        x={tenth(left)}
        y={tenth(turned(top) + radius * 0.4)}
        fontSize={tenth(radius * 1.15)}
        textAnchor="middle"
      >
        {heat.learners}
      </text>
    </g>
  );
}

function KeyRing(props: {
  readonly mark: MarkBox;
  readonly letter: string;
  readonly drawing: Drawing;
  readonly mmPerPx: number;
}) {
  const { mark, letter, drawing, mmPerPx } = props;
  const box = markOnSheet(drawing, mark, mmPerPx);
  if (box === null) return null;
  const place = placeOf(box);
  const [right, top] = badgePlace(drawing.box, [box.x + box.width, box.y + box.height], mmPerPx);
  const side = 22 * mmPerPx;
  return (
    <g>
      <rect {...place} className={styles.keyHalo} strokeWidth={6 * mmPerPx} />
      <rect
        {...place}
        className={styles.keyRing}
        strokeWidth={3 * mmPerPx}
        strokeDasharray={`${7 * mmPerPx} ${5 * mmPerPx}`}
      />
      <rect
        className={styles.keyPlate}
        x={tenth(right - side / 2)}
        y={tenth(turned(top) - side / 2)}
        width={tenth(side)}
        height={tenth(side)}
      />
      <text
        className={styles.keyLetter}
        x={tenth(right)}
        y={tenth(turned(top) + side * 0.26)}
        fontSize={tenth(side * 0.72)}
        textAnchor="middle"
      >
        {letter}
      </text>
    </g>
  );
}

function placeOf({ x, y, width, height }: { x: number; y: number; width: number; height: number }) {
  return { x: tenth(x), y: tenth(turned(y + height)), width: tenth(width), height: tenth(height) };
}
