import type { ExplainedFinding } from '../../../lib/drills/explained-finding';
import type { LengthSystem } from '../../../lib/units';
import styles from '../drills.module.css';
import { ExplainedItem } from '../explained-finding';

/** Everything found on the wall, told in full. In the second step each says how the reader did. */
export function GuidedTold(props: {
  readonly rows: readonly ExplainedFinding[];
  /** One for each row, or null in the first step. */
  readonly right: readonly boolean[] | null;
  readonly system: LengthSystem;
  readonly onShow: (number: number) => void;
}) {
  const { rows, right, system, onShow } = props;
  return (
    <ol className="stack">
      {rows.map((row, index) => (
        <li key={row.number} className={styles.item}>
          {right && <p className={styles.verdict}>{right[index] ? '✓ Right' : '✕ Not right'}</p>}
          <ExplainedItem row={row} system={system} onShow={() => onShow(row.number)} />
        </li>
      ))}
    </ol>
  );
}
