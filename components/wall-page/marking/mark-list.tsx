'use client';

import { SURE_WORDS } from '../answer-words';
import type { Mark } from '../work-state';
import styles from './mark-list.module.css';

export interface NamedMark {
  readonly mark: Mark;
  readonly faultName: string;
  readonly partName: string;
  /** What more was said of it; empty when nothing. */
  readonly details: string;
}

/** The learner's marks, numbered as on the wall. */
export function MarkList(props: {
  readonly marks: readonly NamedMark[];
  readonly onChange: (index: number) => void;
  readonly onRemove: (index: number) => void;
}) {
  const { marks, onChange, onRemove } = props;
  return (
    <ol className="stack tight">
      {marks.map(({ mark, faultName, partName, details }, index) => (
        <li key={`${mark.part} ${mark.fault}`} className={styles.mark}>
          <p className={styles.words}>
            <span className={styles.number}>{index + 1}</span>
            <span>
              <strong>{faultName}</strong>
              <br />
              {partName} · {SURE_WORDS[mark.sure].toLowerCase()}
              {details && (
                <>
                  <br />
                  {details}
                </>
              )}
            </span>
          </p>
          <p className={styles.tools}>
            <button type="button" aria-label={`Change mark ${index + 1}`} onClick={() => onChange(index)}>
              Change
            </button>
            <button type="button" aria-label={`Remove mark ${index + 1}`} onClick={() => onRemove(index)}>
              Remove
            </button>
          </p>
        </li>
      ))}
    </ol>
  );
}
