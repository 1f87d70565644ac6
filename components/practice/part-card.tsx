'use client';

import type { ReactNode } from 'react';
import styles from './part-card.module.css';
import type { PickedPart } from './part-facts';

/** The part picked: its name, what can be done there, and what else is at this place. On a phone it lies at the thumb. */
export function PartCard(props: {
  readonly picked: PickedPart;
  /** Before the name: what is being done here, when it is not a new mark. */
  readonly title?: string | undefined;
  readonly tools?: ReactNode;
  readonly onPick: (part: string) => void;
  readonly onClose: () => void;
  readonly children: ReactNode;
}) {
  const { picked, title, tools, onPick, onClose, children } = props;
  return (
    <section
      className={styles.card}
      aria-labelledby="picked-name"
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
      }}
    >
      <div className={styles.head}>
        <h2 id="picked-name" tabIndex={-1}>
          {title && <span className={styles.title}>{title} </span>}
          {picked.name}
        </h2>
        <button type="button" className={styles.close} onClick={onClose}>
          Close
        </button>
      </div>
      <div className={styles.tools}>{tools}</div>
      {picked.nearby.length > 0 && (
        <details className={styles.nearby}>
          <summary>Also here: joints, course, panel …</summary>
          <ul>
            {picked.nearby.map(({ id, name }) => (
              <li key={id}>
                <button type="button" onClick={() => onPick(id)}>
                  {name}
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
      {children}
    </section>
  );
}
