import type { Drawer } from '../../lib/household/drawers';
import type { Call } from '../../lib/household/look';
import type { Seen } from '../../lib/household/question';

export const SEEN_WORDS: Readonly<Record<Seen, string>> = {
  yes: 'Yes',
  no: 'No',
  'cannot see': 'I can’t see that',
  'do not know': 'I don’t know',
};

/** Each with a sign of its own, so that colour only helps. */
export const DRAWER_WORDS: Readonly<Record<Drawer, readonly [sign: string, title: string]>> = {
  'go away now': ['⚠', 'Go away now'],
  'an engineer this week': ['▲', 'An engineer this week'],
  'ask the mason': ['?', 'Ask the mason'],
  harmless: ['○', 'Harmless as a rule'],
};

export const CALL_WORDS: Readonly<Record<Call, string>> = {
  emergency: 'Emergency number',
  engineer: 'Engineer',
  mason: 'Mason or builder',
};
