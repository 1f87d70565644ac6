'use client';

import Link from 'next/link';
import type { ReactNode } from 'react';
import { useOneRuleSet } from '../forms/rules-in-use';

/** Leads to a set of questions on a topic, asked by the rule set in use. */
export function QuestionsLink(props: {
  readonly topic: string;
  readonly className?: string;
  readonly children: ReactNode;
}) {
  const { topic, className, children } = props;
  const rules = useOneRuleSet();
  return (
    <Link className={className} href={`/questions/${topic}?rules=${rules}`} prefetch={false}>
      {children}
    </Link>
  );
}
