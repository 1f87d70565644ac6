'use client';

import { useId } from 'react';
import { RULE_SETS } from '../../../lib/limits/limit';
import { ruleSetTitle } from '../../../lib/limits/limits';
import { inches, type LengthSystem, MM_PER_M } from '../../../lib/units';
import { Options } from '../../ui/options';
import { formatNumber } from '../format-number';
import styles from '../trade.module.css';
import { LengthField } from './length-field';
import { NumberField } from './number-field';
import { QuantityField } from './quantity-field';
import type { Field, Given, Value } from './use-fields';

const RULES = RULE_SETS.map((rules) => [rules, ruleSetTitle(rules)] as const);
/** Slopes in inches are told over 10 ft: this many mm for each mm a metre. */
const OVER = inches(0, 10) / MM_PER_M;

/** A control for each field, in their order. */
export function Controls({ fields, values, system, change }: Given) {
  return Object.entries(fields).map(([name, field]) => (
    <Control
      key={name}
      {...{ field, system }}
      value={values[name] ?? ''}
      onChange={(value) => change({ [name]: value })}
    />
  ));
}

function Control(props: {
  readonly field: Field;
  readonly value: Value;
  readonly system: LengthSystem;
  readonly onChange: (value: Value) => void;
}) {
  const { field, value, system, onChange } = props;
  if (field === 'rules') return <Choice label="Checked against" choices={RULES} {...{ value, onChange }} />;
  if ('choices' in field) return <Choice {...field} {...{ value, onChange }} />;
  if (!('least' in field)) return <Tick label={field.label} {...{ value, onChange }} />;
  const { label, least, most, step } = field;
  const amount = { label, least, most, step, value: Number(value), onChange };
  if ('quantity' in field) {
    const steps = [step, field.otherStep ?? step] as const;
    return <QuantityField {...amount} {...{ steps, system }} unit={field.quantity} />;
  }
  if ('unit' in field) {
    return (
      <NumberField
        {...amount}
        unit={field.unit}
        onChange={(next) => onChange(field.whole ? Math.round(next) : next)}
      />
    );
  }
  if (!('slope' in field)) return <LengthField {...amount} system={system} />;
  if (system === 'mm')
    return <NumberField {...amount} unit="mm/m" written={(each) => formatNumber(each, 2)} />;
  return (
    <LengthField
      label={`${label}, in 10 ft`}
      {...{ system, value: amount.value * OVER, least: least * OVER, most: most * OVER, step }}
      onChange={(rise) => onChange(rise / OVER)}
    />
  );
}

function Choice(props: {
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly (readonly [value: string, label: string])[];
  readonly onChange: (value: string) => void;
}) {
  const { label, value, choices, onChange } = props;
  const id = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <select id={id} value={String(value)} onChange={(event) => onChange(event.target.value)}>
        <Options of={choices} />
      </select>
    </div>
  );
}

function Tick(props: {
  readonly label: string;
  readonly value: Value;
  readonly onChange: (value: boolean) => void;
}) {
  const { label, value, onChange } = props;
  return (
    <label className="tick">
      <input type="checkbox" checked={value === true} onChange={(event) => onChange(event.target.checked)} />
      {label}
    </label>
  );
}
