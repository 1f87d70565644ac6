'use client';

import { useState } from 'react';
import type { BuildVerdict, Compared } from '../../../lib/drills/build/build-measures';
import type { LengthSystem } from '../../../lib/units';
import { LengthField } from '../../trade/fields/length-field';
import { NumberField } from '../../trade/fields/number-field';
import styles from './build.module.css';
import { ComparedList, VerdictLine } from './build-verdict';

/** One departure: its slider, how it stands by the rules in use, and by the others when asked. */
export function BuildSlider(props: {
  readonly name: string;
  readonly unit: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly system: LengthSystem;
  readonly verdicts: readonly BuildVerdict[];
  /** Why a wall like that would not stay up, or null. */
  readonly refusal: string | null;
  /** What every rule set says; null while that is on its way. */
  readonly compare: () => readonly Compared[] | null;
  readonly onChange: (value: number) => void;
  readonly onLook: () => void;
}) {
  const { name, unit, value, least, most, step, system, verdicts, refusal, compare, onChange, onLook } =
    props;
  const [asked, setAsked] = useState(false);
  const field = { label: name, value, least, most, step, onChange };
  const [first] = verdicts;
  const compared = asked ? compare() : [];
  return (
    <div className={styles.slider} data-beyond={verdicts.some(({ passes }) => !passes)}>
      {unit.startsWith('mm') ? (
        <LengthField {...field} system={system} />
      ) : (
        <NumberField {...field} unit={unit === 'volumes' ? 'to 1' : unit} />
      )}
      {refusal && (
        <p className={styles.refusal} role="alert">
          ⚠ {refusal} The wall is shown as it last stood.
        </p>
      )}
      {verdicts.length === 0 && <p>As drawn.</p>}
      {verdicts.map((verdict) => (
        <VerdictLine key={verdict.limit} verdict={verdict} system={system} />
      ))}
      {first && (
        <p className={styles.source}>
          {first.kind !== 'good practice' && `${first.kind} · `}
          {first.source}
        </p>
      )}
      <div className={styles.more}>
        <button type="button" aria-label={`Look at it: ${name}`} onClick={onLook}>
          Look at it
        </button>
        <details onToggle={(event) => setAsked(event.currentTarget.open)}>
          <summary>
            All rule sets<span className="visually-hidden">: {name}</span>
          </summary>
          {compared === null && <p>One moment …</p>}
          {asked && compared && <ComparedList rows={compared} system={system} />}
        </details>
      </div>
    </div>
  );
}
