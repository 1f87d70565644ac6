'use client';

import { useState } from 'react';
import type { Question } from '../../lib/questions/question';
import type { LengthSystem } from '../../lib/units';
import { LengthChoice, useLengthSystem } from '../forms/length-choice';
import { useRecorded } from '../record/use-recorded';
import { QuestionCard } from './question-card';
import styles from './questions.module.css';

/** The same questions in both systems of lengths: sizes are round in each. */
export type QuestionsBySystem = Readonly<Record<LengthSystem, readonly Question[]>>;

/** Goes through some questions one by one and says at the end how many were right, and which to look at again. */
export function QuestionSet(props: {
  readonly questions: QuestionsBySystem;
  readonly usual: LengthSystem;
  /** Where "other numbers" leads. */
  readonly again?: string;
  /** The set takes the place of the button that asked for it, and the keyboard with it. */
  readonly takesFocus?: boolean;
}) {
  const { questions, usual, again, takesFocus = false } = props;
  const system = useLengthSystem(usual);
  const [results, setResults] = useState<readonly boolean[]>([]);
  const asked = questions[system];
  const question = asked[results.length];
  useRecorded(
    question === undefined && asked[0]
      ? {
          kind: 'questions',
          topic: asked[0].topic,
          rules: asked[0].rules,
          answers: asked.map(({ family }, index) => ({ family, right: results[index] === true })),
        }
      : null,
  );
  return (
    <div className={styles.set}>
      <LengthChoice system={system} />
      {question === undefined ? (
        <Summary asked={asked} results={results} again={again} />
      ) : (
        <QuestionCard
          key={`${system} ${results.length}`}
          question={question}
          title={`Question ${results.length + 1} of ${asked.length}`}
          nextWords={results.length + 1 === asked.length ? 'See how it went' : 'Next question'}
          takesFocus={takesFocus || results.length > 0}
          onDone={(right) => setResults([...results, right])}
        />
      )}
    </div>
  );
}

function Summary(props: {
  readonly asked: readonly Question[];
  readonly results: readonly boolean[];
  readonly again: string | undefined;
}) {
  const { asked, results, again } = props;
  const missed = asked.filter((_, index) => results[index] === false);
  return (
    <section aria-labelledby="questions-done" className={styles.card} role="status">
      <h2 id="questions-done" className={styles.title}>
        {results.length - missed.length} of {results.length} right
      </h2>
      {missed.length > 0 && (
        <>
          <p>Look at these again:</p>
          <ul>
            {missed.map(({ family, prompt, explanation }) => (
              <li key={family}>
                {prompt} <em>{explanation}</em>
              </li>
            ))}
          </ul>
        </>
      )}
      {again !== undefined && (
        <p>
          <a className="button" href={again}>
            Other numbers
          </a>
        </p>
      )}
    </section>
  );
}
