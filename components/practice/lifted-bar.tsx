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

/** In the view behind a unit: which one is lifted, the way to others, and what was seen behind those lifted before. */
export function LiftedBar(props: {
  readonly name: string;
  /** The latest first, with the one lifted now. */
  readonly record: readonly LiftedUnit[];
  readonly onStep: (step: Step) => void;
  readonly onLift: (unit: string) => void;
  /** Opens the card of the unit lifted; absent after hand-in. */
  readonly onRead: (() => void) | undefined;
}) {
  const { name, record, onStep, onLift, onRead } = props;
  const [now, ...before] = record;
  return (
    <div className={styles.bar}>
      <p className={styles.now}>
        <span role="status">
          Lifted: <strong>{name}</strong>
          {now?.back && `. ${now.back}`}
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
      {before.length > 0 && (
        <details className={styles.record}>
          <summary>Lifted before ({before.length})</summary>
          <ul>
            {before.slice(0, MOST_SHOWN).map(({ unit, name: each, back }) => (
              <li key={unit}>
                <button type="button" onClick={() => onLift(unit)}>
                  {each}
                </button>
                {back && <span> {back}</span>}
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}
