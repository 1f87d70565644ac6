import Link from 'next/link';
import { formatBound } from '../../lib/limits/format-bound';
import { CHECK_LIMITS, type Limit, type LimitId, RULE_SETS } from '../../lib/limits/limit';
import { isAsked, limitOf, ruleSetTitle } from '../../lib/limits/limits';
import styles from './comparison.module.css';
import { firstLengths, keepTogether, TOPIC_ORDER, TOPIC_WORDS, topicAnchor } from './limit-words';

/** What the drawn walls are held to: a card for each limit, the figures of the rule sets side by side where there is room. */
export function Comparison() {
  return TOPIC_ORDER.map((topic) => {
    const ids = CHECK_LIMITS.filter((id) => anyOf(id)?.topic === topic);
    if (ids.length === 0) return null;
    return (
      <section key={topic} aria-labelledby={topicAnchor(topic)}>
        <h2 id={topicAnchor(topic)}>{TOPIC_WORDS[topic]}</h2>
        {ids.map((id) => (
          <ComparedLimit key={id} id={id} />
        ))}
      </section>
    );
  });
}

const CODES = RULE_SETS.filter((rules) => rules !== 'good-practice');

/** A limit of that name: of good practice, else of the first code that has one. */
function anyOf(id: LimitId): Limit | undefined {
  return (
    limitOf('good-practice', id) ??
    CODES.map((rules) => limitOf(rules, id)).find((limit) => limit !== undefined)
  );
}

function ComparedLimit({ id }: { readonly id: LimitId }) {
  const practice = limitOf('good-practice', id);
  const own = CODES.flatMap((rules) => {
    const limit = limitOf(rules, id);
    return limit?.rules === rules ? [limit] : [];
  });
  const silent = CODES.filter(
    (rules) => isAsked(rules, id) && !own.some((limit) => limit.rules === rules),
  ).map(ruleSetTitle);
  return (
    <div className={`${styles.card} target`} id={id}>
      <h3 className={styles.quantity}>{anyOf(id)?.quantity}</h3>
      <dl className={styles.figures}>
        {alike(own).map((limits) => (
          <div key={limits[0].rules} className={styles.own}>
            <dt>{limits.map(({ rules }) => ruleSetTitle(rules)).join('; ')}</dt>
            <dd>
              <Asked limits={limits} />
            </dd>
          </div>
        ))}
        {practice !== undefined && (
          <div className={styles.practice}>
            <dt>
              Good practice{silent.length > 0 && `, used because these are silent: ${silent.join('; ')}`}
            </dt>
            <dd>
              <Asked limits={[practice]} />
            </dd>
          </div>
        )}
      </dl>
      {practice === undefined && silent.length > 0 && (
        <p className={`${styles.silent} fine`}>No figure: {silent.join('; ')}; good practice.</p>
      )}
    </div>
  );
}

type Alike = readonly [Limit, ...Limit[]];

/** Limits that ask the same stand together. Tables do not: each is shown at its own place. */
function alike(limits: readonly Limit[]): readonly Alike[] {
  const groups = new Map<string, Alike>();
  for (const limit of limits) {
    const asked = formatBound(limit, 'mm').join() || limit.rules;
    const before = groups.get(asked);
    groups.set(asked, before === undefined ? [limit] : [...before, limit]);
  }
  return [...groups.values()];
}

function Asked({ limits }: { readonly limits: Alike }) {
  const [limit] = limits;
  const lines = formatBound(limit, firstLengths(limit.rules));
  if (lines.length === 0) {
    return (
      <p>
        <Link href={`/limits/${limit.rules}#${limit.id}`} prefetch={false}>
          See the table
        </Link>
      </p>
    );
  }
  return lines.map((line) => <p key={line}>{keepTogether(line)}</p>);
}
