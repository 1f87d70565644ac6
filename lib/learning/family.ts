import { TOPIC_FAULTS, TOPICS, type Topic, topicOf } from '../generate/topics';
import type { CheckId } from '../inspect/finding';

/** A family of faults: a topic, and the faults that no topic before it has. */
export type Family = Exclude<Topic, 'mixed'>;

export const FAMILIES: readonly Family[] = TOPICS.filter((topic) => topic !== 'mixed');

export function isFamily(topic: string): topic is Family {
  return FAMILIES.some((family) => family === topic);
}

export function familyOf(fault: CheckId): Family | null {
  const topic = topicOf(fault);
  return topic === 'mixed' ? null : topic;
}

export function faultsOf(family: Family): readonly CheckId[] {
  return TOPIC_FAULTS[family].filter((fault) => topicOf(fault) === family);
}
