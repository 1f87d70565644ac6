import { RULE_SETS, type RuleSetId } from '../../lib/limits/limit';
import type { LengthSystem } from '../../lib/units';
import { keptChoice } from '../ui/kept-choice';
import { useLengthSystem } from './length-choice';

/** What a reader can choose to see: one rule set, or all side by side. */
export type RulesInUse = RuleSetId | 'all';

const USUAL_RULES: RuleSetId = 'canada';

const kept = keptChoice('rules', isRulesInUse);

export const chooseRules = kept.choose;

/** The rule set the reader has chosen in this browser; the usual one until then. */
export function useRulesInUse(): RulesInUse {
  return kept.useChosen(USUAL_RULES);
}

/** The one rule set that walls and questions go by: the usual one where the reader sees all side by side. */
export function useOneRuleSet(): RuleSetId {
  const inUse = useRulesInUse();
  return inUse === 'all' ? USUAL_RULES : inUse;
}

export function isRulesInUse(value: unknown): value is RulesInUse {
  return value === 'all' || RULE_SETS.some((rules) => rules === value);
}

/** The reader's lengths; until they are chosen, those of the rule set in use. */
export function useLengthsHere(): LengthSystem {
  return useLengthSystem(useRulesInUse() === 'united-states' ? 'inches' : 'mm');
}
