import {
  formatInches,
  formatMm,
  inches,
  inSystem,
  type LengthSystem,
  type MetricUnit,
  MM_PER_M,
  type Mm,
  squareFeet,
} from '../units';
import type { Limit } from './limit';

/** Sheet metal and wire are read with a caliper, not with a tape: below this a length that is no sixteenth shows more places. */
const CALIPER_BELOW: Mm = 5;
const SIXTEENTH: Mm = inches(1 / 16);
const SQUARE_METRE = 1_000_000;
/** Areas from here up are of walls, not of units: in m² and square feet. */
const WALL_AREA = 100_000;
const STRENGTH_STEP = 50;

/** An amount in both systems, `first` before the other: "15 mm (9/16 in)". One text where both use the same unit: "95 %". */
export function formatAmount(value: number, unit: Limit['unit'], first: LengthSystem): string {
  const metric = formatIn(value, unit, 'mm');
  const american = formatIn(value, unit, 'inches');
  if (metric === american) return metric;
  return first === 'mm' ? `${metric} (${american})` : `${american} (${metric})`;
}

function formatIn(value: number, unit: Limit['unit'], system: LengthSystem): string {
  const inInches = system === 'inches';
  switch (unit) {
    case 'mm':
      return formatFineLength(value, system);
    case 'm':
      return inInches ? formatInches(value * MM_PER_M) : `${places(value, 2)} m`;
    case 'mm per m':
      return inInches
        ? `${formatInches((value * inches(0, 10)) / MM_PER_M)} in 10 ft`
        : `${places(value, 1)} mm in 1 m`;
    case 'mm per 4 courses':
      return `${formatFineLength(value, system)} over 4 courses`;
    case 'mm²':
      return formatArea(value, system);
    case '°C':
      return formatOther(value, unit, system, inInches ? 0 : 1);
    case 'kg/m²':
      return formatOther(value, unit, system, inInches ? 0 : 2);
    case 'g/m²':
      return formatOther(value, unit, system, 1);
    case 'MPa':
      return inInches
        ? `${Math.round(inSystem(value, unit, system).value / STRENGTH_STEP) * STRENGTH_STEP} psi`
        : `${value} MPa`;
    case 'there or not':
      return value > 0 ? 'there' : 'not there';
    case 'table':
      return places(value, 2);
    default:
      return `${places(value, 2)} ${unit}`;
  }
}

function formatOther(value: number, unit: MetricUnit, system: LengthSystem, decimals: number): string {
  const shown = inSystem(value, unit, system);
  return `${places(shown.value, decimals)} ${shown.unit}`;
}

/** A length as a tape reads it, or as a caliper does when it is small and no sixteenth: 0.76 mm, 0.030 in. */
export function formatFineLength(mm: Mm, system: LengthSystem): string {
  const nearest = Math.round(mm / SIXTEENTH) * SIXTEENTH;
  const fine = mm > 0 && mm < CALIPER_BELOW && Math.abs(mm - nearest) > mm / 100;
  if (system === 'mm') return fine || mm < 1 ? `${places(mm, 2)} mm` : formatMm(mm);
  if (!fine) return formatInches(mm);
  return `${(mm / inches(1)).toFixed(Number.isInteger(mm) ? 2 : 3)} in`;
}

function formatArea(value: number, system: LengthSystem): string {
  if (value >= WALL_AREA) {
    return system === 'mm'
      ? `${places(value / SQUARE_METRE, 2)} m²`
      : `${places(value / squareFeet(1), 2)} sq ft`;
  }
  return system === 'mm' ? `${places(value, 0)} mm²` : `${places(value / (inches(1) * inches(1)), 1)} sq in`;
}

/** At most so many decimals, none when they are zero. */
function places(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals))).replace('-', '−');
}

/** As a sentence begins. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
