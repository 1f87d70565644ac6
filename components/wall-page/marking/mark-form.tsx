'use client';

import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import type { CheckId } from '../../../lib/inspect/finding';
import type { Reading } from '../../../lib/instruments/reading';
import type { Sure } from '../../../lib/marking/mark';
import type { LengthSystem } from '../../../lib/units';
import type { FaultChoice } from '../../../lib/wall-page/fault-choices';
import type { PickedPart } from '../../../lib/wall-page/nearby-parts';
import { ChoiceBar } from '../../ui/choice-bar';
import { SURE_WORDS } from '../answer-words';
import { faultsAt, placesFor } from '../faults-at';
import { readingText, readingUnit } from '../reading-text';
import type { HalfMark, Mark } from '../work-state';
import { FaultChooser } from './fault-chooser';
import { halfFrom, inLengths, markFrom } from './half-mark';
import { hasDetails } from './mark-details';
import styles from './mark-form.module.css';
import { SayMore } from './say-more';

const SURE_OPTIONS = [
  { value: '1', label: SURE_WORDS[1] },
  { value: '2', label: SURE_WORDS[2] },
  { value: '3', label: SURE_WORDS[3] },
] as const;

/** Names the fault at the part picked, and says more of it if the reader likes. Used for a new mark, and to change one (`before`). */
export function MarkForm(props: {
  readonly picked: PickedPart;
  readonly faults: readonly FaultChoice[];
  readonly find: (words: string) => readonly CheckId[];
  readonly before?: Mark | undefined;
  /** What the form held here before the page was loaded again, or the reader looked elsewhere. */
  readonly kept?: HalfMark | null;
  readonly system: LengthSystem;
  /** Name of the rule set in use. */
  readonly rules: string;
  readonly notebook: readonly Reading[];
  /** A reading the notebook hands over; each press hands a new object. */
  readonly attached: { readonly reading: Reading } | null;
  /** Called with what the form holds, each time it changes. */
  readonly onFill: (half: HalfMark) => void;
  /** Takes the mark, or says in a sentence why it cannot. */
  readonly onMark: (mark: Mark) => string | null;
}) {
  const { picked, find, before, kept, system, rules, notebook, attached, onFill, onMark } = props;
  const faults = faultsAt(props.faults, picked);
  const [half, setHalf] = useState(() => kept ?? halfFrom(before, faults, system));
  const [choosing, setChoosing] = useState(half.fault === null);
  const [problem, setProblem] = useState<string | null>(null);
  const [more, setMore] = useState(hasDetails(half.details));
  const [taken, setTaken] = useState<typeof attached>(null);
  const told = useRef(half);
  const id = useId();
  const { sure, details } = half;
  const fault = faults.find((each) => each.id === half.fault);
  const places = fault ? placesFor(fault, picked) : [];
  const place = places.find((each) => each.id === half.place) ?? places[0];
  const fill = (changes: Partial<HalfMark>) => setHalf({ ...half, ...changes });

  useEffect(() => {
    if (told.current === half) return;
    told.current = half;
    onFill(half);
  }, [half, onFill]);

  // What was typed in one system of lengths is shown in the other.
  if (half.system !== system) setHalf(inLengths(half, fault, system));
  // A reading handed over waits for a fault that is read in its unit.
  if (attached !== null && attached !== taken && fault) {
    const { value, unit } = attached.reading;
    setTaken(attached);
    setMore(true);
    if (value !== null && unit === fault.asks.unit) {
      fill({ details: { ...details, reading: readingText(value, unit, system) }, system });
      setProblem(null);
    } else
      setProblem(
        `That reading does not fit: ${fault.name} is read in ${readingUnit(fault.asks.unit, system)}.`,
      );
  }

  /** The place a fault goes on until the reader says otherwise: kept, so that a reload does not move it. */
  const nearestFor = (chosen: CheckId) => {
    const choice = faults.find(({ id: each }) => each === chosen);
    return (choice && placesFor(choice, picked)[0]?.id) ?? null;
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!fault || !place) return setProblem('Choose a fault from the list first.');
    const made = markFrom(half, fault, place.id);
    if (typeof made === 'string') {
      setMore(true);
      return setProblem(made);
    }
    setProblem(onMark(made));
  };

  return (
    <form className={styles.form} onSubmit={submit}>
      <FaultChooser
        faults={faults}
        find={find}
        kind={picked.kind}
        value={half.fault}
        words={half.words}
        folded={fault !== undefined && !choosing}
        onFold={(folded) => setChoosing(!folded)}
        onWords={(words) => fill({ words })}
        onChoose={(chosen) => {
          setProblem(null);
          // A reading of one fault is no reading of another.
          fill({ fault: chosen, place: nearestFor(chosen), details: { ...details, reading: '' } });
        }}
      />
      {fault && (
        <SayMore
          {...{ fault, details, system, rules, notebook }}
          open={more}
          onChange={(next) => fill({ details: next })}
          onToggle={setMore}
        />
      )}
      <div className={styles.finish} data-at-thumb={fault !== undefined && !more}>
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
              onChange={(event) => fill({ place: event.target.value })}
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
            onChoose={(value) => fill({ sure: SURE_OF[value] })}
          />
        )}
        <p className="problem" role="alert">
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
