'use client';

import type { ReactNode } from 'react';
import styles from './lifted-back.module.css';

export interface LiftedUnit {
  readonly unit: string;
  readonly name: string;
}

/** Beside the wall: the back of the unit lifted last, and how many may still be lifted; before the first, how to choose them. */
export function LiftedBack(props: {
  readonly name: string;
  /** Its back is seen. */
  readonly isOpen: boolean;
  /** How many may still be lifted, and how many at all; null once the work is handed in. */
  readonly lifting: { readonly left: number; readonly most: number } | null;
  /** How to choose the units. */
  readonly plan: string;
  /** Opens the card of the unit lifted; absent after hand-in. */
  readonly onRead: (() => void) | undefined;
  /** The drawing of the back. */
  readonly children: ReactNode;
}) {
  const { name, isOpen, lifting, plan, onRead, children } = props;
  return (
    <section className={`stack tight ${styles.back}`} aria-label="Behind a unit">
      <p className={styles.now}>
        <span role="status">
          {isOpen ? (
            <>
              Lifted: <strong>{name}</strong>.
            </>
          ) : lifting?.left === 0 ? (
            `${name} stays where it is.`
          ) : (
            'Tap a unit on the wall to lift it.'
          )}
          {lifting && ` ${leftWords(lifting.left, lifting.most)}`}
        </span>
        {isOpen && onRead && (
          <button type="button" onClick={onRead}>
            Mark this unit
          </button>
        )}
      </p>
      {isOpen ? children : <p>{plan}</p>}
    </section>
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
      <ul className="stack tight">
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
