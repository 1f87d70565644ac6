import styles from './wall-drawing.module.css';

/** How far a press moves what is seen. */
const PAN = 0.4;
const WAYS = [
  { sign: '←', name: 'Look further left', x: -PAN, y: 0 },
  { sign: '↑', name: 'Look further up', x: 0, y: PAN },
  { sign: '↓', name: 'Look further down', x: 0, y: -PAN },
  { sign: '→', name: 'Look further right', x: PAN, y: 0 },
] as const;

/** The way without a pinch or a drag: nearer, further, back to the whole wall, and to the sides while not all is seen. No stops of the keyboard: in the grid plus, minus and 0 do the same. */
export function ZoomButtons({
  whole,
  onNearer,
  onFurther,
  onWhole,
  onPan,
  notice,
}: {
  readonly whole: boolean;
  readonly onNearer: () => void;
  readonly onFurther: () => void;
  readonly onWhole: () => void;
  /** Moves what is seen, in shares of its width and height: x to the right, y up. */
  readonly onPan: (x: number, y: number) => void;
  /** What the last tap did, if it picked nothing. */
  readonly notice: string;
}) {
  return (
    <div className={styles.zoom}>
      <button type="button" tabIndex={-1} aria-label="Nearer" onClick={onNearer}>
        +
      </button>
      <button type="button" tabIndex={-1} aria-label="Further away" onClick={onFurther} disabled={whole}>
        −
      </button>
      <button type="button" tabIndex={-1} onClick={onWhole} disabled={whole}>
        Whole wall
      </button>
      {!whole && (
        <div className={styles.ways}>
          {WAYS.map(({ sign, name, x, y }) => (
            <button key={sign} type="button" tabIndex={-1} aria-label={name} onClick={() => onPan(x, y)}>
              {sign}
            </button>
          ))}
        </div>
      )}
      <p role="status" className={styles.notice}>
        {notice}
      </p>
    </div>
  );
}
