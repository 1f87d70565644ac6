import { workFor } from '../../lib/classes/need-work';
import type { SetWorkSpec } from '../../lib/classes/set-work';
import { needsOf, needWords } from '../../lib/classes/statistics/teach-next';
import type { WallAnswer } from '../../lib/classes/statistics/wall-answer';
import { TOPIC_FAULTS, TOPIC_TITLES, TOPICS, type Topic } from '../../lib/generate/topics';
import { faultName } from '../walls/fault-choices';
import styles from './mark-book.module.css';

const MOST_NEEDS = 3;

/** The things this group most needs, each with set work that is ready to be looked at and sent. */
export function Needs({
  group,
  answers,
  last,
}: {
  readonly group: string;
  readonly answers: readonly WallAnswer[];
  readonly last: SetWorkSpec;
}) {
  const needs = needsOf(answers, MOST_NEEDS);
  if (needs.length === 0) {
    return (
      <p>
        Nothing stands out yet. A fault is named here when it was met at least five times and went wrong more
        often than luck explains.
      </p>
    );
  }
  return (
    <ol className={styles.needs}>
      {needs.map((need) => {
        const spec = workFor(need, topicOf, last);
        return (
          <li key={need.fault}>
            <p>{needWords(need, faultName)}</p>
            <a
              className="button button-plain"
              href={`/desk/groups/${group}/set?${queryOf(spec, need.fault)}`}
            >
              Set {spec.walls} walls on{' '}
              {spec.topics.map((topic) => TOPIC_TITLES[topic].toLowerCase()).join(' and ')}
            </a>
          </li>
        );
      })}
    </ol>
  );
}

function topicOf(fault: string): Topic {
  return TOPICS.find((topic) => TOPIC_FAULTS[topic].some((each) => each === fault)) ?? 'mixed';
}

/** What the page that makes set work fills in. */
function queryOf(spec: SetWorkSpec, fault: string): string {
  return new URLSearchParams({
    title: `More practice: ${faultName(fault)}`,
    topics: spec.topics.join(','),
    kinds: spec.kinds.join(','),
    walls: String(spec.walls),
    difficulty: String(spec.difficulty),
    rules: spec.rules,
    sameForAll: String(spec.sameForAll),
    attempts: String(spec.attempts),
  }).toString();
}
