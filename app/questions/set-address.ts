import { RULE_SETS, type RuleSetId } from '../../lib/limits/limit';
import { QUESTION_TOPICS, type QuestionTopic } from '../../lib/questions/topics';

export const MOST_SEED = 999_999;

/** A set of questions as an address names it. */
export interface SetAddress {
  readonly topic: QuestionTopic;
  readonly rules: RuleSetId;
  readonly seed: number;
}

/** Undefined for a topic that is not there. */
export function parseTopic(text: string): QuestionTopic | undefined {
  return QUESTION_TOPICS.find((topic) => topic === text);
}

/** Undefined for anything but one of the rule sets. */
export function parseRules(text: unknown): RuleSetId | undefined {
  return RULE_SETS.find((rules) => rules === text);
}

/** A whole number from 0 to MOST_SEED, or undefined. */
export function parseSeed(text: unknown): number | undefined {
  if (typeof text !== 'string' || !/^\d{1,6}$/.test(text)) return undefined;
  return Number(text);
}

export function formatAddress({ topic, rules, seed }: SetAddress): string {
  return `/questions/${topic}?rules=${rules}&seed=${seed}`;
}
