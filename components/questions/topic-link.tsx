'use client';

import Link from 'next/link';
import type { ReactNode } from 'react';
import type { QuestionTopic } from '../../lib/questions/topics';
import { useOneRuleSet } from '../forms/rules-in-use';

/** Leads to questions on a topic, asked by the rule set in use. */
export function TopicLink({
  topic,
  children,
}: {
  readonly topic: QuestionTopic;
  readonly children: ReactNode;
}) {
  const rules = useOneRuleSet();
  return (
    <Link href={`/questions/${topic}?rules=${rules}`} prefetch={false}>
      {children}
    </Link>
  );
}
