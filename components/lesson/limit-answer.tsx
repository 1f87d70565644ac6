import Link from 'next/link';
import { formatBound } from '../../lib/limits/format-bound';
import { type Limit, RULE_SETS, type RuleSetId } from '../../lib/limits/limit';
import { ALL_LIMITS, namedLimitOf, ruleSetTitle, sourceOf } from '../../lib/limits/limits';
import { LimitTable } from '../limits/limit-tables';
import { firstLengths, HOW_SURE_WORDS, KIND_WORDS, keepTogether } from '../limits/limit-words';
import styles from './limit-answer.module.css';

/** Rule sets that ask the same of one thing, or none of which asks anything. */
interface Alike {
  readonly sets: readonly RuleSetId[];
  readonly limit: Limit | undefined;
}

/**
 * One limit, by every rule set. The style sheet shows only the one in use where a script can set it (html[data-rules]); without
 * script all of them stand side by side. `rules`: shown by that rule set alone, whichever is in use (for a comparison in the text).
 */
export function LimitAnswer({ id, rules }: { readonly id: string; readonly rules?: string }) {
  const rows = alike(id).filter(({ sets }) => rules === undefined || sets.some((set) => set === rules));
  const named = ALL_LIMITS.find((limit) => limit.id === id);
  return (
    <div className={styles.limit}>
      <p className={styles.quantity}>{named === undefined ? id : keepTogether(named.quantity)}</p>
      <dl className={styles.rows}>
        {rows.map(({ sets, limit }) => (
          <div key={sets[0]} className={styles.row} data-for={rules ? RULE_SETS.join(' ') : sets.join(' ')}>
            <dt>{(rules ? sets.filter((set) => set === rules) : sets).map(ruleSetTitle).join('; ')}</dt>
            <dd>
              {limit === undefined ? 'This rule set gives no figure.' : <Asked limit={limit} sets={sets} />}
            </dd>
          </div>
        ))}
      </dl>
    </div>
  );
}

function Asked({ limit, sets }: { readonly limit: Limit; readonly sets: readonly RuleSetId[] }) {
  const first = firstLengths(limit.rules);
  const isBorrowed = limit.rules === 'good-practice' && sets.some((rules) => rules !== 'good-practice');
  return (
    <>
      {formatBound(limit, first).map((line) => (
        <p key={line} className={styles.line}>
          {keepTogether(line)}
        </p>
      ))}
      <LimitTable
        bound={limit.bound}
        name={`${limit.quantity}, ${ruleSetTitle(limit.rules)}`}
        first={first}
      />
      <p className={styles.from}>
        <span className="tag">{KIND_WORDS[limit.kind]}</span>{' '}
        {isBorrowed && 'Used because the code gives no figure. '}
        <Link href={`/sources#${limit.source}`} prefetch={false}>
          {sourceOf(limit).title}
        </Link>
        , {limit.clause.replace(/\.$/, '')}. {HOW_SURE_WORDS[limit.howSure]}.
      </p>
    </>
  );
}

/** What each rule set asks of one thing, those that ask alike together. */
export function alike(id: string): readonly Alike[] {
  const groups = new Map<Limit | undefined, RuleSetId[]>();
  for (const rules of RULE_SETS) {
    const limit = namedLimitOf(rules, id);
    groups.set(limit, [...(groups.get(limit) ?? []), rules]);
  }
  return [...groups].map(([limit, sets]) => ({ limit, sets }));
}
