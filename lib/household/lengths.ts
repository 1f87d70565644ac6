import { formatInches, formatMm, inches, type LengthSystem, MM_PER_M, type Mm } from '../units';

/** As long as the straight batten that is held along a wall. */
export const BATTEN: Mm = 1200;
const FOOT: Mm = inches(0, 1);
const SIXTEENTH: Mm = inches(1 / 16);
/** Smaller than any tape reads: so that 4 in, which no binary number holds exactly, stays 4 in. */
const HAIR = 1e-6;
/** From here on nobody needs sixteenths of an inch. */
const LONG: Mm = 1000;

/** In one system, as a person would say it: "15 mm", "6.1 m"; "9/16 in", "20 ft". */
export function plainLength(mm: Mm, system: LengthSystem): string {
  if (mm < LONG) return system === 'mm' ? formatMm(mm) : formatInches(mm);
  return system === 'mm' ? `${Math.round(mm / 100) / 10} m` : `${Math.round(mm / FOOT)} ft`;
}

/** A limit as a tape reads it, rounded to the careful side: a least goes up, a most goes down. */
export function boundWords(end: 'at most' | 'at least', bound: Mm, system: LengthSystem): string {
  if (bound >= LONG) return `${end} ${plainLength(bound, system)}`;
  const step = system === 'mm' ? 1 : SIXTEENTH;
  const steps = end === 'at most' ? Math.floor(bound / step + HAIR) : Math.ceil(bound / step - HAIR);
  return `${end} ${plainLength(steps * step, system)}`;
}

/** Words with the length of the batten in the reader's system. */
export function withLengths(text: string, system: LengthSystem): string {
  return text.replace('{batten}', system === 'mm' ? `${BATTEN / MM_PER_M} m` : '4 ft');
}
