'use client';

import { type FormEvent, useId, useState } from 'react';
import type { CheckId } from '../../lib/inspect/finding';
import type { Sure } from '../../lib/marking/mark';
import { ChoiceBar } from '../forms/choice-bar';
import { FaultChooser } from './fault-chooser';
import styles from './mark-form.module.css';
import { type FaultChoice, type PickedPart, placesFor, scopeOf } from './part-facts';
import type { Mark } from './practice-state';
import { SURE_WORDS } from './sure-words';

const SURE_OPTIONS = [
  { value: '1', label: SURE_WORDS[1] },
  { value: '2', label: SURE_WORDS[2] },
  { value: '3', label: SURE_WORDS[3] },
] as const;

/** Names the fault at the part picked. Used for a new mark, and to change one (`before`). */
export function MarkForm(props: {
  readonly picked: PickedPart;
  readonly faults: readonly FaultChoice[];
  readonly find: (words: string) => readonly CheckId[];
  readonly before?: Mark | undefined;
  /** Takes the mark, or says in a sentence why it cannot. */
  readonly onMark: (mark: Mark) => string | null;
}) {
  const { picked, faults, find, before, onMark } = props;
  const [faultId, setFaultId] = useState<CheckId | null>(before?.fault ?? null);
  const [sure, setSure] = useState<Sure>(before?.sure ?? 2);
  const [placeId, setPlaceId] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const id = useId();
  const fault = faults.find((each) => each.id === faultId);
  const places = fault ? placesFor(fault, picked) : [];
  const place = places.find((each) => each.id === placeId) ?? places[0];

  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!fault || !place) setProblem('Choose a fault from the list first.');
    else setProblem(onMark({ part: place.id, fault: fault.id, sure }));
  };

  return (
    <form className={styles.form} onSubmit={submit}>
      <FaultChooser
        faults={faults}
        find={find}
        scope={scopeOf(picked.kind)}
        value={faultId}
        onChoose={(chosen) => {
          setFaultId(chosen);
          setPlaceId(null);
          setProblem(null);
        }}
      />
      <div className={styles.finish}>
        {fault && place && places.length === 1 && (
          <p className={styles.where}>
            <strong>{fault.name}</strong> on <strong>{place.name}</strong>
          </p>
        )}
        {fault && place && places.length > 1 && (
          <p className={styles.where}>
            <label htmlFor={`${id}-place`}>
              <strong>{fault.name}</strong> goes on one of these. Which one?
            </label>
            <select
              id={`${id}-place`}
              className={styles.places}
              value={place.id}
              onChange={(event) => setPlaceId(event.target.value)}
            >
              {places.map((each) => (
                <option key={each.id} value={each.id}>
                  {each.name}
                </option>
              ))}
            </select>
          </p>
        )}
        {fault && (
          <ChoiceBar
            legend="How sure?"
            options={SURE_OPTIONS}
            value={sureValue(sure)}
            onChoose={(value) => setSure(SURE_OF[value])}
          />
        )}
        <p className={styles.problem} role="alert">
          {problem}
        </p>
        <button type="submit" className={`button ${styles.mark}`}>
          {before ? 'Change the mark' : 'Mark it'}
        </button>
      </div>
    </form>
  );
}

const SURE_OF = { '1': 1, '2': 2, '3': 3 } as const satisfies Record<string, Sure>;

function sureValue(sure: Sure): keyof typeof SURE_OF {
  return sure === 1 ? '1' : sure === 2 ? '2' : '3';
}
