'use client';

import type { ReactNode } from 'react';
import { KitDrawing, type Picture } from '../drawing/kit-drawing';
import { LengthChoice } from '../forms/length-choice';
import { Caution } from '../ui/caution';
import { Controls } from './fields/controls';
import type { Given } from './fields/use-fields';
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
  readonly given: Given;
  /** Null where nothing comes out. */
  readonly sheet: Picture | null;
  /** What the drawing exaggerates or leaves out. */
  readonly note?: string;
  /** A button below the fields. */
  readonly button?: ReactNode;
  readonly result: readonly string[];
  readonly verdicts?: ReactNode;
  readonly working: readonly Working[];
  readonly caution?: readonly string[];
  readonly children?: ReactNode;
}) {
  const { title, given, sheet, note, button, result, verdicts, working, caution, children } = props;
  return (
    <section className={styles.drawing} aria-label={title}>
      <div>
        <figure className={styles.sheet}>
          {sheet && <KitDrawing {...sheet} />}
          {note !== undefined && <figcaption className={`${styles.note} fine`}>{note}</figcaption>}
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
        <LengthChoice system={given.system} />
        <Controls {...given} />
        {button}
      </div>
      <div className={`stack ${styles.judged}`}>
        {verdicts !== undefined && <ul className="stack tight">{verdicts}</ul>}
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
              <span className="fine">Source: {source}</span>
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
