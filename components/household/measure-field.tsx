import { useId, useState } from 'react';
import { plainLength, withLengths } from '../../lib/household/lengths';
import type { Answer, Question } from '../../lib/household/question';
import { parseNumber } from '../../lib/questions/parse-number';
import { inches, type LengthSystem, type Mm } from '../../lib/units';
import { inchText } from '../wall-page/reading-text';
import styles from './household.module.css';
import { Choices } from './question-field';

/** A length to measure, in the reader's unit, or that it was not seen. Nothing is measured on a wall that could fall. */
export function MeasureField(props: {
  readonly question: Question & { readonly most: Mm };
  readonly answer: Answer | undefined;
  readonly system: LengthSystem;
  readonly isAlarm: boolean;
  readonly onAnswer: (answer: Answer | undefined) => void;
}) {
  const { question, answer, system, isAlarm, onAnswer } = props;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const unit = system === 'mm' ? 'mm' : 'in';
  const shown = typed ?? (typeof answer === 'number' ? written(answer, system) : '');
  const isWrong = typed !== null && typed.trim() !== '' && lengthIn(typed, unit, question.most) === undefined;

  function type(text: string): void {
    setTyped(text);
    const length = lengthIn(text, unit, question.most);
    // What cannot be read is no answer; the last one would stand for it.
    onAnswer(length);
  }

  return (
    <fieldset className={styles.question} aria-describedby={`${id}-how`}>
      <legend>{question.ask}</legend>
      <p id={`${id}-how`} className="fine">
        {isAlarm
          ? 'Do not go near to measure. You saw something that could fall.'
          : withLengths(question.how ?? '', system)}
      </p>
      <p className={styles.amount}>
        <label htmlFor={id} className="visually-hidden">
          {withLengths(question.measured ?? question.ask, system)}, in {unit === 'mm' ? 'mm' : 'inches'}
        </label>
        <input
          id={id}
          type="text"
          inputMode={system === 'mm' ? 'decimal' : 'text'}
          autoComplete="off"
          size={8}
          disabled={isAlarm}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? `${id}-problem` : undefined}
          value={shown}
          onChange={(event) => type(event.target.value)}
          onBlur={() => !isWrong && setTyped(null)}
        />{' '}
        {unit}
      </p>
      {isWrong && (
        <p id={`${id}-problem`} className="problem">
          Type a length up to {plainLength(question.most, system)}, such as {system === 'mm' ? '12' : '1/2'}.
        </p>
      )}
      <Choices
        name={question.id}
        of={['cannot see', 'do not know']}
        answer={answer}
        onAnswer={(word) => {
          setTyped(null);
          onAnswer(word);
        }}
      />
    </fieldset>
  );
}

function lengthIn(text: string, unit: 'mm' | 'in', most: Mm): Mm | undefined {
  const number = parseNumber(text, unit);
  if (number === undefined) return undefined;
  const mm = unit === 'mm' ? number : inches(number);
  return mm >= 0 && mm <= most ? mm : undefined;
}

function written(mm: Mm, system: LengthSystem): string {
  return system === 'mm' ? String(Math.round(mm * 10) / 10) : inchText(mm);
}
