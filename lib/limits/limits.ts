import { SOURCES } from './bibliography';
import { type Limit, type LimitId, type Limits, RULE_SETS, type RuleSetId, type Source } from './limit';
import { LIMITS_BY_RULES } from './rule-sets';

const TITLES: Readonly<Record<RuleSetId, string>> = {
  canada: 'Canada (NBC 2020)',
  ontario: 'Ontario (2024)',
  'united-states': 'United States (IRC 2021)',
  'united-kingdom': 'United Kingdom (NHBC 2019/2020, LABC)',
  'good-practice': 'Good practice',
};

/** Every limit of every rule set, in the order of the files. */
export const ALL_LIMITS: readonly Limit[] = Object.values(LIMITS_BY_RULES).flat();

/** What governs under a rule set: its own limit, else that of good practice. Built once, because the checks ask often. */
const GOVERNING = new Map(
  RULE_SETS.map((rules) => {
    const limits = [...LIMITS_BY_RULES['good-practice'], ...LIMITS_BY_RULES[rules]];
    return [rules, new Map<string, Limit>(limits.map((limit) => [limit.id, limit]))];
  }),
);

const SOURCE_BY_KEY: ReadonlyMap<string, Source> = new Map(SOURCES.map((source) => [source.key, source]));

/** The limit that governs a check: the rule set's own, else that of good practice (told by its `rules`), else undefined. */
export function limitOf(rules: RuleSetId, id: LimitId): Limit | undefined {
  return GOVERNING.get(rules)?.get(id);
}

/** The limits of a rule set as a check asks for them. */
export function limitsUnder(rules: RuleSetId): Limits {
  return (id) => limitOf(rules, id);
}

/** The limit of any name, even one that no check asks for; undefined where there is none of that name. */
export function namedLimitOf(rules: RuleSetId, id: string): Limit | undefined {
  return GOVERNING.get(rules)?.get(id);
}

/** A rule set's own limits, without what it borrows from good practice. */
export function limitsOf(rules: RuleSetId): readonly Limit[] {
  return LIMITS_BY_RULES[rules];
}

/** The name of a rule set with its editions, as shown to readers. */
export function ruleSetTitle(rules: RuleSetId): string {
  return TITLES[rules];
}

/** The book or note a limit is from. Throws a RangeError when the bibliography does not have it. */
export function sourceOf(limit: Limit): Source {
  const source = SOURCE_BY_KEY.get(limit.source);
  if (source === undefined)
    throw new RangeError(`${limit.id}: the source ${limit.source} is not in the bibliography`);
  return source;
}

/** A figure of the first is not asked for where the rule set has the second. */
const GIVES_WAY: Readonly<Partial<Record<LimitId, LimitId>>> = {
  'bed-joint-most': 'bed-from-mean-of-eight',
  'bed-joint-least': 'bed-from-mean-of-eight',
  'angle-thickness': 'angle-size',
  'angle-leg': 'angle-size',
};

/** Whether any check asks a rule set for a limit: not for the thickness of an angle, say, where there is a table of angles. */
export function isAsked(rules: RuleSetId, id: LimitId): boolean {
  const before = GIVES_WAY[id];
  return before === undefined || limitOf(rules, before) === undefined;
}
