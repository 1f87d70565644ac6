import type { WallKind } from '../wall/model';

export const KIND_TITLES: Readonly<Record<WallKind, string>> = {
  'plain-panel': 'Plain panel',
  'window-panel': 'Panel with a window',
  'door-corner': 'Door at a corner',
  'gable-end': 'Gable end',
};

/** By difficulty, 1 to 5; there is no 0. */
export const DIFFICULTY_WORDS: readonly string[] = [
  '',
  'Easy to see',
  'Plain enough',
  'Needs a closer look',
  'Hard to see',
  'Very hard to see',
];
