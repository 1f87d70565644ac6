import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { RULE_SET_WORDS } from '../../../components/limits/limit-words';
import { LimitsCaution } from '../../../components/limits/limits-caution';
import { RuleSetLimits } from '../../../components/limits/rule-set-limits';
import { RuleSetLinks } from '../../../components/limits/rule-set-links';
import { SourceList } from '../../../components/limits/source-list';
import { SOURCES } from '../../../lib/limits/bibliography';
import { CHECK_LIMITS, RULE_SETS, type RuleSetId } from '../../../lib/limits/limit';
import { limitOf, limitsOf, ruleSetTitle } from '../../../lib/limits/limits';
import styles from '../limits.module.css';

export const dynamic = 'error';
export const dynamicParams = false;

interface Props {
  readonly params: Promise<{ readonly rules: string }>;
}

export function generateStaticParams() {
  return RULE_SETS.map((rules) => ({ rules }));
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const rules = ruleSetOf((await params).rules);
  return { title: `Limits: ${ruleSetTitle(rules)}`, description: RULE_SET_WORDS[rules] };
}

export default async function RuleSetPage({ params }: Props) {
  const rules = ruleSetOf((await params).rules);
  return (
    <div className={styles.wide}>
      <p className="links">
        <Link href="/limits">All limits side by side</Link>
      </p>
      <h1>Limits: {ruleSetTitle(rules)}</h1>
      <p className="column">{RULE_SET_WORDS[rules]}</p>
      <RuleSetLinks here={rules} brief />
      <LimitsCaution />
      <RuleSetLimits rules={rules} />
      <h2>Sources</h2>
      <SourceList sources={sourcesOf(rules)} />
    </div>
  );
}

function ruleSetOf(text: string): RuleSetId {
  return RULE_SETS.find((rules) => rules === text) ?? notFound();
}

/** Of all that is shown on the page, its own and what it takes from good practice. */
function sourcesOf(rules: RuleSetId) {
  const shown = [...limitsOf(rules), ...CHECK_LIMITS.flatMap((id) => limitOf(rules, id) ?? [])];
  const keys = new Set(shown.map(({ source }) => source));
  return SOURCES.filter(({ key }) => keys.has(key));
}
