import styles from './wall-drawing.module.css';

/** The way without a pinch: nearer, further, and back to the whole wall. No stops of the keyboard: in the grid plus, minus and 0 do the same. */
export function ZoomButtons({
  whole,
  onNearer,
  onFurther,
  onWhole,
  said,
}: {
  readonly whole: boolean;
  readonly onNearer: () => void;
  readonly onFurther: () => void;
  readonly onWhole: () => void;
  /** What the last tap did, if it picked nothing. */
  readonly said: string;
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
      <p role="status" className={styles.said}>
        {said}
      </p>
    </div>
  );
}
