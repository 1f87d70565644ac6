'use client';

import { type FormEvent, useId, useState } from 'react';
import type { CheckId } from '../../lib/inspect/finding';
import type { Sure } from '../../lib/marking/mark';
import type { LengthSystem } from '../../lib/units';
import { ChoiceBar } from '../forms/choice-bar';
import { FaultChooser } from './fault-chooser';
import styles from './mark-form.module.css';
import type { NotedReading } from './notebook';
import { type FaultChoice, type PickedPart, placesFor, type Scope, scopeOf } from './part-facts';
import type { Mark } from './practice-state';
import { parseReading, readingText, readingUnit } from './reading-text';
import { NOTHING_SAID, type Said, SayMore } from './say-more';
import { SURE_WORDS } from './sure-words';

const SURE_OPTIONS = [
  { value: '1', label: SURE_WORDS[1] },
  { value: '2', label: SURE_WORDS[2] },
  { value: '3', label: SURE_WORDS[3] },
] as const;

/** 100 m in mm; a day has 1,440 minutes, and a share stops at 100 %. */
const MOST_READING = 100_000;

/** Names the fault at the part picked, and says more of it if the reader likes. Used for a new mark, and to change one (`before`). */
export function MarkForm(props: {
  readonly picked: PickedPart;
  readonly faults: readonly FaultChoice[];
  readonly find: (words: string) => readonly CheckId[];
  readonly before?: Mark | undefined;
  readonly system: LengthSystem;
  /** Name of the rule set in use. */
  readonly rules: string;
  readonly notebook: readonly NotedReading[];
  /** A reading the notebook hands over; each press hands a new object. */
  readonly attached: { readonly reading: NotedReading } | null;
  /** Takes the mark, or says in a sentence why it cannot. */
  readonly onMark: (mark: Mark) => string | null;
}) {
  const { picked, faults, find, before, system, rules, notebook, attached, onMark } = props;
  const [faultId, setFaultId] = useState<CheckId | null>(before?.fault ?? null);
  const [choosing, setChoosing] = useState(before === undefined);
  const [sure, setSure] = useState<Sure>(before?.sure ?? 2);
  const [placeId, setPlaceId] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [said, setSaid] = useState<Said>(() => saidBefore(before, faults, system));
  const [more, setMore] = useState(said.reading !== '' || said.kind !== null || said.act !== null);
  const [taken, setTaken] = useState<typeof attached>(null);
  const [typedIn, setTypedIn] = useState(system);
  const id = useId();
  const fault = faults.find((each) => each.id === faultId);
  const places = fault ? placesFor(fault, picked) : [];
  const place = places.find((each) => each.id === placeId) ?? places[0];

  // What was typed in one system of lengths is told in the other.
  if (typedIn !== system) {
    setTypedIn(system);
    const value = fault && parseReading(said.reading, fault.asks.unit, typedIn);
    if (fault && value !== undefined) {
      setSaid({ ...said, reading: readingText(value, fault.asks.unit, system) });
    }
  }
  // A reading handed over waits for a fault that is read in its unit.
  if (attached !== null && attached !== taken && fault) {
    const { value, unit } = attached.reading;
    setTaken(attached);
    setMore(true);
    if (value !== null && unit === fault.asks.unit) {
      setSaid({ ...said, reading: readingText(value, unit, system) });
      setProblem(null);
    } else
      setProblem(
        `That reading does not fit: ${fault.name} is read in ${readingUnit(fault.asks.unit, system)}.`,
      );
  }

  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!fault) return setProblem('Choose a fault from the list first.');
    if (!place) return setProblem(pickFirst(fault.scope));
    const reading = parseReading(said.reading, fault.asks.unit, system);
    if (said.reading.trim() !== '' && reading === undefined) {
      setMore(true);
      return setProblem(
        `“How much?” takes a number, like ${system === 'inches' ? '3/8 or 1 1/2' : '12 or 9.5'}.`,
      );
    }
    if (reading !== undefined && reading < 0) {
      setMore(true);
      return setProblem('“How much?” takes a number from 0 up. Leave the minus out.');
    }
    if (reading !== undefined && reading > MOST_READING) {
      setMore(true);
      return setProblem('“How much?” is more than any wall can have. Look at the unit behind the box.');
    }
    setProblem(
      onMark({
        ...{ part: place.id, fault: fault.id, sure },
        ...(reading === undefined ? {} : { reading }),
        ...(said.kind === null ? {} : { kind: said.kind }),
        ...(said.act === null ? {} : { act: said.act }),
      }),
    );
  };

  return (
    <form className={styles.form} onSubmit={submit}>
      <FaultChooser
        faults={faults}
        find={find}
        scope={scopeOf(picked.kind)}
        value={faultId}
        folded={fault !== undefined && !choosing}
        onFold={(folded) => setChoosing(!folded)}
        onChoose={(chosen) => {
          setFaultId(chosen);
          setPlaceId(null);
          setProblem(null);
          // A reading of one fault is no reading of another.
          setSaid({ ...said, reading: '' });
        }}
      />
      {fault && (
        <SayMore
          {...{ fault, said, system, rules, notebook }}
          open={more}
          onSay={setSaid}
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
        {fault && !place && <p className={styles.where}>{pickFirst(fault.scope)}</p>}
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

function saidBefore(before: Mark | undefined, faults: readonly FaultChoice[], system: LengthSystem): Said {
  const unit = faults.find(({ id }) => id === before?.fault)?.asks.unit;
  if (!before || unit === undefined) return NOTHING_SAID;
  const { reading, kind = null, act = null } = before;
  const text = unit === 'there or not' ? String(reading ?? '') : undefined;
  return { reading: text ?? (reading === undefined ? '' : readingText(reading, unit, system)), kind, act };
}

/** Where a fault cannot go on the part picked nor on anything near it. */
function pickFirst(scope: Scope): string {
  if (scope === 'course') return 'This goes on a whole course. Pick a unit of that course first.';
  return scope === 'joint'
    ? 'This goes on a joint. Pick the joint, or a unit beside it, first.'
    : 'This goes on one unit. Pick that unit first.';
}

const SURE_OF = { '1': 1, '2': 2, '3': 3 } as const satisfies Record<string, Sure>;

function sureValue(sure: Sure): keyof typeof SURE_OF {
  return sure === 1 ? '1' : sure === 2 ? '2' : '3';
}
