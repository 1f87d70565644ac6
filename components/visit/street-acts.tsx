import { STREET_ACTS, type StreetAct } from '../../lib/visit/acts';
import styles from './visit.module.css';
import { ACT_WORDS } from './visit-words';

/** What is done first, second, third: each press numbers an act, another takes it out again. */
export function StreetActs(props: {
  readonly done: readonly StreetAct[];
  readonly onDone: (done: readonly StreetAct[]) => void;
}) {
  const { done, onDone } = props;
  return (
    <ul className={`stack tight ${styles.order}`} aria-label="What you do, in order">
      {STREET_ACTS.map((act) => {
        const at = done.indexOf(act);
        return (
          <li key={act}>
            <button
              type="button"
              aria-pressed={at >= 0}
              onClick={() => onDone(at >= 0 ? done.filter((each) => each !== act) : [...done, act])}
            >
              <span className={styles.number}>{at >= 0 ? `${at + 1}.` : ''}</span>
              <span>{ACT_WORDS[act]}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}
