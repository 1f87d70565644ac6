'use client';

import { type FormEvent, useState } from 'react';
import { ChoiceBar } from '../../ui/choice-bar';
import styles from '../drills.module.css';

export interface ToName {
  readonly number: number;
  readonly place: string;
  readonly names: readonly { readonly id: string; readonly name: string }[];
}

/** Places are ringed on the wall; the reader says what is wrong at each. */
export function GuidedName(props: {
  readonly rows: readonly ToName[];
  readonly onShow: (number: number) => void;
  readonly onCheck: (named: readonly (string | null)[]) => void;
}) {
  const { rows, onShow, onCheck } = props;
  const [named, setNamed] = useState<readonly (string | null)[]>(rows.map(() => null));
  const [asked, setAsked] = useState(false);
  const open = named.filter((each) => each === null).length;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (open > 0) setAsked(true);
    else onCheck(named);
  };
  return (
    <form onSubmit={submit} className={`stack ${styles.half}`}>
      <p>
        {rows.length === 1 ? 'One place is ringed.' : `${rows.length} places are ringed.`} Look closely, and
        say what is wrong there.
      </p>
      {rows.map(({ number, place, names }, index) => (
        <div key={number} className={styles.item}>
          <p>
            <span className={styles.number}>{number}</span> {place}{' '}
            <button
              type="button"
              aria-label={`Show it on the wall: ${number}`}
              onClick={() => onShow(number)}
            >
              Show it on the wall
            </button>
          </p>
          <ChoiceBar
            legend={`What is wrong at ${number}?`}
            options={names.map(({ id, name }) => ({ value: id, label: name }))}
            value={named[index] ?? null}
            onChoose={(id) => setNamed(named.map((each, at) => (at === index ? id : each)))}
          />
        </div>
      ))}
      <p role="alert" className="problem">
        {asked && open > 0 ? 'Choose a name for each ring first.' : ''}
      </p>
      <p>
        <button type="submit" className="button">
          Check
        </button>
      </p>
    </form>
  );
}
