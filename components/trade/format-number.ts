import { inSystem, type LengthSystem, type MetricUnit } from '../../lib/units';

/** A number to so many places behind the point, without idle zeros; a true minus sign. */
export function formatNumber(value: number, digits = 1): string {
  const text = String(Number(Math.abs(value).toFixed(digits)));
  return value < 0 && text !== '0' ? `−${text}` : text;
}

/** '1.23 kN' to so many places, or to three figures in the unit that goes with inches: '277 lbf'. */
export function formatQuantity(value: number, unit: MetricUnit, system: LengthSystem, digits = 1): string {
  const shown = inSystem(value, unit, system);
  const text =
    system === 'mm' ? formatNumber(shown.value, digits) : formatNumber(Number(shown.value.toPrecision(3)), 6);
  return `${text} ${shown.unit}`;
}
