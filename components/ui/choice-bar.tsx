'use client';

import { useId } from 'react';
import styles from './choice-bar.module.css';

export interface Choice<T extends string> {
  readonly value: T;
  readonly label: string;
}

/** One of a few, all in sight. Radio buttons under the skin: one stop of the keyboard, arrows move. */
export function ChoiceBar<T extends string>(props: {
  readonly legend: string;
  readonly options: readonly Choice<T>[];
  readonly value: T | null;
  readonly onChoose: (value: T) => void;
}) {
  const { legend, options, value, onChoose } = props;
  const name = useId();
  return (
    <fieldset className={styles.bar}>
      <legend className={styles.legend}>{legend}</legend>
      <div className={styles.choices}>
        {options.map((option) => (
          <label key={option.value} className={styles.choice}>
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChoose(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
