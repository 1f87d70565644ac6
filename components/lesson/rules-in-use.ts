import { useSyncExternalStore } from 'react';
import { RULE_SETS, type RuleSetId } from '../../lib/limits/limit';

/** What a reader can choose to see: one rule set, or all side by side. */
export type RulesInUse = RuleSetId | 'all';

export const USUAL_RULES: RuleSetId = 'canada';

const KEY = 'rules';
const CHANGED = 'rules-changed';

/** The rule set the reader has chosen in this browser; the usual one until then. */
export function useRulesInUse(): RulesInUse {
  return useSyncExternalStore(
    subscribe,
    () => chosen ?? readChosen() ?? USUAL_RULES,
    () => USUAL_RULES,
  );
}

// Holds the choice where storage is forbidden; the stored one is read afresh, since another tab may have changed it.
let chosen: RulesInUse | undefined;

export function chooseRules(rules: RulesInUse): void {
  try {
    localStorage.setItem(KEY, rules);
  } catch {
    chosen = rules;
  }
  window.dispatchEvent(new Event(CHANGED));
}

export function isRulesInUse(value: unknown): value is RulesInUse {
  return value === 'all' || RULE_SETS.some((rules) => rules === value);
}

function readChosen(): RulesInUse | undefined {
  try {
    const kept = localStorage.getItem(KEY);
    return isRulesInUse(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

function subscribe(onChange: () => void): () => void {
  window.addEventListener(CHANGED, onChange);
  window.addEventListener('storage', onChange);
  return () => {
    window.removeEventListener(CHANGED, onChange);
    window.removeEventListener('storage', onChange);
  };
}
