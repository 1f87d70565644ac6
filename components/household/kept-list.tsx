import { useRef, useState } from 'react';
import type { Look } from '../../lib/household/look';
import { noteOf } from '../../lib/household/note';
import { DayWords } from './day-words';
import styles from './household.module.css';
import { hashOf } from './look-place';

/** The looks that are kept on this device: to be opened again or deleted. */
export function KeptList(props: {
  readonly looks: readonly Look[];
  readonly onRemove: (id: string) => void;
}) {
  const [asked, setAsked] = useState<string | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  return (
    <section>
      <h2 ref={heading} tabIndex={-1}>
        Kept on this device
      </h2>
      <ul className={styles.kept}>
        {props.looks.map((look) => (
          <li key={look.id}>
            <span>
              <strong>{look.name || 'Your wall'}</strong>, <DayWords at={look.begun} />
              <br />
              <span className="fine">{noteOf(look, 'mm').headline}</span>
            </span>
            <span className="row">
              <a className="chip" href={hashOf({ id: look.id, step: 'note' })}>
                Open
                <span className="visually-hidden">
                  {' '}
                  {look.name || 'your wall'} of <DayWords at={look.begun} />
                </span>
              </a>
              {asked === look.id ? (
                <button
                  type="button"
                  onClick={() => {
                    heading.current?.focus();
                    props.onRemove(look.id);
                  }}
                >
                  Yes, delete it
                </button>
              ) : (
                <button type="button" onClick={() => setAsked(look.id)}>
                  Delete
                </button>
              )}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
