'use client';

import { useId } from 'react';
import type { Reading } from '../../../lib/instruments/reading';
import { tellingFirst } from '../../../lib/instruments/telling-reading';
import { ACTS } from '../../../lib/marking/act';
import { LIMIT_KINDS } from '../../../lib/marking/five-marks';
import type { LengthSystem } from '../../../lib/units';
import type { FaultChoice } from '../../../lib/wall-page/fault-choices';
import { formatMeasure } from '../../result/format-measure';
import { ChoiceBar } from '../../ui/choice-bar';
import { ACT_WORDS, KIND_WORDS } from '../answer-words';
import { parseReading, readingText, readingUnit } from '../reading-text';
import { hasDetails, type MarkDetails, NO_DETAILS } from './mark-details';
import styles from './say-more.module.css';

const KIND_OPTIONS = LIMIT_KINDS.map((value) => ({ value, label: KIND_WORDS[value].label }));
const ACT_OPTIONS = ACTS.map((value) => ({ value, label: ACT_WORDS[value].label }));
const PRESENT_OPTIONS = [
  { value: '1', label: 'It is there' },
  { value: '0', label: 'It is not there' },
] as const;
/** Readings offered out of the notebook: those that answer for the fault first. */
const MOST_OFFERED = 4;

/** Folded until it is wanted: how much, which requirement, what to do. */
export function SayMore(props: {
  readonly fault: FaultChoice;
  readonly details: MarkDetails;
  readonly open: boolean;
  readonly system: LengthSystem;
  /** Name of the rule set in use. */
  readonly rules: string;
  readonly notebook: readonly Reading[];
  readonly onChange: (details: MarkDetails) => void;
  readonly onToggle: (open: boolean) => void;
}) {
  const { fault, details, open, system, rules, notebook, onChange, onToggle } = props;
  const { what, unit } = fault.asks;
  const id = useId();
  const readable = notebook.filter((each) => each.value !== null && each.unit === unit);
  const fitting = tellingFirst(fault.id, readable).slice(0, MOST_OFFERED);
  return (
    <details className={styles.more} open={open} onToggle={(event) => onToggle(event.currentTarget.open)}>
      <summary>
        Say more <span className={styles.given}>{givenWords(details, unit, system)}</span>
      </summary>
      <div className={`stack ${styles.parts}`}>
        {unit === 'there or not' ? (
          <ChoiceBar
            legend="How much?"
            options={PRESENT_OPTIONS}
            value={PRESENT_OPTIONS.find(({ value }) => value === details.reading)?.value ?? null}
            onChoose={(reading) => onChange({ ...details, reading })}
          />
        ) : (
          <div className="stack tight">
            <label htmlFor={`${id}-reading`}>
              <strong>How much?</strong> {what}
            </label>
            <span className={styles.box}>
              <input
                id={`${id}-reading`}
                inputMode={system === 'inches' ? 'text' : 'decimal'}
                autoComplete="off"
                value={details.reading}
                aria-describedby={`${id}-unit`}
                onChange={(event) => onChange({ ...details, reading: event.target.value })}
              />
              <span id={`${id}-unit`}>{readingUnit(unit, system)}</span>
            </span>
            {fitting.length > 0 && (
              <div className={`row ${styles.offers}`}>
                {fitting.map((each) => (
                  <button
                    key={`${each.part} ${each.instrument} ${each.what} ${each.turned}`}
                    type="button"
                    onClick={() =>
                      onChange({ ...details, reading: readingText(each.value ?? 0, unit, system) })
                    }
                  >
                    Use {formatMeasure(each.value ?? 0, unit, system, each.fine)}: {each.what.toLowerCase()}
                  </button>
                ))}
              </div>
            )}
          </div>
        )}
        <ChoiceBar
          legend={`Which requirement? Checked against ${rules}`}
          options={KIND_OPTIONS}
          value={details.kind}
          onChoose={(kind) => onChange({ ...details, kind })}
        />
        {details.kind && <p className={styles.means}>{KIND_WORDS[details.kind].means}</p>}
        <ChoiceBar
          legend="What to do?"
          options={ACT_OPTIONS}
          value={details.act}
          onChoose={(act) => onChange({ ...details, act })}
        />
        {details.act && <p className={styles.means}>{ACT_WORDS[details.act].means}</p>}
        {hasDetails(details) && (
          <button type="button" className={styles.clear} onClick={() => onChange(NO_DETAILS)}>
            Clear these three
          </button>
        )}
      </div>
    </details>
  );
}

/** Behind the folded line: what has been said, or what can be. */
function givenWords({ reading, kind, act }: MarkDetails, unit: string, system: LengthSystem): string {
  const present = PRESENT_OPTIONS.find(({ value }) => value === reading)?.label.toLowerCase();
  const value = parseReading(reading, unit, system);
  const read = value === undefined ? reading : formatMeasure(value, unit, system);
  const amount = unit === 'there or not' ? present : read;
  const given = [amount, kind, act].filter((each) => each);
  return given.length > 0 ? given.join(' · ') : '(if you like): how much, which requirement, what to do';
}
