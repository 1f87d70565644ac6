import { workFor } from '../../lib/classes/need-work';
import type { SetWorkSpec } from '../../lib/classes/set-work';
import { type Need, needsOf, needWords } from '../../lib/classes/statistics/teach-next';
import type { WallAnswer } from '../../lib/classes/statistics/wall-answer';
import { TOPIC_TITLES } from '../../lib/generate/topics';
import { faultName } from '../../lib/wall-page/fault-choices';
import styles from './mark-book.module.css';

const MOST_NEEDS = 3;
/** Reasons said for one set work: the most pressing ones. */
const MOST_REASONS = 2;
const MOST_LOOKED_AT = 20;

/** The things this group most needs, each with set work that is ready to be looked at and sent. What one set work practises is one thing. */
export function Needs({
  group,
  answers,
  last,
}: {
  readonly group: string;
  readonly answers: readonly WallAnswer[];
  readonly last: SetWorkSpec;
}) {
  const cards = cardsOf(needsOf(answers, MOST_LOOKED_AT), last);
  if (cards.length === 0) {
    return (
      <p>
        Nothing stands out yet. A fault is named here when it was met at least five times and went wrong more
        often than luck explains.
      </p>
    );
  }
  return (
    <ol className={styles.needs}>
      {cards.slice(0, MOST_NEEDS).map(({ spec, needs }) => (
        <li key={spec.topics.join()}>
          <p>
            {needs
              .slice(0, MOST_REASONS)
              .map((need) => needWords(need, faultName))
              .join(' ')}
          </p>
          <a className="button button-plain" href={`/desk/groups/${group}/set?${queryOf(spec)}`}>
            Set {spec.walls} walls on {topicWords(spec)}
          </a>
        </li>
      ))}
    </ol>
  );
}

interface Card {
  readonly spec: SetWorkSpec;
  readonly needs: readonly Need[];
}

function cardsOf(needs: readonly Need[], last: SetWorkSpec): readonly Card[] {
  const cards = new Map<string, Card>();
  for (const need of needs) {
    const spec = workFor(need, last);
    const key = spec.topics.join();
    const known = cards.get(key);
    cards.set(key, known ? { ...known, needs: [...known.needs, need] } : { spec, needs: [need] });
  }
  return [...cards.values()];
}

function topicWords({ topics }: SetWorkSpec): string {
  return topics.map((topic) => TOPIC_TITLES[topic].toLowerCase()).join(' and ');
}

/** What the page that makes set work fills in. */
function queryOf(spec: SetWorkSpec): string {
  return new URLSearchParams({
    title: `More practice: ${topicWords(spec)}`,
    topics: spec.topics.join(','),
    kinds: spec.kinds.join(','),
    walls: String(spec.walls),
    difficulty: String(spec.difficulty),
    rules: spec.rules,
    sameForAll: String(spec.sameForAll),
    attempts: String(spec.attempts),
  }).toString();
}
