/** A length in millimetres. Plain number: sums of branded numbers would need a cast at every step (see DEVELOPERS.md, Decisions). */
export type Mm = number;

export const MM_PER_M = 1000;

const MM_PER_INCH = 25.4;
/** Whole tenths of a millimetre, so that 3 in is 76.2 mm and not a last bit less. */
const TENTHS_PER_INCH = 254;
const STEPS_PER_MM = 8;
const SIXTEENTHS = 16;
/** kg in a pound and m/s² of gravity: both by definition (NIST SP 811). Their product, 4.4482216, is N in a pound-force. */
const POUND = 0.45359237;
const POUND_FORCE = POUND * 9.80665;
const FOOT = 0.3048;

/** Inches (and feet) to millimetres, exactly 25.4 mm an inch. Not snapped to the wall's grid. */
export function inches(inch: number, feet = 0): Mm {
  return ((feet * 12 + inch) * TENTHS_PER_INCH) / 10;
}

/** Square feet to square millimetres. */
export function squareFeet(area: number): number {
  return area * (12 * MM_PER_INCH) * (12 * MM_PER_INCH);
}

/** Nearest point of the wall's grid: eighths of a millimetre, exact in binary, so that sums never drift. Halves go up. */
export function snap(mm: Mm): Mm {
  return Math.floor(mm * STEPS_PER_MM + 0.5) / STEPS_PER_MM;
}

export function isOnGrid(mm: Mm): boolean {
  return Number.isInteger(mm * STEPS_PER_MM);
}

export type LengthSystem = 'mm' | 'inches';

/** 12.74 -> "12.7 mm": at most one decimal, none when it is zero. */
export function formatMm(mm: Mm): string {
  const tenths = Math.round(mm * 10) / 10;
  return `${tenths === 0 ? 0 : tenths} mm`;
}

/** 12.7 -> "1/2 in": to the nearest sixteenth of an inch, as a tape is read. From 4 ft up in feet and inches. */
export function formatInches(mm: Mm): string {
  const sixteenths = Math.round((Math.abs(mm) / MM_PER_INCH) * SIXTEENTHS);
  if (sixteenths === 0) return '0 in';
  const sign = mm < 0 ? '−' : '';
  const feet = sixteenths >= 4 * 12 * SIXTEENTHS ? Math.floor(sixteenths / (12 * SIXTEENTHS)) : 0;
  const rest = sixteenths - feet * 12 * SIXTEENTHS;
  const whole = Math.floor(rest / SIXTEENTHS);
  const fraction = rest % SIXTEENTHS === 0 ? '' : reduced(rest % SIXTEENTHS);
  const inchText = whole > 0 && fraction !== '' ? `${whole} ${fraction}` : fraction || `${whole}`;
  return feet > 0 ? `${sign}${feet} ft ${inchText} in` : `${sign}${inchText} in`;
}

export function formatLength(mm: Mm, system: LengthSystem): string {
  return system === 'mm' ? formatMm(mm) : formatInches(mm);
}

function reduced(sixteenths: number): string {
  let top = sixteenths;
  let bottom = SIXTEENTHS;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${top}/${bottom}`;
}

/** What goes with inches for what is no length: its unit, and a value there and back. Exact, by the definitions in NIST SP 811. */
const CUSTOMARY = {
  '°C': {
    unit: '°F',
    to: (celsius: number) => (celsius * 9) / 5 + 32,
    from: (hot: number) => ((hot - 32) * 5) / 9,
  },
  N: sized('lbf', POUND_FORCE),
  kN: sized('lbf', POUND_FORCE / 1000),
  kN·m: sized('lbf·ft', (POUND_FORCE * FOOT) / 1000),
  MPa: sized('psi', POUND_FORCE / (MM_PER_INCH * MM_PER_INCH)),
  J: sized('ft·lbf', POUND_FORCE * FOOT),
  kg: sized('lb', POUND),
  'g/m': sized('lb in 1000 ft', POUND / FOOT),
  'm/s': sized('ft/s', FOOT),
  'km/h': sized('mph', 1.609344),
  'cm³': sized('cu in', (MM_PER_INCH * MM_PER_INCH * MM_PER_INCH) / 1000),
  'm²': sized('sq ft', FOOT * FOOT),
  'kg/m²': sized('lb per sq ft', POUND / (FOOT * FOOT)),
  'g/m²': sized('oz per sq ft', (POUND * 1000) / 16 / (FOOT * FOOT)),
} as const;

export type MetricUnit = keyof typeof CUSTOMARY;

/** A value in the unit that goes with the reader's lengths, not rounded: 4.448 N -> 1 lbf where lengths are in inches. */
export function inSystem(
  value: number,
  unit: MetricUnit,
  system: LengthSystem,
): { readonly value: number; readonly unit: string } {
  if (system === 'mm') return { value, unit };
  return { value: CUSTOMARY[unit].to(value), unit: CUSTOMARY[unit].unit };
}

/** The way back: what was typed in the reader's unit, in the metric one. */
export function fromSystem(value: number, unit: MetricUnit, system: LengthSystem): number {
  return system === 'mm' ? value : CUSTOMARY[unit].from(value);
}

function sized(unit: string, each: number) {
  return { unit, to: (value: number) => value / each, from: (value: number) => value * each };
}
