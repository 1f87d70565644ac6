'use client';

import { type FormEvent, useEffect, useRef, useState } from 'react';
import { checkAnswer, type Verdict } from '../../lib/questions/check-answer';
import { parseNumber } from '../../lib/questions/parse-number';
import type { Answer, Question } from '../../lib/questions/question';
import { ChoiceField, NumberField, OrderField } from './answer-fields';
import styles from './questions.module.css';
import { rightWords } from './right-words';

/** One question: asks, checks once, explains, and leads on. Give it a new key for a new question. */
export function QuestionCard(props: {
  readonly question: Question;
  /** "Question 2 of 6". */
  readonly title: string;
  readonly nextWords: string;
  /** Moves the keyboard to the question when it appears. */
  readonly takesFocus: boolean;
  readonly onDone: (right: boolean) => void;
}) {
  const { question, title, nextWords, takesFocus, onDone } = props;
  const [text, setText] = useState('');
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [order, setOrder] = useState<readonly string[]>(
    question.kind === 'order' ? question.options.map(({ id }) => id) : [],
  );
  const [problem, setProblem] = useState<string | null>(null);
  const [verdict, setVerdict] = useState<Verdict | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const next = useRef<HTMLButtonElement>(null);

  useEffect(() => {
    if (takesFocus) heading.current?.focus();
  }, [takesFocus]);
  useEffect(() => {
    if (verdict !== null) next.current?.focus();
  }, [verdict]);

  const check = (event: FormEvent) => {
    event.preventDefault();
    if (verdict !== null) return onDone(verdict.right);
    const answer = answerOf(question, text, chosen, order);
    if (answer === undefined) return setProblem(missingWords(question));
    setProblem(null);
    setVerdict(checkAnswer(question, answer));
  };
  const locked = verdict !== null;
  return (
    <form className={styles.card} onSubmit={check} noValidate>
      <h2 ref={heading} tabIndex={-1} className={styles.title}>
        {title}
      </h2>
      {question.kind === 'number' && (
        <NumberField question={question} text={text} problem={problem} locked={locked} onType={setText} />
      )}
      {question.kind === 'order' && (
        <OrderField question={question} order={order} locked={locked} onMove={setOrder} />
      )}
      {question.kind !== 'number' && question.kind !== 'order' && (
        <ChoiceField question={question} chosen={chosen} locked={locked} onChoose={setChosen} />
      )}
      {question.kind !== 'number' && problem !== null && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
      <div role="status">
        {verdict !== null && (
          <div className={verdict.right ? styles.right : styles.wrong}>
            <p className={styles.word}>
              <span aria-hidden="true">{verdict.right ? '✓ ' : '✕ '}</span>
              {verdict.right ? 'Right' : 'Not right'}
            </p>
            {!verdict.right && <RightAnswer question={question} />}
            <p>{verdict.explanation.replace(sourceOf(question), '')}</p>
            <p className="fine">{sourceOf(question).trim()}</p>
          </div>
        )}
      </div>
      <button type="submit" className="button" ref={next}>
        {locked ? nextWords : 'Check'}
      </button>
    </form>
  );
}

/** As checkAnswer ends with it: on the screen it has a line of its own. */
function sourceOf({ source }: Question): string {
  return ` Source: ${source}`;
}

function RightAnswer({ question }: { readonly question: Question }) {
  return (
    <p>
      Right answer: <strong>{rightWords(question)}</strong>
    </p>
  );
}

function answerOf(
  question: Question,
  text: string,
  chosen: readonly string[],
  order: readonly string[],
): Answer | undefined {
  if (question.kind === 'number') return parseNumber(text, question.unit);
  if (question.kind === 'order') return order;
  if (chosen.length === 0) return undefined;
  return question.kind === 'pick' ? chosen : chosen[0];
}

function missingWords({ kind }: Question): string {
  if (kind === 'number') return 'Type a number, such as 1200, 12.5 or 2 3/4, with no comma for thousands.';
  return kind === 'pick' ? 'Pick at least one.' : 'Choose one of the answers.';
}
