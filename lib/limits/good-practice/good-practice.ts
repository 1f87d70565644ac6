import type { Limit } from '../limit';
import { GOOD_PRACTICE_DECIDING } from './deciding';
import { LINE_DECIDING } from './deciding-line';
import { TIES_DECIDING } from './deciding-ties';
import { GOOD_PRACTICE_SHOWN } from './shown';
import { GOOD_PRACTICE_WALL } from './shown-wall';
import { GOOD_PRACTICE_WEATHER } from './shown-weather';

/** Used wherever a rule set is silent, and always shown as such: trade bodies, rules borrowed from one place for all, and our own training defaults. */
export const GOOD_PRACTICE: readonly Limit[] = [
  ...GOOD_PRACTICE_DECIDING,
  ...LINE_DECIDING,
  ...TIES_DECIDING,
  ...GOOD_PRACTICE_SHOWN,
  ...GOOD_PRACTICE_WALL,
  ...GOOD_PRACTICE_WEATHER,
];
