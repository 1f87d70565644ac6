'use client';

import type { ReactNode } from 'react';
import type { PartKind } from '../../lib/wall/part-id';
import type { NamedPart, PickedPart } from '../../lib/wall-page/nearby-parts';
import styles from './part-card.module.css';

/** Parts that a tap may have been meant for instead, and how many of them are named at once. */
const BESIDE: readonly PartKind[] = ['unit', 'bed', 'head', 'tie'];
const MOST_BESIDE = 3;

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
  const beside = picked.nearby.filter(({ kind }) => BESIDE.includes(kind)).slice(0, MOST_BESIDE);
  const others = picked.nearby.filter((each) => !beside.includes(each));
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
      {beside.length > 0 && (
        <nav className={styles.beside} aria-label="Beside it">
          <NearbyList parts={beside} onPick={onPick} />
        </nav>
      )}
      <div className={styles.tools}>{tools}</div>
      {others.length > 0 && (
        <details className={styles.nearby}>
          <summary>Also here: joints, course, panel …</summary>
          <NearbyList parts={others} onPick={onPick} />
        </details>
      )}
      {children}
    </section>
  );
}

function NearbyList(props: {
  readonly parts: readonly NamedPart[];
  readonly onPick: (part: string) => void;
}) {
  return (
    <ul>
      {props.parts.map(({ id, name }) => (
        <li key={id}>
          <button type="button" onClick={() => props.onPick(id)}>
            {name}
          </button>
        </li>
      ))}
    </ul>
  );
}
