import type { ReactNode } from 'react';
import { withLengths } from '../../lib/household/lengths';
import { type Answer, type Question, SEEN, type Seen } from '../../lib/household/question';
import type { LengthSystem } from '../../lib/units';
import { SEEN_WORDS } from './answer-words';
import styles from './household.module.css';

/** One question with its four answers. What it raises stands right below it. */
export function QuestionField(props: {
  readonly question: Question;
  readonly answer: Answer | undefined;
  readonly system: LengthSystem;
  readonly onAnswer: (answer: Answer) => void;
  readonly children?: ReactNode;
}) {
  const { question, answer, system, onAnswer, children } = props;
  const howId = `${question.id}-how`;
  return (
    <fieldset className={styles.question} aria-describedby={question.how === undefined ? undefined : howId}>
      <legend>{question.ask}</legend>
      {question.how !== undefined && (
        <p id={howId} className="fine">
          {withLengths(question.how, system)}
        </p>
      )}
      <Choices name={question.id} of={SEEN} {...{ answer, onAnswer }} />
      {children}
    </fieldset>
  );
}

/** Radio buttons as large as a thumb. */
export function Choices(props: {
  readonly name: string;
  readonly of: readonly Seen[];
  readonly answer: Answer | undefined;
  readonly onAnswer: (answer: Seen) => void;
}) {
  const { name, of, answer, onAnswer } = props;
  return (
    <div className={styles.choices}>
      {of.map((word) => (
        <label key={word}>
          <input type="radio" name={name} checked={answer === word} onChange={() => onAnswer(word)} />
          <span>{SEEN_WORDS[word]}</span>
        </label>
      ))}
    </div>
  );
}
