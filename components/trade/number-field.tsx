'use client';

import { useId, useState } from 'react';
import styles from './trade.module.css';

export interface NumberFieldProps {
  readonly label: string;
  readonly unit: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly onChange: (value: number) => void;
  /** What the slider says aloud; the number and unit when left out. */
  readonly spoken?: string;
}

/** A slider and a box for the same number: either answers to the keyboard. What is typed counts as soon as it is in range. */
export function NumberField(props: NumberFieldProps) {
  const { label, unit, value, least, most, step, onChange, spoken } = props;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const isWrong = typed !== null && !isWithin(Number(typed || Number.NaN), least, most);
  function type(text: string): void {
    setTyped(text);
    const number = Number(text || Number.NaN);
    if (isWithin(number, least, most)) onChange(number);
  }
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <input
        type="range"
        aria-label={`${label}, slider`}
        aria-valuetext={spoken ?? `${value} ${unit}`}
        min={least}
        max={most}
        step={step}
        value={value}
        onChange={(event) => {
          setTyped(null);
          onChange(Number(event.target.value));
        }}
      />
      <span className={styles.amount}>
        <input
          id={id}
          type="number"
          inputMode="decimal"
          min={least}
          max={most}
          step="any"
          aria-invalid={isWrong}
          aria-describedby={isWrong ? `${id}-range` : undefined}
          value={typed ?? String(value)}
          onChange={(event) => type(event.target.value)}
          onBlur={() => setTyped(null)}
        />
        <span className={styles.unit}>{unit}</span>
      </span>
      {isWrong && (
        <p id={`${id}-range`} className={styles.problem}>
          From {least} to {most} {unit}.
        </p>
      )}
    </div>
  );
}

function isWithin(number: number, least: number, most: number): boolean {
  return number >= least && number <= most;
}
