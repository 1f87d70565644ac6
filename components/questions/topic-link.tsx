'use client';

import Link from 'next/link';
import type { ReactNode } from 'react';
import type { QuestionTopic } from '../../lib/questions/topics';
import { USUAL_RULES, useRulesInUse } from '../forms/rules-in-use';

/** Leads to questions on a topic, asked by the rule set in use. */
export function TopicLink({
  topic,
  children,
}: {
  readonly topic: QuestionTopic;
  readonly children: ReactNode;
}) {
  const inUse = useRulesInUse();
  const rules = inUse === 'all' ? USUAL_RULES : inUse;
  return (
    <Link href={`/questions/${topic}?rules=${rules}`} prefetch={false}>
      {children}
    </Link>
  );
}
