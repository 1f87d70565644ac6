import { boundAt, spacingVerdict } from '../limits/bound';
import type { Limit, LimitId, RuleSetId } from '../limits/limit';
import { limitOf } from '../limits/limits';
import type { Mm } from '../units';
import { governingLimit } from './cite';

/** Whether a rule set has the limit itself. One borrowed from another code may be laxer than this code's rule for the field. */
export function isOwn(rules: RuleSetId, id: LimitId): boolean {
  return limitOf(rules, id)?.rules === rules;
}

/** The greatest gap from tie to tie up an edge, mm, and the limit it is from: the stricter of the rule for edges and the rule for the field. */
export function mostUpEdge(rules: RuleSetId): { readonly limit: Limit; readonly most: Mm } {
  const edge = governingLimit(rules, 'tie-edge-spacing');
  const field = governingLimit(rules, 'tie-spacing');
  const most = boundAt(edge, {});
  // As narrow as the columns may be: the most that any spacing across allows.
  const inField = spacingVerdict(field.bound, 0, 0).limit;
  return inField < most ? { limit: { ...field, unit: 'mm' }, most: inField } : { limit: edge, most };
}
