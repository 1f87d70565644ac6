import { useId } from 'react';
import type { Condition } from '../../../lib/wall/model';
import styles from './build.module.css';

/** One mark that can be put on the faces, and what is said of it. */
export interface FaceMarkChoice {
  readonly condition: Condition;
  readonly name: string;
  readonly tells: string;
  readonly means: string;
  readonly remedy: string;
  /** A published figure for it, with its source, or null. */
  readonly figure: string | null;
}

/** What is to be seen on a few faces, and what that tells. */
export function FaceMarksChoice(props: {
  readonly choices: readonly FaceMarkChoice[];
  readonly value: Condition;
  readonly onChange: (condition: Condition) => void;
}) {
  const { choices, value, onChange } = props;
  const id = useId();
  const chosen = choices.find(({ condition }) => condition === value);
  const choose = (wanted: string) =>
    onChange(choices.find(({ condition }) => condition === wanted)?.condition ?? 'sound');
  return (
    <>
      <p>Nothing is measured on these marks. Some are a sign of trouble all the same.</p>
      <div className={styles.ask}>
        <label htmlFor={id}>
          What a few units show
          <select id={id} value={value} onChange={(event) => choose(event.target.value)}>
            <option value="sound">Nothing</option>
            {choices.map(({ condition, name }) => (
              <option key={condition} value={condition}>
                {name}
              </option>
            ))}
          </select>
        </label>
      </div>
      <div aria-live="polite">
        {chosen && (
          <>
            <p>
              <strong>
                {chosen.name}: {chosen.tells}.
              </strong>{' '}
              {chosen.means}
            </p>
            <p>{chosen.remedy}</p>
            <p className={styles.source}>{chosen.figure ?? 'Common practice. No figure.'}</p>
          </>
        )}
      </div>
    </>
  );
}
