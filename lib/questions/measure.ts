import type { Limit } from '../limits/limit';
import {
  formatLength,
  fromSystem,
  inches,
  inSystem,
  type LengthSystem,
  type MetricUnit,
  MM_PER_M,
  type Mm,
} from '../units';
import type { Ask } from './family';

const INCH = inches(1);

/** A length made round for whoever reads it: to whole mm, or to 1/16 in, 1/2 in from 200 mm, whole inches from 1 m. */
export function roundLength(mm: Mm, system: LengthSystem): Mm {
  if (system === 'mm') return Math.round(mm);
  const parts = mm >= 1000 ? 1 : mm >= 200 ? 2 : 16;
  return (Math.round((mm / INCH) * parts) / parts) * INCH;
}

/** A round length between two, mm. */
export function drawLength({ chance, system }: Ask, least: Mm, most: Mm): Mm {
  return roundLength(chance.whole(least, most), system);
}

/** One of a few lengths, made round, mm. */
export function pickLength({ chance, system }: Ask, from: readonly Mm[]): Mm {
  return roundLength(chance.pick(from), system);
}

/** Sizes that are usual in the reader's system, mm. */
export function usualLengths(
  { system }: Ask,
  millimetres: readonly Mm[],
  inch: readonly number[],
): readonly Mm[] {
  return system === 'mm' ? millimetres : inch.map((each) => inches(each));
}

export function inUnit(mm: Mm, system: LengthSystem): number {
  return system === 'mm' ? mm : mm / INCH;
}

/** One of a few values that are usual in the reader's unit, in the metric one. */
export function pickUsual(
  { chance, system }: Ask,
  unit: MetricUnit,
  metric: readonly number[],
  customary: readonly number[],
): number {
  return fromSystem(chance.pick(system === 'mm' ? metric : customary), unit, system);
}

/** "20 °C" or "68 °F": rounded for showing. */
export function formatQuantity(
  value: number,
  unit: MetricUnit,
  system: LengthSystem,
  decimals: number,
): string {
  const shown = inSystem(value, unit, system);
  return `${formatNumber(shown.value, decimals)} ${shown.unit}`;
}

/** "95 %", "12 mm" or "1/2 in": a value in the unit of a limit, for showing. */
export function formatValue(value: number, unit: Limit['unit'], system: LengthSystem): string {
  if (unit === 'mm') return formatLength(value, system);
  if (unit === 'mm²') return formatArea(value, system);
  if (unit === '°C') return formatQuantity(value, unit, system, system === 'mm' ? 1 : 0);
  if (unit === 'm' && system === 'inches') return `${formatNumber((value * MM_PER_M) / inches(0, 1), 1)} ft`;
  const rounded = Math.round(value * 100) / 100;
  return unit === 'times' ? `${rounded} times` : `${rounded} ${unit}`;
}

/** Square millimetres as mm², or as in² with one decimal. */
export function formatArea(mm2: number, system: LengthSystem): string {
  return system === 'mm' ? `${Math.round(mm2)} mm²` : `${Math.round((mm2 / INCH / INCH) * 10) / 10} in²`;
}

/** Rounded for showing: so many decimals, none that are zero. */
export function formatNumber(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  return String(Math.round(value * scale) / scale);
}
