import { useId } from 'react';
import type { BlemishChoice } from '../../../lib/drills/build/blemish-choices';
import type { Condition } from '../../../lib/wall/model';
import { Options } from '../../ui/options';
import styles from './build.module.css';

/** What is to be seen on a few faces, and what that tells. */
export function BlemishField(props: {
  readonly choices: readonly BlemishChoice[];
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
      <p>Nothing is measured on these marks, but some of them are still a sign of trouble.</p>
      <div className={styles.ask}>
        <label htmlFor={id}>
          What a few units can show
          <select id={id} value={value} onChange={(event) => choose(event.target.value)}>
            <option value="sound">Nothing</option>
            <Options of={choices.map(({ condition, name }) => [condition, name])} />
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
