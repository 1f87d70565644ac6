import type { LengthSystem } from '../../lib/units';
import type { ResultRows, TightestRow } from '../../lib/wall-page/result-rows';
import { withinWords } from './false-mark-item';
import styles from './result.module.css';

/** What looks wrong on the wall and is right: what the reader said to leave, and what they left without a word. */
export function LookAlikes({ rows }: { readonly rows: Pick<ResultRows, 'left' | 'tempting'> }) {
  const { left, tempting } = rows;
  if (left.length + tempting.length === 0) return null;
  return (
    <>
      <h3 className={styles.listTitle}>Looks wrong, is right</h3>
      {left.length > 0 && (
        <ul className="stack">
          {left.map(({ part, faultName, place, lookAlike }) => (
            <li key={`${part} ${faultName}`} className={styles.item}>
              <h4>{faultName}?</h4>
              <p className="fine">{place}</p>
              <p>You said to leave it, and so it is. {lookAlike} It costs nothing, and counts as acted.</p>
            </li>
          ))}
        </ul>
      )}
      {tempting.length > 0 && (
        <>
          <p>These could have tempted you. You left them alone, and rightly.</p>
          <ul className={`stack tight ${styles.tempting}`}>
            {tempting.map(({ part, place, lookAlike }) => (
              <li key={part + lookAlike}>
                {lookAlike} <span className="fine">{place}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** What came nearest to its limit on a sound wall. */
export function Tightest({ row, system }: { readonly row: TightestRow; readonly system: LengthSystem }) {
  const { faultName, place, within } = row;
  return (
    <>
      <h3 className={styles.listTitle}>Nearest to its limit</h3>
      <p>
        {place}, measured for “{faultName}”. {withinWords(within, system)}
      </p>
      <p className="fine">{within.source}</p>
    </>
  );
}
