'use client';

import { useId } from 'react';
import { RULE_SETS, type RuleSetId } from '../../../lib/limits/limit';
import { ruleSetTitle } from '../../../lib/limits/limits';
import styles from '../trade.module.css';

/** One of a list. */
export function ChoiceField<T extends string>(props: {
  readonly label: string;
  readonly value: T;
  readonly choices: readonly (readonly [value: T, label: string])[];
  readonly onChange: (value: T) => void;
}) {
  const { label, value, choices, onChange } = props;
  const id = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        onChange={(event) => {
          const chosen = choices.find(([each]) => each === event.target.value);
          if (chosen) onChange(chosen[0]);
        }}
      >
        {choices.map(([each, text]) => (
          <option key={each} value={each}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}

const RULES = RULE_SETS.map((rules) => [rules, ruleSetTitle(rules)] as const);

export function RulesField(props: {
  readonly value: RuleSetId;
  readonly onChange: (value: RuleSetId) => void;
}) {
  return <ChoiceField label="Judged by" choices={RULES} {...props} />;
}

export function TickField(props: {
  readonly label: string;
  readonly value: boolean;
  readonly onChange: (value: boolean) => void;
}) {
  return (
    <label className={styles.tick}>
      <input
        type="checkbox"
        checked={props.value}
        onChange={(event) => props.onChange(event.target.checked)}
      />
      {props.label}
    </label>
  );
}
