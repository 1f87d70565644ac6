import type { Reading } from '../../lib/instruments/reading';
import type { LengthSystem } from '../../lib/units';
import { formatMeasure } from '../result/format-measure';

type Measured = Pick<Reading, 'value' | 'unit' | 'words' | 'error' | 'fine'>;

/** The reading as it is shown large: '9.8 mm', '3/8 in', '+2.3 mm per m', '2.7 to 1'; words where there is no number. */
export function formatReading({ value, unit, words, fine }: Measured, system: LengthSystem): string {
  if (value === null) return words ?? '';
  if (unit === 'volumes') return `${value} to 1`;
  if (unit === 'there or not') return words ?? formatMeasure(value, unit, system);
  const text = formatMeasure(Math.abs(value), unit, system, fine);
  const sign = value < 0 ? '−' : unit === 'mm per m' && value > 0 ? '+' : '';
  // Nothing by a tape's sixteenths leans no way.
  return text.startsWith('0 ') ? text : `${sign}${text}`;
}

/** What else belongs to it: how far it may be off, which way it points, and in inches the millimetres too. Empty where nothing does. */
export function formatRest({ value, unit, words, error, fine }: Measured, system: LengthSystem): string {
  if (value === null || unit === 'there or not') return '';
  const inMm = system === 'inches' && unit !== '%' ? exact(value, unit, fine) : null;
  const off = error > 0 ? `± ${upward(error, fine)}${system === 'inches' || unit !== 'mm' ? '' : ' mm'}` : '';
  const offText = inMm === null ? off : `${inMm}${off === '' ? '' : ` ${off}`}`;
  return [offText, words ?? ''].filter((text) => text !== '').join(', ');
}

/** Both, in one line for the notebook: '9.8 mm ± 0.2 mm', '3/8 in (9.8 mm ± 0.2)'. */
export function formatWhole(reading: Measured, system: LengthSystem): string {
  const rest = formatRest(reading, system);
  const read = formatReading(reading, system);
  if (rest === '') return read;
  return /^[−\d]/.test(rest) ? `${read} (${rest})` : `${read} ${rest}`;
}

/** The metric value beside the other; null for what has one unit only, or is too coarse. */
function exact(value: number, unit: string, fine: boolean): string | null {
  return unit === '°C' || (unit.startsWith('mm') && unit !== 'mm²')
    ? formatMeasure(value, unit, 'mm', fine)
    : null;
}

/** Rounded up, so that it is never promised closer than it is. */
function upward(error: number, fine: boolean): string {
  const steps = fine ? 100 : 10;
  return String(Math.ceil(error * steps - 1e-9) / steps);
}
