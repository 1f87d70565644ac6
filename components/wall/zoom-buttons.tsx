import styles from './wall-drawing.module.css';

/** The way without a pinch: nearer, further, and back to the whole wall. */
export function ZoomButtons({
  whole,
  onNearer,
  onFurther,
  onWhole,
}: {
  readonly whole: boolean;
  readonly onNearer: () => void;
  readonly onFurther: () => void;
  readonly onWhole: () => void;
}) {
  return (
    <div className={styles.zoom}>
      <button type="button" aria-label="Nearer" onClick={onNearer}>
        +
      </button>
      <button type="button" aria-label="Further away" onClick={onFurther} disabled={whole}>
        −
      </button>
      <button type="button" onClick={onWhole} disabled={whole}>
        Whole wall
      </button>
    </div>
  );
}
