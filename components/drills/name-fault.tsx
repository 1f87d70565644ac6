'use client';

import { type FormEvent, useId, useState } from 'react';
import type { CheckId } from '../../lib/inspect/finding';
import type { FaultChoice } from '../../lib/wall-page/fault-choices';
import type { PickedPart } from '../../lib/wall-page/nearby-parts';
import form from '../ui/form.module.css';
import { Options } from '../ui/options';
import { faultsAt, placesFor } from '../wall-page/faults-at';
import styles from './name-fault.module.css';

/** Names the fault at the part picked: one list of all faults, by family, in the browser's own control. */
export function NameFault(props: {
  readonly picked: PickedPart;
  readonly faults: readonly FaultChoice[];
  readonly onMark: (part: string, fault: CheckId) => void;
}) {
  const { picked, onMark } = props;
  const faults = faultsAt(props.faults, picked);
  const [fault, setFault] = useState('');
  const [place, setPlace] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const id = useId();
  const chosen = faults.find((each) => each.id === fault);
  const places = chosen ? placesFor(chosen, picked) : [];
  const at = places.find((each) => each.id === place) ?? places[0];
  const families = [...new Set(faults.map(({ family }) => family))];

  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!chosen || !at) setProblem('Choose a fault from the list first.');
    else onMark(at.id, chosen.id);
  };

  return (
    <form onSubmit={submit} className={styles.form} aria-label={`What is wrong: ${picked.name}`}>
      <p>
        Picked: <strong>{picked.name}</strong>
      </p>
      <p className={form.field}>
        <label htmlFor={`${id}-fault`}>What is wrong there?</label>
        <select
          id={`${id}-fault`}
          value={fault}
          onChange={(event) => {
            setFault(event.target.value);
            setProblem(null);
          }}
        >
          <option value="">Choose …</option>
          {families.map((family) => (
            <optgroup key={family} label={family}>
              <Options
                of={faults.filter((each) => each.family === family).map((each) => [each.id, each.name])}
              />
            </optgroup>
          ))}
        </select>
      </p>
      {places.length > 1 && at && (
        <p className={form.field}>
          <label htmlFor={`${id}-place`}>Which one?</label>
          <select id={`${id}-place`} value={at.id} onChange={(event) => setPlace(event.target.value)}>
            <Options of={places.map((each) => [each.id, each.name])} />
          </select>
        </p>
      )}
      {at && at.id !== picked.id && places.length === 1 && (
        <p>
          This goes on <strong>{at.name}</strong>.
        </p>
      )}
      <p className="problem" role="alert">
        {problem}
      </p>
      <p>
        <button type="submit" className="button">
          Mark it
        </button>
      </p>
    </form>
  );
}
