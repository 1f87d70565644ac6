'use client';

import styles from '../drills.module.css';

export interface ToFind {
  readonly number: number;
  readonly name: string;
  readonly looksLike: string;
  readonly whereToLook: string;
  /** Name of the part pointed to, or null. */
  readonly picked: string | null;
}

/** What is wrong is named; the reader points to where it is. */
export function GuidedFind(props: {
  readonly rows: readonly ToFind[];
  /** Number of the fault that is being looked for: what is picked on the wall goes to it. */
  readonly active: number;
  readonly onActive: (number: number) => void;
  readonly onCheck: () => void;
}) {
  const { rows, active, onActive, onCheck } = props;
  const open = rows.filter(({ picked }) => picked === null).length;
  return (
    <div className={`stack ${styles.half}`}>
      <p>
        {rows.length === 1 ? 'One fault is named.' : `${rows.length} faults are named.`} Find{' '}
        {rows.length === 1 ? 'it' : 'each'} on the wall and pick the place.
      </p>
      {rows.map(({ number, name, looksLike, whereToLook, picked }) => (
        <div key={number} className={styles.item} data-active={number === active}>
          <h3>
            <span className={styles.number}>{number}</span> {name}
          </h3>
          <p>{looksLike}</p>
          <p>
            <strong>Where to look:</strong> {whereToLook}
          </p>
          <p role="status">{picked === null ? 'Nothing picked yet.' : `Picked: ${picked}.`}</p>
          {rows.length > 1 && (
            <button type="button" aria-pressed={number === active} onClick={() => onActive(number)}>
              {number === active ? 'Looking for this one' : 'Look for this one'}
            </button>
          )}
        </div>
      ))}
      <p>
        <button type="button" className="button" onClick={onCheck}>
          {open === rows.length ? 'Show me' : 'Check'}
        </button>
      </p>
    </div>
  );
}
