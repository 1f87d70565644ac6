import { type QuickState, WALLS_A_ROUND } from '../../../lib/drills/quick/quick-round';
import styles from './quick.module.css';

/** Under the wall: which one it is, the time left, and the two answers. */
export function QuickBar(props: {
  readonly state: QuickState;
  /** Whether the wall before was sound, and the answer to it right; null for the first. */
  readonly before: { readonly faulty: boolean; readonly right: boolean } | null;
  readonly onAnswer: (faulty: boolean) => void;
  readonly onPause: (paused: boolean) => void;
}) {
  const { state, before, onAnswer, onPause } = props;
  const { left, time, paused, phase, answers } = state;
  return (
    <div className={`bar ${styles.bar}`}>
      <p className={styles.count}>
        Wall {answers.length + 1} of {WALLS_A_ROUND}
      </p>
      {before && (
        <p role="status" data-right={before.right} className={styles.before}>
          Wall {answers.length}: {before.right ? '✓ right' : '✕ wrong'},{' '}
          {before.faulty ? 'something was wrong with it.' : 'it was sound.'}
        </p>
      )}
      {left !== null && time !== null && (
        <div className={styles.clock}>
          <div className={styles.run} aria-hidden="true">
            <div style={{ width: `${(left / (time * 1000)) * 100}%` }} />
          </div>
          <p className={styles.left} role="timer">
            {Math.ceil(left / 1000)} s
          </p>
          <button
            type="button"
            className={styles.pause}
            disabled={phase !== 'looking'}
            onClick={() => onPause(!paused)}
          >
            {paused ? 'Go on' : 'Pause'}
          </button>
        </div>
      )}
      <div className={`row ${styles.answers}`}>
        <button type="button" className="button" disabled={paused} onClick={() => onAnswer(false)}>
          Sound
        </button>
        <button type="button" className="button" disabled={paused} onClick={() => onAnswer(true)}>
          Something is wrong
        </button>
      </div>
    </div>
  );
}
