import type { LimitKind } from '../../lib/limits/limit';
import type { Act } from '../../lib/marking/act';

/** The four kinds of limit as a reader is asked for them. */
export const KIND_WORDS: Readonly<Record<LimitKind, string>> = {
  'code minimum': 'Code: the law asks for it',
  'standard tolerance': 'Standard: a published tolerance',
  'good practice': 'Good practice: no rule, but the trade does it',
  looks: 'Looks only',
};

export const ACT_WORDS: Readonly<Record<Act, string>> = {
  leave: 'Leave it: it looks wrong and is right',
  'put right now': 'Put it right now',
  'open up further': 'Open up further: there is likely more',
  'make safe and call': 'Make safe, and call a competent person',
};
