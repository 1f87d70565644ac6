import { randomInt } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { redirect } from 'next/navigation';
import { Caution } from '../../../components/forms/caution';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { DRAWING_CAUTIONS } from '../../../lib/inspect/make-safe';
import { RULE_SETS, type RuleSetId } from '../../../lib/limits/limit';
import { ruleSetTitle } from '../../../lib/limits/limits';
import { MOST_ROUND } from '../../../lib/practice/quick-round';
import { QuickLooks } from './quick-looks';
import { SEEN_FROM_AFAR } from './quick-walls';

export const metadata: Metadata = {
  title: 'Quick look',
  description: 'Ten walls, a few seconds each: sound, or is something wrong?',
};

interface Props {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

/** The address names the round, so that a group can look through the same one. */
export default async function QuickLookPage({ searchParams }: Props) {
  const asked = await searchParams;
  const rules = RULE_SETS.find((each) => each === asked.rules);
  const round = typeof asked.round === 'string' && /^\d{1,6}$/.test(asked.round) ? Number(asked.round) : null;
  if (rules === undefined || round === null)
    redirect(addressOf(rules ?? 'canada', round ?? randomInt(MOST_ROUND + 1)));
  return (
    <>
      <h1>Quick look</h1>
      <div className="column">
        <p>Is the wall sound, or is something wrong? Say so from the front, at a glance.</p>
        <p>
          Only faults that show from the front come up here:{' '}
          {SEEN_FROM_AFAR.map((fault) => CATALOGUE[fault].name.toLowerCase()).join('; ')}. They are plain to
          see.
        </p>
        <p>
          Round {round}. Judged by{' '}
          <Link href={`/limits/${rules}`} prefetch={false}>
            {ruleSetTitle(rules)}
          </Link>
          .
        </p>
        <noscript>
          <p>The walls of a round are laid in your browser. That needs JavaScript.</p>
        </noscript>
      </div>
      <QuickLooks
        key={`${rules} ${round}`}
        rules={rules}
        round={round}
        next={addressOf(rules, round === MOST_ROUND ? 0 : round + 1)}
      />
      <div className="column">
        <h2>Judge by other rules</h2>
        <ul>
          {RULE_SETS.filter((each) => each !== rules).map((each) => (
            <li key={each}>
              <a href={addressOf(each, round)}>{ruleSetTitle(each)}</a>
            </li>
          ))}
        </ul>
        <Caution lines={DRAWING_CAUTIONS} />
      </div>
    </>
  );
}

function addressOf(rules: RuleSetId, round: number): string {
  return `/practise/quick?rules=${rules}&round=${round}`;
}
