import styles from './forms.module.css';

/** Opens a wall by its code. Works without script: the form sends to /walls, which leads on or says what is wrong. */
export function CodeBox({
  typed = '',
  problem = null,
}: {
  readonly typed?: string;
  readonly problem?: string | null;
}) {
  return (
    <form method="get" action="/walls" className={styles.code}>
      <label htmlFor="wall-code">Wall code</label>
      <div className={`${styles.row} row`}>
        <input
          id="wall-code"
          name="code"
          defaultValue={typed}
          required
          maxLength={40}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          aria-invalid={problem !== null}
          aria-describedby={problem === null ? 'wall-code-help' : 'wall-code-problem wall-code-help'}
        />
        <button type="submit" className="button">
          Open the wall
        </button>
      </div>
      {problem !== null && (
        <p id="wall-code-problem" className="problem" role="alert">
          <span aria-hidden="true">✕ </span>
          {problem}
        </p>
      )}
      <p id="wall-code-help" className={`${styles.help} fine`}>
        Ten letters and digits, like 3K7-Q2WF-9TB.
      </p>
    </form>
  );
}
