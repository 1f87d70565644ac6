import Link from 'next/link';
import { RULE_SETS, type RuleSetId } from '../../lib/limits/limit';
import { ruleSetTitle } from '../../lib/limits/limits';
import { RULE_SET_WORDS } from './limit-words';
import styles from './rule-set-links.module.css';

/** Leads to each rule set. Plain links: they work without script. `brief` leaves out what each one is. */
export function RuleSetLinks({
  here,
  brief = false,
}: {
  readonly here?: RuleSetId;
  readonly brief?: boolean;
}) {
  return (
    <nav aria-label="Rule sets">
      <ul className={brief ? 'row' : styles.links}>
        {RULE_SETS.map((rules) => (
          <li key={rules}>
            <Link
              href={`/limits/${rules}`}
              className={brief ? 'chip' : undefined}
              aria-current={rules === here ? 'page' : undefined}
            >
              {ruleSetTitle(rules)}
            </Link>
            {!brief && <p>{RULE_SET_WORDS[rules]}</p>}
          </li>
        ))}
      </ul>
    </nav>
  );
}
