import type { ReactNode } from 'react';
import type { Reading } from '../../lib/instruments/reading';
import type { LengthSystem } from '../../lib/units';
import styles from './picture.module.css';

/** What a picture is drawn from: the reading shown beside it. Null while there is none. */
export interface Shown {
  readonly reading: Reading | null;
  readonly system: LengthSystem;
}

/** The instrument drawn on its reading. The reading stands beside it in words, so the drawing itself is silent. */
export function PictureFrame({ children }: { readonly children: ReactNode }) {
  return (
    <svg className={styles.picture} viewBox="0 0 320 120" aria-hidden="true" focusable="false">
      {children}
    </svg>
  );
}

/** The value to draw, 0 while there is none. */
export function shownValue({ reading }: Shown): number {
  return reading?.value ?? 0;
}

export function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

/** Bricks in a row, flush or each moved by what `rise` says (px). */
export function Bricks(props: {
  readonly x: number;
  readonly y: number;
  readonly count: number;
  readonly width: number;
  readonly height: number;
  readonly rise?: (index: number) => number;
}) {
  const { x, y, count, width, height, rise = () => 0 } = props;
  return Array.from({ length: count }, (_, index) => (
    <rect
      // biome-ignore lint/suspicious/noArrayIndexKey: a row of alike bricks, never reordered
      key={index}
      className={styles.brick}
      x={x + index * (width + 4)}
      y={y + rise(index)}
      width={width}
      height={height}
      rx={1.5}
    />
  ));
}
