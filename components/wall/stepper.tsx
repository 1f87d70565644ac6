import { useId } from 'react';
import styles from './stepper.module.css';

/** A number set by a slider, or step by step with two buttons: no dragging needed. */
export function Stepper(props: {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  /** The value in words, beside it and aloud. */
  readonly text: string;
  /** What the two buttons do: "Lower", "Higher". */
  readonly less: string;
  readonly more: string;
  readonly onChange: (value: number) => void;
}) {
  const { label, value, least, most, step, text, less, more, onChange } = props;
  const id = useId();
  const by = (change: number) => onChange(Math.min(most, Math.max(least, value + change)));
  return (
    <div className={`bar ${styles.stepper}`}>
      <label htmlFor={id}>{label}</label>
      <button type="button" aria-label={less} disabled={value <= least} onClick={() => by(0 - step)}>
        −
      </button>
      <input
        id={id}
        type="range"
        min={least}
        max={most}
        step={step}
        value={value}
        aria-valuetext={text}
        onChange={(event) => onChange(Number(event.target.value))}
      />
      <button type="button" aria-label={more} disabled={value >= most} onClick={() => by(step)}>
        +
      </button>
      <output htmlFor={id}>{text}</output>
    </div>
  );
}
