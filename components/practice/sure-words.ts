import type { Sure } from '../../lib/marking/mark';

export const SURE_WORDS: Readonly<Record<Sure, string>> = { 1: 'Unsure', 2: 'Fairly sure', 3: 'Certain' };
