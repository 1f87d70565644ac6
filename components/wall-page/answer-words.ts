import type { LimitKind } from '../../lib/limits/limit';
import type { Act } from '../../lib/marking/act';
import type { Sure } from '../../lib/marking/mark';

/** A choice, and what it says in full once it is chosen. */
interface Words {
  readonly label: string;
  readonly means: string;
}

/** The four kinds of limit as a reader is asked for them. */
export const KIND_WORDS: Readonly<Record<LimitKind, Words>> = {
  'code minimum': { label: 'Code', means: 'The law asks for it.' },
  'standard tolerance': {
    label: 'Standard',
    means: 'A published standard or warranty says how far off it may be.',
  },
  'good practice': {
    label: 'Good practice',
    means: 'This rule set says nothing on it. The trade does it all the same.',
  },
  looks: { label: 'Looks only', means: 'Nobody is hurt and nothing leaks. It is judged by eye.' },
};

export const ACT_WORDS: Readonly<Record<Act, Words>> = {
  leave: { label: 'Leave it', means: 'It looks wrong and is right.' },
  'put right now': { label: 'Put it right now', means: 'All of it is in sight, and the mason can mend it.' },
  'open up further': {
    label: 'Open up further',
    means: 'Where there is one there are likely more out of sight.',
  },
  'make safe and call': {
    label: 'Make safe and call',
    means: 'It could fall. Keep people away, and call a competent person.',
  },
};

export const SURE_WORDS: Readonly<Record<Sure, string>> = { 1: 'Unsure', 2: 'Fairly sure', 3: 'Certain' };
