'use client';

import type { ReactNode } from 'react';
import { Caution } from '../ui/caution';
import { MarkList, type NamedMark } from './marking/mark-list';
import styles from './marking-panel.module.css';

/** Beside the wall: the part picked (`children`), the marks so far, and the way to handing in. */
export function MarkingPanel(props: {
  readonly marks: readonly NamedMark[];
  readonly canUndo: boolean;
  readonly cautions: readonly string[];
  readonly children: ReactNode;
  /** The notebook, when something is in it. */
  readonly notes: ReactNode;
  readonly onChange: (index: number) => void;
  readonly onRemove: (index: number) => void;
  readonly onUndo: () => void;
  readonly onSaySound: () => void;
  readonly onReview: () => void;
}) {
  const { marks, canUndo, cautions, children, notes, onChange, onRemove, onUndo, onSaySound, onReview } =
    props;
  return (
    <div className={`stack ${styles.panel}`}>
      {children}
      <section className={styles.marks} aria-labelledby="marks-heading">
        <div className={styles.head}>
          <h2 id="marks-heading" tabIndex={-1}>
            Your marks
          </h2>
          {canUndo && (
            <button type="button" onClick={onUndo}>
              Undo
            </button>
          )}
        </div>
        {marks.length > 0 ? (
          <MarkList marks={marks} onChange={onChange} onRemove={onRemove} />
        ) : (
          <p>None yet. Pick a place on the wall that looks wrong to you. Some walls are sound.</p>
        )}
      </section>
      {notes}
      <div data-steps className={`stack tight ${styles.steps}`}>
        {marks.length === 0 && (
          <button type="button" className="button button-plain" onClick={onSaySound}>
            This wall is sound
          </button>
        )}
        <button type="button" className="button" onClick={onReview}>
          Check once more, then hand in
        </button>
      </div>
      <Caution lines={cautions} />
    </div>
  );
}
