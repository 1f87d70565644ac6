'use client';

import styles from './lifted-bar.module.css';

/** One unit on or back along the course, or one course up or down. */
export interface Step {
  readonly along: 'course' | 'wall';
  readonly by: 1 | -1;
}

export interface LiftedUnit {
  readonly unit: string;
  readonly name: string;
  /** How much of the back is covered, in words; null where there is nothing to read. */
  readonly back: string | null;
}

const STEPS: readonly (Step & { readonly label: string })[] = [
  { along: 'course', by: -1, label: '← Unit before' },
  { along: 'course', by: 1, label: 'Next unit →' },
  { along: 'wall', by: 1, label: '↑ Course up' },
  { along: 'wall', by: -1, label: '↓ Course down' },
];

/** Older ones are forgotten: a short record is read, a long one is not. */
const MOST_SHOWN = 8;

/** In the view behind a unit: which one is lifted, what its back shows, and the way to others. */
export function LiftedBar(props: {
  readonly name: string;
  readonly back: string | null;
  readonly onStep: (step: Step) => void;
  /** Opens the card of the unit lifted; absent after hand-in. */
  readonly onRead: (() => void) | undefined;
}) {
  const { name, back, onStep, onRead } = props;
  return (
    <div className={styles.bar}>
      <p className={styles.now}>
        <span role="status">
          Lifted: <strong>{name}</strong>
          {back && `. ${back}`}
        </span>
        {onRead && (
          <button type="button" onClick={onRead}>
            Read or mark it
          </button>
        )}
      </p>
      <div className={styles.steps}>
        {STEPS.map((step) => (
          <button key={step.label} type="button" onClick={() => onStep(step)}>
            {step.label}
          </button>
        ))}
      </div>
    </div>
  );
}

/** The units lifted before the one lifted now, each with what its back showed. */
export function LiftedRecord(props: {
  /** The latest first: the one lifted now leads and is left out. */
  readonly record: readonly LiftedUnit[];
  readonly onLift: (unit: string) => void;
}) {
  const before = props.record.slice(1);
  if (before.length === 0) return null;
  return (
    <details className={styles.record} open>
      <summary>Lifted before ({before.length})</summary>
      <ul>
        {before.slice(0, MOST_SHOWN).map(({ unit, name, back }) => (
          <li key={unit}>
            <button type="button" onClick={() => props.onLift(unit)}>
              {name}
            </button>
            {back && <span> {back}</span>}
          </li>
        ))}
      </ul>
    </details>
  );
}
