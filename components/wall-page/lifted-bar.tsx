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
}

const STEPS: readonly (Step & { readonly label: string })[] = [
  { along: 'course', by: -1, label: '← Unit before' },
  { along: 'course', by: 1, label: 'Next unit →' },
  { along: 'wall', by: 1, label: '↑ Course up' },
  { along: 'wall', by: -1, label: '↓ Course down' },
];

/** In the view behind a unit: which one it is, whether it is lifted, how many may still be, and the way to others. */
export function LiftedBar(props: {
  readonly name: string;
  readonly isOpen: boolean;
  readonly left: number;
  readonly most: number;
  /** Absent once the work is handed in. */
  readonly onLift: (() => void) | undefined;
  readonly onStep: (step: Step) => void;
  /** Opens the card of the unit lifted; absent after hand-in. */
  readonly onRead: (() => void) | undefined;
}) {
  const { name, isOpen, left, most, onLift, onStep, onRead } = props;
  return (
    <div className="stack tight">
      <p className={`bar ${styles.now}`}>
        <span role="status">
          {isOpen ? 'Lifted' : 'Not lifted'}: <strong>{name}</strong>.{onLift && ` ${leftWords(left, most)}`}
        </span>
        {!isOpen && left > 0 && onLift && (
          <button type="button" className={styles.lift} onClick={onLift}>
            Lift it
          </button>
        )}
        {isOpen && onRead && (
          <button type="button" onClick={onRead}>
            Read or mark it
          </button>
        )}
      </p>
      <div className={`row ${styles.steps}`}>
        {STEPS.map((step) => (
          <button key={step.label} type="button" onClick={() => onStep(step)}>
            {step.label}
          </button>
        ))}
      </div>
    </div>
  );
}

/** "You may lift 7 more of 12." The count is said wherever one can be spent. */
export function leftWords(left: number, most: number): string {
  if (left === 0) return `You have lifted all ${most} that you may.`;
  return left === most ? `You may lift ${most} units.` : `You may lift ${left} more of ${most}.`;
}

/** The units lifted so far, the latest first: each can be looked at again. */
export function LiftedRecord(props: {
  readonly record: readonly LiftedUnit[];
  readonly onLook: (unit: string) => void;
}) {
  const { record } = props;
  if (record.length === 0) return null;
  return (
    <details className={styles.record}>
      <summary>Lifted so far ({record.length})</summary>
      <ul>
        {record.map(({ unit, name }) => (
          <li key={unit}>
            <button type="button" onClick={() => props.onLook(unit)}>
              {name}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
