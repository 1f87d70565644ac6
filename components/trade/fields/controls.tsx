'use client';

import { useId } from 'react';
import { RULE_SETS } from '../../../lib/limits/limit';
import { ruleSetTitle } from '../../../lib/limits/limits';
import {
  fromSystem,
  inches,
  inSystem,
  type LengthSystem,
  type MetricUnit,
  MM_PER_M,
} from '../../../lib/units';
import { Options } from '../../ui/options';
import { formatNumber } from '../format-number';
import styles from '../trade.module.css';
import { LengthField } from './length-field';
import { NumberField } from './number-field';
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

/** Of a value taken over from the other system: no tool here reads finer. */
const DIGITS = 2;
const written = (value: number) => formatNumber(value, DIGITS);

/** A quantity other than a length, in metric units, shown and typed in the units that go with the reader's lengths. */
function QuantityField(props: {
  readonly label: string;
  readonly unit: MetricUnit;
  readonly system: LengthSystem;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  /** Of the metric unit, and of the one that goes with inches. */
  readonly steps: readonly [metric: number, customary: number];
  readonly onChange: (value: number) => void;
}) {
  const { label, unit, system, value, least, most, steps, onChange } = props;
  const shown = inSystem(value, unit, system);
  const step = steps[system === 'mm' ? 0 : 1];
  // Ends on whole steps, inside those of the metric unit.
  const end = (edge: number, round: (steps: number) => number) =>
    Number((round(Number((inSystem(edge, unit, system).value / step).toFixed(6))) * step).toFixed(6));
  return (
    <NumberField
      // What was typed in one unit is not left standing in the other.
      key={shown.unit}
      {...{ label, step, written }}
      unit={shown.unit}
      value={Number(shown.value.toFixed(6))}
      least={end(least, Math.ceil)}
      most={end(most, Math.floor)}
      spoken={`${written(shown.value)} ${shown.unit}`}
      onChange={(next) => onChange(fromSystem(next, unit, system))}
    />
  );
}
