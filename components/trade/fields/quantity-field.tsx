'use client';

import { fromSystem, inSystem, type LengthSystem, type MetricUnit } from '../../../lib/units';
import { formatNumber } from '../format-number';
import { NumberField } from './number-field';

/** Of a value taken over from the other system: no tool here reads finer. */
const DIGITS = 2;
const written = (value: number) => formatNumber(value, DIGITS);

/** A quantity other than a length, in metric units, shown and typed in the units that go with the reader's lengths. */
export function QuantityField(props: {
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
