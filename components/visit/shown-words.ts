import { formatLength, type LengthSystem, type Mm } from '../../lib/units';
import type { Shown } from '../../lib/visit/shown';
import { CONDITION_WORDS } from './visit-words';

/** Small lengths to a tenth of a millimetre, as a crack gauge is read; without their sign. */
export function farWords(mm: Mm, system: LengthSystem): string {
  const far = Math.abs(mm);
  return far < 10 && system === 'mm' ? `${far.toFixed(1)} mm` : formatLength(far, system);
}

/** What is wrong, how much of it, and where. */
export function shownWords(
  { condition, parts, most }: Shown,
  nameOf: (part: string) => string,
  system: LengthSystem,
): string {
  const [first = ''] = parts;
  const where = parts.length === 1 ? nameOf(first) : `${parts.length} units, one of them ${nameOf(first)}`;
  const measure = most === null ? '' : `, at most ${farWords(most, system)}`;
  return `${CONDITION_WORDS[condition]}${measure}: ${where}.`;
}
