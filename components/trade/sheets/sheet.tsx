import { type ReactNode, useId } from 'react';

/** A drawing sheet: one picture to a screen reader, named by what it shows now. y runs down. */
export function Sheet(props: {
  readonly label: string;
  readonly width: number;
  readonly height: number;
  readonly children: ReactNode;
}) {
  const { label, width, height, children } = props;
  return (
    <svg role="img" aria-label={label} viewBox={`0 0 ${width} ${height}`}>
      {children}
    </svg>
  );
}

/** Hatching as on working drawings: brick and concrete. The id is unique on the page. */
export function useHatch() {
  const id = useId();
  const brick = `${id}brick`;
  const concrete = `${id}concrete`;
  const defs = (
    <defs>
      <pattern id={brick} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="7" height="7" fill="var(--ochre-wash)" />
        <path d="M0 0V7" stroke="var(--clay)" strokeWidth="2.4" />
      </pattern>
      <pattern id={concrete} width="14" height="14" patternUnits="userSpaceOnUse">
        <rect width="14" height="14" fill="var(--paper)" />
        <path
          d="M2 4h.01M9 2h.01M12 9h.01M5 11h.01"
          stroke="var(--slate)"
          strokeWidth="2"
          strokeLinecap="round"
        />
        <path d="M5 5l3 1.5-3 1z" fill="none" stroke="var(--slate)" strokeWidth="0.8" />
      </pattern>
    </defs>
  );
  return { defs, brick: `url(#${brick})`, concrete: `url(#${concrete})` };
}

/** A dimension line with ticks and its text: level when y1 = y2, upright otherwise. */
export function DimensionLine(props: {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly text: string;
  /** Gap from the line to the text; negative puts it on the other side. */
  readonly gap?: number;
}) {
  const { x1, y1, x2, y2, text, gap = 6 } = props;
  const isLevel = y1 === y2;
  const x = (x1 + x2) / 2;
  const y = (y1 + y2) / 2;
  return (
    <g>
      <path
        d={`M${x1} ${y1}L${x2} ${y2}M${x1 - 4} ${y1 + 4}l8 -8M${x2 - 4} ${y2 + 4}l8 -8`}
        stroke="var(--slate)"
        strokeWidth="1.2"
        fill="none"
      />
      <text
        x={isLevel ? x : x + gap}
        y={isLevel ? y - gap + (gap < 0 ? 9 : 0) : y + 4}
        textAnchor={isLevel ? 'middle' : gap < 0 ? 'end' : 'start'}
      >
        {text}
      </text>
    </g>
  );
}
