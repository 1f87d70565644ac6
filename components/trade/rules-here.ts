import { useState } from 'react';
import type { RuleSetId } from '../../lib/limits/limit';
import type { LengthSystem } from '../../lib/units';
import { useLengthSystem } from '../forms/length-choice';
import { USUAL_RULES, useRulesInUse } from '../forms/rules-in-use';

/** The rule set a drawing judges by: the one the reader reads lessons by, until another is chosen here. */
export function useRulesHere(): readonly [RuleSetId, (rules: RuleSetId) => void] {
  const inUse = useRulesInUse();
  const [here, setHere] = useState<RuleSetId | null>(null);
  return [here ?? (inUse === 'all' ? USUAL_RULES : inUse), setHere];
}

/** The reader's lengths; until they are chosen, those of the rule set in use. */
export function useLengthsHere(): LengthSystem {
  return useLengthSystem(useRulesInUse() === 'united-states' ? 'inches' : 'mm');
}
