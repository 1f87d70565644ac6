import { CANADA_DECIDING } from './canada/deciding';
import { CANADA_SHOWN, NATIONAL_ONLY } from './canada/shown';
import { GOOD_PRACTICE_DECIDING } from './good-practice/deciding';
import { PRACTICE } from './good-practice/practice';
import { GOOD_PRACTICE_SHOWN } from './good-practice/shown';
import { GOOD_PRACTICE_CARE } from './good-practice/shown-care';
import { GOOD_PRACTICE_WEATHER } from './good-practice/shown-weather';
import type { Limit, RuleSetId } from './limit';
import { ONTARIO_CHIMNEYS } from './ontario/chimneys';
import { ONTARIO_DECIDING } from './ontario/deciding';
import { OBC } from './ontario/obc';
import { ONTARIO_SHOWN } from './ontario/shown';
import { UNITED_KINGDOM_DECIDING } from './united-kingdom/deciding';
import { UNITED_KINGDOM_SHOWN } from './united-kingdom/shown';
import { UNITED_STATES_CHIMNEYS } from './united-states/chimneys';
import { UNITED_STATES_DECIDING } from './united-states/deciding';
import { UNITED_STATES_SHOWN } from './united-states/shown';
import { UNITED_STATES_ADHERED } from './united-states/shown-adhered';

/** Rows that Ontario prints too, with its own figures in some. */
const NATIONAL_AND_ONTARIO: readonly Limit[] = [...CANADA_DECIDING, ...CANADA_SHOWN];
const ONTARIO_OWN: readonly Limit[] = [...ONTARIO_DECIDING, ...ONTARIO_SHOWN, ...ONTARIO_CHIMNEYS];
const ONTARIO_CHANGED = new Set(ONTARIO_OWN.map(({ id }) => id));

/** The limits of each rule set. What it leaves out, good practice answers (`limits.ts`). */
export const LIMITS_BY_RULES: Readonly<Record<RuleSetId, readonly Limit[]>> = {
  /**
   * The National Building Code, Division B, Part 9. It says nothing of the backs of units, level, plumb, line, gauge and bond, of how deep
   * a tie lies, nor of ties at the edges of veneer.
   */
  canada: [...NATIONAL_AND_ONTARIO, ...NATIONAL_ONLY],
  /** The national rules in its own code, but for the rows that differ. */
  ontario: [
    ...ONTARIO_OWN,
    ...NATIONAL_AND_ONTARIO.filter(({ id }) => !ONTARIO_CHANGED.has(id)).map((limit) => ({
      ...limit,
      rules: OBC.rules,
      source: OBC.source,
      edition: OBC.edition,
    })),
  ],
  /**
   * The International Residential Code. Its joint tolerances bind load-bearing masonry alone, and it is silent on the backs of units, level,
   * plumb, line, gauge, bond and the size of an angle without a table.
   */
  'united-states': [
    ...UNITED_STATES_DECIDING,
    ...UNITED_STATES_SHOWN,
    ...UNITED_STATES_ADHERED,
    ...UNITED_STATES_CHIMNEYS,
  ],
  /**
   * The standards of two warranty bodies, which most new houses are built to. They give no figures for backs, the first bed, full joints,
   * gauge, perpends, single units, the size of a strap or an angle, and mortar.
   */
  'united-kingdom': [...UNITED_KINGDOM_DECIDING, ...UNITED_KINGDOM_SHOWN],
  /** Used wherever a rule set is silent, and always shown as such: trade bodies, rules borrowed from one place for all, and our own training defaults. */
  'good-practice': [
    ...GOOD_PRACTICE_DECIDING,
    ...GOOD_PRACTICE_SHOWN,
    ...GOOD_PRACTICE_WEATHER,
    ...GOOD_PRACTICE_CARE,
    ...ONTARIO_CHIMNEYS.map((limit) => ({ ...limit, ...PRACTICE })),
  ],
};
