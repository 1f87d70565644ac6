import type { Limit, LimitTopic, RuleSetId } from '../../lib/limits/limit';
import { CHECK_LIMITS } from '../../lib/limits/limit';
import { isAsked, limitOf, limitsOf } from '../../lib/limits/limits';
import { Caution } from '../ui/caution';
import { LimitItem } from './limit-item';
import { TOPIC_ORDER, TOPIC_WORDS, topicAnchor } from './limit-words';
import styles from './rule-set-limits.module.css';

const OVER_HEADS = [
  'A lintel carries the wall over people’s heads.',
  'For a real opening the building department or an engineer says which one it needs.',
] as const;

/** All limits of one rule set, topic by topic; after its own, what the checks take from good practice because it is silent. */
export function RuleSetLimits({ rules }: { readonly rules: RuleSetId }) {
  const topics = TOPIC_ORDER.map((topic) => ({ topic, ...limitsIn(rules, topic) })).filter(
    ({ own, borrowed }) => own.length + borrowed.length > 0,
  );
  return (
    <>
      <nav aria-label="Topics">
        <ul className="links" id="topics">
          {topics.map(({ topic }) => (
            <li key={topic}>
              <a href={`#${topicAnchor(topic)}`}>{TOPIC_WORDS[topic]}</a>
            </li>
          ))}
        </ul>
      </nav>
      {topics.map(({ topic, own, borrowed }) => (
        <section key={topic} aria-labelledby={topicAnchor(topic)}>
          <h2 id={topicAnchor(topic)}>{TOPIC_WORDS[topic]}</h2>
          {topic === 'openings' && <Caution lines={OVER_HEADS} toSafety />}
          <ul className="plain">
            {own.map((limit) => (
              <LimitItem key={limit.id} limit={limit} />
            ))}
          </ul>
          {borrowed.length > 0 && (
            <>
              <p className={styles.silent}>
                {own.length === 0
                  ? 'This rule set gives no figures here.'
                  : 'On what follows this rule set is silent.'}{' '}
                Good practice is used for the drawn walls instead:
              </p>
              <ul className={styles.borrowed}>
                {borrowed.map((limit) => (
                  <LimitItem key={limit.id} limit={limit} borrowed />
                ))}
              </ul>
            </>
          )}
          <p>
            <a className="link" href="#topics">
              Up to the topics
            </a>
          </p>
        </section>
      ))}
    </>
  );
}

function limitsIn(
  rules: RuleSetId,
  topic: LimitTopic,
): { own: readonly Limit[]; borrowed: readonly Limit[] } {
  return {
    own: limitsOf(rules).filter((limit) => limit.topic === topic),
    borrowed: CHECK_LIMITS.flatMap((id) => {
      const limit = limitOf(rules, id);
      const borrowed = limit !== undefined && limit.rules !== rules && isAsked(rules, id);
      return borrowed && limit.topic === topic ? [limit] : [];
    }),
  };
}
