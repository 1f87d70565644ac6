'use client';

import { useId, useRef, useState } from 'react';
import { INSTRUMENT } from '../../lib/instruments/instrument-list';
import type { Reading } from '../../lib/instruments/reading';
import type { LengthSystem } from '../../lib/units';
import { formatWhole } from './format-reading';
import styles from './notebook.module.css';

/** What was read, where and how much. One note is picked at a time; the buttons below work on it, so that the keyboard has three stops and not thirty. */
export function Notebook(props: {
  readonly notebook: readonly Reading[];
  /** What a reader calls a part. */
  readonly nameOf: (part: string) => string;
  readonly onForget: (index: number) => void;
  /** Puts the reading to a mark; left out where there is none to put it to. */
  readonly onAttach?: ((reading: Reading) => void) | undefined;
  readonly system: LengthSystem;
}) {
  const { notebook, nameOf, onForget, onAttach, system } = props;
  const [picked, setPicked] = useState(0);
  const heading = useRef<HTMLHeadingElement>(null);
  const name = useId();
  // The latest note stands first; with one forgotten the next takes its place.
  const at = Math.min(picked, notebook.length - 1);
  const index = notebook.length - 1 - at;
  const reading = notebook[index];
  return (
    <section className={styles.notebook} aria-labelledby={`${name}-title`}>
      <h3 id={`${name}-title`} ref={heading} tabIndex={-1}>
        Notebook{notebook.length > 0 && `: ${notebook.length}`}
      </h3>
      {reading === undefined ? (
        <p className={styles.empty}>Nothing noted yet. Read an instrument, then press “Note it”.</p>
      ) : (
        <>
          <fieldset className={styles.notes}>
            <legend className="visually-hidden">Readings, the latest first</legend>
            {notebook.toReversed().map((each, place) => (
              <label key={`${each.instrument} ${each.part} ${each.what} ${each.turned}`}>
                <input type="radio" name={name} checked={place === at} onChange={() => setPicked(place)} />
                <span className={styles.words}>
                  <strong>{formatWhole(each, system)}</strong> <span>{each.what}</span>{' '}
                  <span className={`${styles.where} fine`}>
                    {nameOf(each.part)} · {INSTRUMENT[each.instrument].name}
                  </span>
                </span>
              </label>
            ))}
          </fieldset>
          <div className={`${styles.tools} row`}>
            {onAttach && (
              <button type="button" disabled={reading.value === null} onClick={() => onAttach(reading)}>
                Use it for my mark
              </button>
            )}
            <button
              type="button"
              onClick={() => {
                onForget(index);
                // The last note takes its buttons with it.
                if (notebook.length === 1) heading.current?.focus();
              }}
            >
              Forget it
            </button>
          </div>
        </>
      )}
    </section>
  );
}
