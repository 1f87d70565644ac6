'use client';

import { type KeyboardEvent, useId, useState } from 'react';
import { parseNumber } from '../../../lib/questions/parse-number';
import styles from '../trade.module.css';

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
  /** A number as it stands in the box. */
  readonly written?: (value: number) => string;
}

/**
 * A slider and a box for the same number: either answers to the keyboard. What is typed counts as soon as it is in range; until then
 * it stays in the box and is told. A box of text: a browser's own number box drops commas and slashes, so that 1,5 becomes 15.
 */
export function NumberField(props: NumberFieldProps) {
  const { label, unit, value, least, most, step, onChange, spoken, written = String } = props;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const isWrong = typed !== null && read(typed, props) === undefined;
  function type(text: string): void {
    setTyped(text);
    const number = read(text, props);
    if (number !== undefined) onChange(number);
  }
  function set(number: number): void {
    setTyped(null);
    onChange(number);
  }
  function onKeyDown(event: KeyboardEvent): void {
    const by = { ArrowUp: step, ArrowDown: -step }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    // Tenths do not add up in binary: 0.1 + 0.2 would show seventeen places.
    set(Number(Math.min(most, Math.max(least, value + by)).toFixed(6)));
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
        onChange={(event) => set(Number(event.target.value))}
      />
      <span className={styles.amount}>
        <input
          id={id}
          type="text"
          role="spinbutton"
          // Some phones' keys for decimals have no minus, space or slash.
          inputMode={least < 0 || unit === 'in' ? 'text' : 'decimal'}
          autoComplete="off"
          aria-valuemin={least}
          aria-valuemax={most}
          aria-valuenow={value}
          aria-valuetext={typed ?? spoken ?? `${value} ${unit}`}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? `${id}-range` : undefined}
          value={typed ?? written(value)}
          onChange={(event) => type(event.target.value)}
          onKeyDown={onKeyDown}
          onBlur={() => !isWrong && setTyped(null)}
        />
        <span className={styles.unit}>{unit}</span>
      </span>
      {isWrong && (
        <p id={`${id}-range`} className="problem">
          Type a number from {written(least)} to {written(most)} {unit}. Until then it is {written(value)}.
        </p>
      )}
    </div>
  );
}

function read(text: string, { unit, least, most }: NumberFieldProps): number | undefined {
  const number = parseNumber(text, unit);
  return number !== undefined && number >= least && number <= most ? number : undefined;
}
