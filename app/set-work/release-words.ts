import type { Release } from '../../lib/classes/set-work';

/** When results show, to an instructor. */
export const RELEASE_WORDS: Readonly<Record<Release, string>> = {
  'at once': 'At once, to each learner when they have handed in',
  'when due': 'After the due date and its grace period',
  'by hand': 'When you say so, in the mark book',
};
