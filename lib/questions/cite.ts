import { type At, boundAt } from '../limits/bound';
import { type HowSure, type Limit, RULE_SETS, type RuleSetId } from '../limits/limit';
import { namedLimitOf, ruleSetTitle, sourceOf } from '../limits/limits';

export const COMMON_PRACTICE = 'Common practice in the trade. Local rules and the drawings come first.';

const SURE: Readonly<Record<HowSure, string>> = {
  read: '',
  'second-hand': ' Read second-hand.',
  'worked out': ' Worked out from the clause.',
  'common practice': ' Common practice, no source.',
  memory: ' Not verified.',
};

/** The limit that governs. @throws RangeError where neither the rule set nor good practice has one. */
export function governingLimit(rules: RuleSetId, id: string): Limit {
  const limit = namedLimitOf(rules, id);
  if (limit === undefined) throw new RangeError(`${rules}: no limit ${id}`);
  return limit;
}

/** Title, edition, clause and kind of a limit; says so when the rule set in use is silent. */
export function citeLimit(limit: Limit, rules: RuleSetId): string {
  const title = sourceOf(limit).title;
  const edition = title.includes(limit.edition) ? '' : `, ${limit.edition}`;
  const silent =
    limit.rules === rules ? '' : ` ${ruleSetTitle(rules)} is silent here, so good practice is used.`;
  return `${title}${edition}: ${limit.clause.replace(/\.$/, '')}. Kind: ${limit.kind}.${SURE[limit.howSure]}${silent}`;
}

/** For an answer worked out by a formula alone. */
export function citeFormula(formula: string): string {
  return `Worked out: ${formula}.`;
}

/** What other rule sets say of the same thing, each value once. Without what only memory gives. */
export function otherBounds(
  rules: RuleSetId,
  id: string,
  at: At,
): readonly { readonly rules: RuleSetId; readonly value: number }[] {
  const own = boundAt(governingLimit(rules, id), at);
  const seen = new Set([own]);
  return RULE_SETS.flatMap((other) => {
    const limit = namedLimitOf(other, id);
    if (limit === undefined || limit.howSure === 'memory') return [];
    const value = boundAt(limit, at);
    if (seen.has(value) || !Number.isFinite(value)) return [];
    seen.add(value);
    return [{ rules: limit.rules, value }];
  });
}
