import { formatInches, formatLength, inches, inSystem, type LengthSystem } from '../../lib/units';

/** Sheet metal is read with a caliper, not with a tape: below this hundredths are shown, mm. */
const CALIPER_BELOW = 3;

const SQUARE_INCH = inches(1) * inches(1);
const SIXTEENTH = inches(1) / 16;

/** A measured value or a limit in words, in the reader's lengths: 12.7 mm -> "1/2 in"; 650 mm² -> "1 sq in". `fine`: as a caliper reads. */
export function formatMeasure(value: number, unit: string, system: LengthSystem, fine = false): string {
  switch (unit) {
    case 'mm':
      return fine ? formatFine(value, system) : formatLength(value, system);
    case 'mm²':
      return system === 'mm' ? `${Math.round(value)} mm²` : `${short(value / SQUARE_INCH)} sq in`;
    case 'mm per 4 courses':
      return `${formatLength(value, system)} over 4 courses`;
    case 'mm per m':
      return system === 'mm'
        ? `${short(value)} mm per m`
        : `${formatInches((value * inches(0, 10)) / 1000)} per 10 ft`;
    case 'm':
      return formatLength(value * 1000, system);
    case '°C': {
      const shown = inSystem(value, unit, system);
      return `${short(shown.value)} ${shown.unit}`;
    }
    case 'there or not':
      return value > 0 ? 'there' : 'not there';
    case '%':
      return `${short(value)} %`;
    default:
      return `${short(value)} ${unit}`;
  }
}

/** For paper and for pages made before anybody reads them: both lengths, "20.4 mm (13/16 in)"; one text where they are alike. */
export function measureInBoth(value: number, unit: string, fine = false): string {
  const [mm, inch] = [formatMeasure(value, unit, 'mm', fine), formatMeasure(value, unit, 'inches', fine)];
  return mm === inch ? mm : `${mm} (${inch})`;
}

/** True for thicknesses of sheet metal, by their limit. */
export function isFine(limit: number, unit: string): boolean {
  return unit === 'mm' && limit > 0 && limit < CALIPER_BELOW && limit % 1 !== 0;
}

function formatFine(mm: number, system: LengthSystem): string {
  return system === 'mm' ? `${mm.toFixed(2)} mm` : `${(mm / inches(1)).toFixed(3)} in`;
}

/** How far a measure is from its limit, as both are shown: the figures add up on the page. Null where there is nothing to measure. */
export function formatBeyond(
  measured: number,
  limit: number,
  unit: string,
  system: LengthSystem,
  fine = false,
): string | null {
  if (unit === 'there or not') return null;
  const step = stepOf(unit, system, fine);
  const steps = Math.abs(Math.round(measured / step) - Math.round(limit / step));
  if (steps > 0 || measured === limit) return formatMeasure(steps * step, unit, system, fine);
  return `less than ${formatMeasure(step, unit, system, fine)}`;
}

/** The least difference that is shown, in the unit of the measure. */
function stepOf(unit: string, system: LengthSystem, fine: boolean): number {
  const inInches = system === 'inches';
  switch (unit) {
    case 'mm':
      return fine ? (inInches ? inches(1) / 1000 : 0.01) : inInches ? SIXTEENTH : 0.1;
    case 'mm per 4 courses':
      return inInches ? SIXTEENTH : 0.1;
    case 'mm per m':
      return inInches ? (SIXTEENTH * 1000) / inches(0, 10) : 0.1;
    case 'mm²':
      return inInches ? SQUARE_INCH / 10 : 1;
    case 'm':
      return (inInches ? SIXTEENTH : 0.1) / 1000;
    default:
      return 0.1;
  }
}

function short(value: number): string {
  return String(Math.round(value * 10) / 10).replace('-', '−');
}
