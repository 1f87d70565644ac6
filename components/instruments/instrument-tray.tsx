'use client';

import { useId, useState } from 'react';
import { INSTRUMENTS, type InstrumentId } from '../../lib/instruments/instrument';
import { INSTRUMENT, instrumentsFor } from '../../lib/instruments/instrument-list';
import type { Reading } from '../../lib/instruments/reading';
import type { LengthSystem } from '../../lib/units';
import type { PartKind } from '../../lib/wall/part-id';
import { AskedNotice } from '../asked/asked-notice';
import type { AskedOfSite } from '../asked/asked-of-site';
import { useAsked } from '../asked/use-asked';
import { Options } from '../ui/options';
import { formatReading, formatRest } from './format-reading';
import { InstrumentPicture } from './instrument-picture';
import styles from './instrument-tray.module.css';
import { whyNot } from './instrument-words';

/** How an instrument is held: the level turned end for end, and the first of two points (a part's id). */
export interface Turn {
  readonly turned: boolean;
  readonly from: string | null;
}

/** How the site is asked what an instrument reads. */
export function readingQuestion(used: InstrumentId, part: string, turn: Turn): string {
  return JSON.stringify({ used, part, ...turn });
}

/**
 * Chooses an instrument, holds it to the part picked, and notes what it reads. Keep it in place while parts are picked, with the same key: the
 * instrument and the first of two points stay in hand.
 */
export function InstrumentTray(props: {
  readonly part: string;
  readonly partKind: PartKind;
  readonly partName: string;
  /** Reads here, or is asked of the site by `readingQuestion`. */
  readonly read:
    | ((instrument: InstrumentId, turn: Turn) => readonly Reading[])
    | AskedOfSite<readonly Reading[]>;
  readonly notebook: readonly Reading[];
  readonly onNote: (reading: Reading) => void;
  readonly system: LengthSystem;
}) {
  const { part, partKind, partName, read, notebook, onNote, system } = props;
  const [chosen, setChosen] = useState<{ readonly id: InstrumentId; readonly on: PartKind } | null>(null);
  const [turned, setTurned] = useState(false);
  const [start, setStart] = useState<{ readonly part: string; readonly name: string } | null>(null);
  const [what, setWhat] = useState<string | null>(null);
  const { fits, others } = instrumentsFor(partKind);
  // What is in the hand stays there while it fits. Chosen here although it does not, it says why; elsewhere the likeliest takes its place.
  const keeps = chosen !== null && (chosen.on === partKind || fits.includes(INSTRUMENT[chosen.id]));
  const id = keeps ? chosen.id : (fits[0]?.id ?? INSTRUMENTS[0]);
  const instrument = INSTRUMENT[id];
  const takesTwo = instrument.between.includes(partKind);
  const from = takesTwo && start !== null && start.part !== part ? start : null;
  const turn = { turned: id === 'spirit-level' && turned, from: from?.part ?? null };
  const isHere = typeof read === 'function';
  // What does not fit is not held to the part.
  const fitting = (from === null ? instrument.on : instrument.between).includes(partKind);
  const asked = useAsked(isHere ? null : read, isHere || !fitting ? null : readingQuestion(id, part, turn));
  const isMissing = !isHere && fitting && asked.answer === null;
  const readings = isHere ? read(id, turn) : (asked.answer ?? []);
  const reading = readings.find((each) => each.what === what) ?? readings[0] ?? null;
  const noted =
    reading === null
      ? null
      : from === null
        ? reading
        : { ...reading, what: `${reading.what}, from ${from.name}` };
  const isNoted = noted !== null && notebook.some((each) => isSame(each, noted));

  return (
    <section className={`stack ${styles.tray}`} aria-label="Instruments">
      <Choice {...{ id, fits, others }} onChoose={(next) => setChosen({ id: next, on: partKind })} />
      <div className={`stack tight ${styles.shown}`}>
        <InstrumentPicture instrument={id} {...{ reading, system }} />
        <output className={styles.value} aria-label="Reading" aria-live="polite">
          {isMissing ? (
            <AskedNotice what="This reading" failed={asked.failed} onAgain={asked.again} />
          ) : reading === null ? (
            <span className={styles.what}>{whyNot(instrument, partKind)}</span>
          ) : (
            <>
              <span className={`${styles.what} fine`}>
                {reading.what}
                {from && `, from ${from.name}`}
              </span>
              <strong>{formatReading(reading, system)}</strong>
              <span>{formatRest(reading, system)}</span>
            </>
          )}
        </output>
      </div>
      {readings.length > 1 && <ReadingList {...{ readings, reading, system }} onChoose={setWhat} />}
      <div className="row">
        {noted !== null && (
          <button
            type="button"
            className={styles.note}
            aria-disabled={isNoted}
            onClick={() => {
              if (!isNoted) onNote(noted);
            }}
          >
            {isNoted ? 'In your notebook' : 'Note it'}
          </button>
        )}
        {id === 'spirit-level' && readings.length > 0 && (
          <button type="button" aria-pressed={turned} onClick={() => setTurned(!turned)}>
            Turned end for end
          </button>
        )}
        {takesTwo && (
          <button type="button" onClick={() => setStart(start === null ? { part, name: partName } : null)}>
            {start === null ? 'Measure from here' : 'Let go of the first point'}
          </button>
        )}
      </div>
      {takesTwo && start !== null && (
        <p className={`${styles.hint} fine`} role="status">
          From: {start.name}. {from === null && 'Now pick another part on the wall.'}
        </p>
      )}
      <p className={`${styles.hint} fine`}>{instrument.lies}</p>
    </section>
  );
}

function Choice(props: {
  readonly id: InstrumentId;
  readonly fits: ReturnType<typeof instrumentsFor>['fits'];
  readonly others: ReturnType<typeof instrumentsFor>['others'];
  readonly onChoose: (id: InstrumentId) => void;
}) {
  const { id, fits, others, onChoose } = props;
  const name = useId();
  const named = (list: typeof fits) => list.map((each) => [each.id, each.name] as const);
  return (
    <p className={styles.choice}>
      <label htmlFor={name}>Instrument</label>
      <select
        id={name}
        value={id}
        onChange={({ target }) => {
          const next = INSTRUMENTS.find((each) => each === target.value);
          if (next) onChoose(next);
        }}
      >
        <optgroup label="Read here">
          <Options of={named(fits)} />
        </optgroup>
        <optgroup label="Not on this part">
          <Options of={named(others)} />
        </optgroup>
      </select>
    </p>
  );
}

/** What else the instrument reads here: one stop of the keyboard, arrows move. The one chosen is shown large. */
function ReadingList(props: {
  readonly readings: readonly Reading[];
  readonly reading: Reading | null;
  readonly system: LengthSystem;
  readonly onChoose: (what: string) => void;
}) {
  const { readings, reading, system, onChoose } = props;
  const name = useId();
  return (
    <fieldset className={`stack tight ${styles.list}`}>
      <legend className="fine">It reads here</legend>
      {readings.map((each) => (
        <label key={each.what}>
          <input
            type="radio"
            name={name}
            value={each.what}
            checked={each.what === reading?.what}
            onChange={() => onChoose(each.what)}
          />
          <span>{each.what}</span> <strong>{formatReading(each, system)}</strong>
        </label>
      ))}
    </fieldset>
  );
}

function isSame(a: Reading, b: Reading): boolean {
  return a.instrument === b.instrument && a.part === b.part && a.what === b.what && a.turned === b.turned;
}
