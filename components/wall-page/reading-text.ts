import { parseNumber } from '../../lib/questions/parse-number';
import { formatInches, inches, type LengthSystem, MM_PER_M, type Mm } from '../../lib/units';

/** Below this a length in inches is typed as a caliper shows it, mm: a strap is thinner than a sixteenth. */
const CALIPER_BELOW = 3;
const DECIMALS = 100;

/** A reading as it stands in the box, without its unit: 12.7 mm -> "12.7" or "1/2". */
export function readingText(value: number, unit: string, system: LengthSystem): string {
  const inchesEach = inchesEachOf(unit, system);
  if (inchesEach === null) return String(Math.round(value * DECIMALS) / DECIMALS);
  const mm = value * inchesEach;
  return Math.abs(mm) < CALIPER_BELOW ? (mm / inches(1)).toFixed(3) : inchText(mm);
}

/** 1250 mm -> "49 3/16": inches alone, as they are typed. Not for lengths below zero. */
export function inchText(mm: Mm): string {
  const whole = Math.floor(mm / inches(1));
  const rest = formatInches(mm - inches(whole)).replace(/ in$/, '');
  if (rest === '1') return String(whole + 1);
  if (rest === '0') return String(whole);
  return whole === 0 ? rest : `${whole} ${rest}`;
}

/** What was typed, in the unit of the fault's measure. Undefined when it is no number. */
export function parseReading(text: string, unit: string, system: LengthSystem): number | undefined {
  const inchesEach = inchesEachOf(unit, system);
  if (inchesEach === null) return parseNumber(text, unit === 'mm' ? 'mm' : '');
  // "9.5 mm" in a box of inches is 9.5 mm.
  const typed = parseNumber(text, 'in');
  return typed === undefined ? undefined : inches(typed) / inchesEach;
}

/** The unit behind the box. */
export function readingUnit(unit: string, system: LengthSystem): string {
  const inInches = system === 'inches';
  if (unit === 'mm') return inInches ? 'in' : 'mm';
  if (unit === 'mm per 4 courses') return `${inInches ? 'in' : 'mm'} over 4 courses`;
  if (unit === 'mm per m') return inInches ? 'in per 10 ft' : 'mm per m';
  return unit === 'volumes' ? 'volumes of sand' : unit;
}

/** How many mm one unit of the reading spans where it is typed in inches; null where it is typed as it is. */
function inchesEachOf(unit: string, system: LengthSystem): number | null {
  if (system === 'mm') return null;
  if (unit === 'mm' || unit === 'mm per 4 courses') return 1;
  return unit === 'mm per m' ? inches(0, 10) / MM_PER_M : null;
}
