'use client';

import Link from 'next/link';
import type { WallKind } from '../../lib/wall/model';
import { useOneRuleSet } from '../forms/rules-in-use';

/** Leads to a new wall of the lesson's topic, judged by the rule set in use. */
export function PractiseLink(props: {
  readonly topic: string;
  readonly kind: WallKind;
  readonly children: React.ReactNode;
}) {
  const { topic, kind, children } = props;
  const rules = useOneRuleSet();
  return (
    <Link
      className="button"
      href={`/walls?topic=${topic}&kind=${kind}&difficulty=1&rules=${rules}`}
      prefetch={false}
    >
      {children}
    </Link>
  );
}
