'use client';

import { lazy, type ReactNode, Suspense, useState } from 'react';
import { isRecord } from '../../lib/json/read-json';
import { useOneRuleSet } from '../forms/rules-in-use';
import type { QuestionsBySystem } from '../questions/question-set';
import { QuestionsLink } from '../questions/questions-link';
import styles from './lesson.module.css';

const QuestionSet = lazy(async () => ({
  default: (await import('../questions/question-set')).QuestionSet,
}));

const MOST_SEED = 999_999;

/** A few questions inside a lesson, fetched when the reader asks for them; the link leads to a longer set on a page of its own. */
export function QuestionsSlot({ topic, children }: { readonly topic: string; readonly children: ReactNode }) {
  const rules = useOneRuleSet();
  const [asked, setAsked] = useState<{ readonly set: QuestionsBySystem; readonly seed: number } | null>(null);
  const [problem, setProblem] = useState<string | null>(null);

  const ask = async () => {
    setProblem(null);
    const seed = Math.floor(Math.random() * (MOST_SEED + 1));
    try {
      const answer = await fetch(`/questions/${topic}/set?rules=${rules}&seed=${seed}`);
      if (!answer.ok) throw new Error(String(answer.status));
      const set: unknown = await answer.json();
      if (!isSet(set)) throw new TypeError('these are no questions');
      setAsked({ set, seed });
    } catch {
      setProblem('The questions could not be loaded. Nothing is lost, so please try again.');
    }
  };

  return (
    <div className={styles.slot}>
      {asked === null ? (
        <p className={styles.scripted}>
          <button type="button" className="button" onClick={ask}>
            {children}
          </button>
        </p>
      ) : (
        <Suspense>
          <QuestionSet
            key={asked.seed}
            questions={asked.set}
            usual={rules === 'united-states' ? 'inches' : 'mm'}
            takesFocus
          />
        </Suspense>
      )}
      <p role="alert">{problem}</p>
      <p>
        {asked !== null && (
          <button type="button" className="button button-plain" onClick={ask}>
            Same questions, new numbers
          </button>
        )}{' '}
        <QuestionsLink topic={topic} className="button button-plain">
          More questions on their own page
        </QuestionsLink>
      </p>
    </div>
  );
}

/** The site made them: that both lists came is enough. */
function isSet(value: unknown): value is QuestionsBySystem {
  return isRecord(value) && Array.isArray(value.mm) && Array.isArray(value.inches);
}
