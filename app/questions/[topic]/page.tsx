import { randomInt } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound, redirect } from 'next/navigation';
import { QuestionSet } from '../../../components/questions/question-set';
import { QuestionSheet } from '../../../components/questions/question-sheet';
import { Caution } from '../../../components/ui/caution';
import { LIMIT_CAUTIONS } from '../../../lib/inspect/make-safe';
import { RULE_SETS } from '../../../lib/limits/limit';
import { ruleSetTitle } from '../../../lib/limits/limits';
import { QUESTION_TOPIC_TITLES } from '../../../lib/questions/topics';
import { askSet } from '../ask-set';
import { formatAddress, MOST_SEED, parseRules, parseSeed, parseTopic } from '../set-address';
import styles from './page.module.css';

const COUNT = 6;

interface Props {
  readonly params: Promise<{ readonly topic: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const topic = parseTopic((await params).topic);
  if (topic === undefined) return { title: 'Questions' };
  const title = QUESTION_TOPIC_TITLES[topic];
  return {
    title: `Questions: ${title}`,
    description: `Six short questions on masonry: ${title.toLowerCase()}. The numbers change each time, and every answer is explained.`,
  };
}

/** The address holds topic, rules and seed, so that a page can be shared and printed: the same address asks the same. */
export default async function TopicQuestionsPage({ params, searchParams }: Props) {
  const topic = parseTopic((await params).topic);
  if (topic === undefined) notFound();
  const asked = await searchParams;
  const rules = parseRules(asked.rules);
  const seed = parseSeed(asked.seed);
  if (rules === undefined || seed === undefined) {
    redirect(formatAddress({ topic, rules: rules ?? 'canada', seed: seed ?? randomInt(MOST_SEED + 1) }));
  }
  const usual = rules === 'united-states' ? 'inches' : 'mm';
  const questions = askSet({ topic, rules, seed }, COUNT);
  const again = formatAddress({ topic, rules, seed: (seed + 1) % (MOST_SEED + 1) });
  return (
    <div className="column">
      <h1>Questions: {QUESTION_TOPIC_TITLES[topic]}</h1>
      <p>
        Rules in use: {ruleSetTitle(rules)}. Set {seed}.
      </p>
      <QuestionSet questions={questions} usual={usual} again={again} />
      <QuestionSheet questions={questions[usual]} />
      <nav className={styles.rules} aria-label="Other rules">
        <p>The same set by other rules:</p>
        <ul>
          {RULE_SETS.filter((other) => other !== rules).map((other) => (
            <li key={other}>
              <a href={formatAddress({ topic, rules: other, seed })}>{ruleSetTitle(other)}</a>
            </li>
          ))}
        </ul>
      </nav>
      <Caution lines={LIMIT_CAUTIONS} toSafety={topic === 'cracks' || topic === 'support'} />
    </div>
  );
}
