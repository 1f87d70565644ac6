'use client';

import type { ReactNode } from 'react';
import type { LengthSystem } from '../../lib/units';
import { LengthChoice } from '../forms/length-choice';
import { Caution } from '../ui/caution';
import styles from './trade.module.css';

/** A formula in words and signs, and where it is from. */
export interface Working {
  readonly what: string;
  readonly formula: string;
  readonly source: string;
}

/** What every drawing that computes is made of, in one order: sheet, what to change, what comes out, what it is held against, how. */
export function DrawingFrame(props: {
  readonly title: string;
  /** The reader's lengths; left out where the drawing has none. */
  readonly system?: LengthSystem;
  readonly sheet: ReactNode;
  /** What the drawing exaggerates or leaves out. */
  readonly note?: string;
  readonly controls: ReactNode;
  readonly result: readonly string[];
  readonly verdicts?: ReactNode;
  readonly working: readonly Working[];
  readonly caution?: readonly string[];
  readonly children?: ReactNode;
}) {
  const { title, system, sheet, note, controls, result, verdicts, working, caution, children } = props;
  return (
    <section className={styles.drawing} aria-label={title}>
      <div>
        <figure className={styles.sheet}>
          {sheet}
          {note !== undefined && <figcaption className={styles.note}>{note}</figcaption>}
        </figure>
        <output className={styles.result}>
          {result.map((line) => (
            <span key={line}>{line}</span>
          ))}
        </output>
      </div>
      <p className={styles.unscripted}>
        With script you can change the numbers here. Without it the drawing stands as you see it.
      </p>
      <div className={styles.controls}>
        {system !== undefined && <LengthChoice system={system} />}
        {controls}
      </div>
      <div className={styles.judged}>
        {verdicts !== undefined && <ul className={styles.verdicts}>{verdicts}</ul>}
        {caution !== undefined && <Caution lines={caution} toSafety />}
        <WorkedOut working={working} />
      </div>
      {children !== undefined && <div className={styles.more}>{children}</div>}
    </section>
  );
}

function WorkedOut({ working }: { readonly working: readonly Working[] }) {
  return (
    <details className={styles.working}>
      <summary>How this is worked out</summary>
      <dl>
        {working.map(({ what, formula, source }) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>
              {formula}
              <br />
              <span className={styles.source}>Source: {source}</span>
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
