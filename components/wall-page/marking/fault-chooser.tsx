'use client';

import { useEffect, useId, useRef } from 'react';
import type { CheckId } from '../../../lib/inspect/finding';
import type { PartKind } from '../../../lib/wall/part-id';
import type { FaultChoice } from '../../../lib/wall-page/fault-choices';
import styles from './fault-chooser.module.css';

const KIND_WORDS: Readonly<Record<PartKind, string>> = {
  unit: 'a unit',
  bed: 'a bed joint',
  head: 'a head joint',
  course: 'a course',
  panel: 'a whole panel',
  corner: 'a corner',
  edge: 'an end',
  support: 'a support',
  opening: 'an opening',
  tie: 'a tie',
  batch: 'a mixing',
};

/** The faults that can be here, by family; those of the part picked come first. Typing narrows the list. */
export function FaultChooser(props: {
  readonly faults: readonly FaultChoice[];
  /** Faults that answer to plain or trade words, the best first. */
  readonly find: (words: string) => readonly CheckId[];
  /** The kind of the part picked. */
  readonly kind: PartKind;
  readonly value: CheckId | null;
  /** What is typed to narrow it. */
  readonly words: string;
  /** Only the fault chosen is shown. */
  readonly folded: boolean;
  readonly onFold: (folded: boolean) => void;
  readonly onWords: (words: string) => void;
  readonly onChoose: (fault: CheckId) => void;
}) {
  const { faults, find, kind, value, words, folded, onFold, onWords, onChoose } = props;
  const id = useId();
  const asked = words.trim() !== '';
  const shown = asked
    ? find(words).flatMap((check) => faults.find((fault) => fault.id === check) ?? [])
    : faults;
  const chosen = faults.find((fault) => fault.id === value);
  const wasFolded = useRef(folded);
  const justFolded = folded && !wasFolded.current;
  useEffect(() => {
    wasFolded.current = folded;
  }, [folded]);
  if (folded && chosen)
    return <ChosenFault fault={chosen} takesFocus={justFolded} onUnfold={() => onFold(false)} />;
  const groups = asked ? [{ title: 'Best answers first', faults: shown }] : groupsOf(faults, kind);
  return (
    <fieldset className={styles.chooser}>
      <legend className={styles.legend}>What is wrong here?</legend>
      <label className={`stack tight ${styles.filter}`}>
        <span>Type a word, plain or of the trade, to shorten the list</span>
        <input
          type="search"
          value={words}
          autoComplete="off"
          aria-describedby={`${id}-count`}
          onChange={(event) => onWords(event.target.value)}
          onKeyDown={(event) => {
            // Enter would send the form with whatever was chosen before.
            if (event.key === 'Enter') event.preventDefault();
          }}
        />
      </label>
      <p id={`${id}-count`} className={styles.count} role="status">
        {shown.length === 0
          ? 'No fault that can be here has that word. Try another, or clear the box.'
          : `${shown.length} of ${faults.length} faults`}
      </p>
      <div className={styles.list}>
        {shown.length > 0 &&
          groups.map(({ title, faults: members }) => (
            <fieldset key={title} className={styles.family}>
              <legend>{title}</legend>
              {members.map((fault) => (
                <div key={fault.id}>
                  <label className={styles.fault}>
                    <input
                      type="radio"
                      name={id}
                      value={fault.id}
                      checked={fault.id === value}
                      aria-describedby={fault.id === value ? `${id}-looks` : undefined}
                      onChange={() => onChoose(fault.id)}
                      // A press of the pointer settles it. The arrow keys only move along: their click has a count of 0.
                      onClick={(event) => event.detail > 0 && onFold(true)}
                    />
                    <span>{fault.name}</span>
                  </label>
                  {fault.id === value && (
                    <p id={`${id}-looks`} className={styles.looks}>
                      {fault.looksLike} <em>Where to look:</em> {fault.whereToLook}
                    </p>
                  )}
                </div>
              ))}
            </fieldset>
          ))}
      </div>
    </fieldset>
  );
}

/** The list folded to the fault chosen: the form stays short. */
function ChosenFault(props: {
  readonly fault: FaultChoice;
  /** The list that had the focus has just gone. */
  readonly takesFocus: boolean;
  readonly onUnfold: () => void;
}) {
  const { fault, takesFocus, onUnfold } = props;
  const again = useRef<HTMLButtonElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only when it comes up
  useEffect(() => {
    if (takesFocus) again.current?.focus({ preventScroll: true });
  }, []);
  return (
    <section className={styles.chosen} aria-label="What is wrong here">
      <p className={styles.looks}>
        <strong>{fault.name}.</strong> {fault.looksLike} <em>Where to look:</em> {fault.whereToLook}
      </p>
      <button type="button" ref={again} onClick={onUnfold}>
        Choose another fault
      </button>
    </section>
  );
}

interface Group {
  readonly title: string;
  readonly faults: readonly FaultChoice[];
}

function groupsOf(faults: readonly FaultChoice[], kind: PartKind): readonly Group[] {
  const fitting = faults.filter(({ markedOn }) => markedOn.includes(kind));
  const others = faults.filter(({ markedOn }) => !markedOn.includes(kind));
  const families = [...new Set(others.map(({ family }) => family))];
  return [
    { title: `Marked on ${KIND_WORDS[kind]}`, faults: fitting },
    ...families.map((family) => ({
      title: family,
      faults: others.filter((fault) => fault.family === family),
    })),
  ].filter((group) => group.faults.length > 0);
}
